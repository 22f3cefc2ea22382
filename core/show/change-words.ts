import { COORDINATES, FITTING_COORDINATES } from '../document/coordinates.ts';
import { coordinateOf } from '../document/fitting-coordinate.ts';
import type { Seat } from '../document/seat-schema.ts';
import { type Side, sideSign } from '../frame/mirror.ts';
import type { Format } from '../text/format.ts';
import type { Values, Words } from '../text/words.ts';

/** Smallest change worth telling an athlete: a tape and a bevel read no finer. Metres and degrees. */
const LEAST_CHANGE = { m: 0.001, deg: 0.5 } as const;

/** One change told to an athlete: what moves, and what to feel for. */
export interface ToldChange {
  readonly what: string;
  readonly feel: string;
}

/** Every fitting that moved between two settings of a seat, in the athlete's words. `kneels` is the side knelt on. */
export function toldChanges(
  before: Seat,
  after: Seat,
  { kneels, format, words }: { kneels: Side; format: Format; words: Words },
): ToldChange[] {
  const moves = FITTING_COORDINATES.flatMap((coordinate) => {
    const { unit } = COORDINATES[coordinate];
    const by = coordinateOf(after, coordinate) - coordinateOf(before, coordinate);
    if (Math.abs(by) < LEAST_CHANGE[unit] - 1e-9) return [];
    const amount = unit === 'm' ? format.spokenLength(Math.abs(by)) : turnText(Math.abs(by), format);
    const side: Side = by * sideSign(kneels) > 0 ? 'left' : 'right';
    return [told(words, `change.${coordinate}.${by > 0 ? 'more' : 'less'}`, { by: amount, side })];
  });
  return [...moves, ...choices(before, after).map((choice) => told(words, `change.${choice}`))];
}

/** A turn to a tenth of a degree, whole where it is whole. */
function turnText(deg: number, format: Format): string {
  return format.degrees(deg, { decimals: Number.isInteger(Math.round(deg * 10) / 10) ? 0 : 1 });
}

/** A change by its message, and what to feel for by the one beside it. */
function told(words: Words, key: string, values?: Values): ToldChange {
  const own = `${key}.feel`;
  const feel = words.has(own) ? own : own.replace('.less.', '.more.');
  return { what: words.say(key, values), feel: words.say(feel) };
}

/** Changes of a kind rather than a place. */
function choices(before: Seat, after: Seat): ('strap' | 'brace' | 'grip')[] {
  const strap = before.rearRest.strap !== 'releases' && after.rearRest.strap === 'releases';
  const brace = !before.kneePad.braced && after.kneePad.braced;
  const grip = !before.frontFoot.nonSlip && after.frontFoot.nonSlip;
  return [
    ...(strap ? ['strap' as const] : []),
    ...(brace ? ['brace' as const] : []),
    ...(grip ? ['grip' as const] : []),
  ];
}

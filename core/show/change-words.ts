import { COORDINATES, FITTING_COORDINATES, type FittingCoordinate } from '../document/coordinates.ts';
import { coordinateOf } from '../document/fitting-coordinate.ts';
import type { Seat } from '../document/seat-schema.ts';
import { type Side, sideSign } from '../frame/mirror.ts';
import { MOVES } from '../text/coordinate-move.ts';
import type { Format } from '../text/format.ts';
import type { Words } from '../text/words.ts';

/** Smallest change that an athlete is told of: a tape and a bevel read no finer. Metres and degrees. */
const LEAST_CHANGE = { m: 0.001, deg: 0.5 } as const;

/** One change told to an athlete: what moves, and what to feel for. */
export interface ToldChange {
  readonly what: string;
  readonly feel: string;
}

/** Every fitting that moved between two settings of a seat, in the athlete's words. `kneels` is the kneeling side. */
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
    const [part, more, less] = MOVES[coordinate];
    const movement = COORDINATES[coordinate].axis === 'across' ? 'aside' : by > 0 ? more : less;
    const values = { part: words.say(`change.part.${part}`), by: amount, side };
    return [{ what: words.say(`change.${movement}`, values), feel: feelOf(coordinate, by, words) }];
  });
  const chosen = choices(before, after).map((choice) => ({
    what: words.say(`change.${choice}`),
    feel: words.say(`change.${choice}.feel`),
  }));
  return [...moves, ...chosen];
}

/** A turn to a tenth of a degree, whole where it is whole. */
function turnText(deg: number, format: Format): string {
  return format.degrees(deg, { decimals: Number.isInteger(Math.round(deg * 10) / 10) ? 0 : 1 });
}

/** What to feel for. Where "less" has no words of its own, those of "more" hold. */
function feelOf(coordinate: FittingCoordinate, by: number, words: Words): string {
  const less = `change.${coordinate}.less.feel`;
  return words.say(by < 0 && words.has(less) ? less : `change.${coordinate}.more.feel`);
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

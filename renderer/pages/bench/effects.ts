import { type FittingCoordinate, isAngle } from '../../../core/document/coordinates.ts';
import type { Derivative } from '../../../core/optimise/sensitivity.ts';
import { LENGTH_UNITS } from '../../../core/units/length-text.ts';
import type { Format } from '../../language/format.ts';
import { say } from '../../language/messages.ts';

/** Quantities worth telling of, with how much of a change a coach would notice, in SI. */
const TELLING = {
  trimRest: 0.001,
  trimCatch: 0.0015,
  frontKnee: 0.009,
  kneelingKnee: 0.009,
  kneelingHip: 0.012,
  trunkPitch: 0.009,
  trunkRoll: 0.005,
  rearAnkle: 0.012,
  kneeShare: 0.01,
  rearShare: 0.01,
  frontShare: 0.01,
  supportMargin: 0.003,
  steadyMoment: 0.7,
  leanMoment: 0.1,
  paddleUnderStature: 0.004,
  bladeShare: 0.006,
} as const;
type Telling = keyof typeof TELLING;

/** The boat first, then the figure from the front knee back. */
const TOLD_IN_ORDER: readonly string[] = Object.keys(TELLING);

const MOST = 3;
/** Effects below this share of a noticeable change are not worth words. */
const LEAST_SHARE = 0.15;
const TURN_DEG = 5;
/** What a line of the narrowest margin holds, with its beginning. */
const LINE_CHARACTERS = 52;

/** What one centimetre more does (half an inch where inches are read; five degrees of a turn), the most telling of it. */
export function effectsText(
  coordinate: FittingCoordinate,
  derivatives: readonly Derivative[],
  format: Format,
): string {
  const turn = isAngle(coordinate);
  const inches = format.lengthUnit === 'in';
  const by = turn ? TURN_DEG : inches ? LENGTH_UNITS.in / 2 : 0.01;
  const effects = mostTelling(derivatives, by).map(({ id, perUnit, unit }) => ({
    id,
    text: say('effect.written', {
      name: say(`effect.${id as Telling}`),
      change: changeWritten(id, perUnit * by, { unit, format }),
    }),
  }));
  const text = inOneLine(effects) || say('measures.nothing-moves');
  if (turn) return say('measures.five-degrees', { effects: text });
  return say(inches ? 'measures.one-inch' : 'measures.one-centimetre', { effects: text });
}

function mostTelling(derivatives: readonly Derivative[], by: number): Derivative[] {
  const weight = ({ id, perUnit }: Derivative) => Math.abs(perUnit * by) / TELLING[id as Telling];
  return derivatives
    .filter((d) => d.id in TELLING && weight(d) >= LEAST_SHARE)
    .sort((a, b) => weight(b) - weight(a))
    .slice(0, MOST);
}

/** As many effects as one line of the margin holds, the most telling first chosen, told in a steady order. */
function inOneLine(effects: readonly { id: string; text: string }[]): string {
  let room = LINE_CHARACTERS;
  return effects
    .filter(({ text }) => {
      room -= text.length + 3;
      return room >= 0;
    })
    .sort((a, b) => TOLD_IN_ORDER.indexOf(a.id) - TOLD_IN_ORDER.indexOf(b.id))
    .map(({ text }) => text)
    .join(' · ');
}

/** Small changes want one place more than the values themselves. */
function changeWritten(
  id: string,
  change: number,
  { unit, format }: { unit: Derivative['unit']; format: Format },
): string {
  if (unit === 'rad') return format.degrees((change * 180) / Math.PI, { decimals: 1, signed: true });
  if (unit === 'm' && format.lengthUnit !== 'in') {
    return `${format.number(change * 1000, { decimals: 1, signed: true })}\u{202f}mm`;
  }
  if (unit === '1') return `${format.number(change * 100, { decimals: 1, signed: true })}\u{202f}%`;
  return format.quantity(id, { signed: true })(change, unit);
}

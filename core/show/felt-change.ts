import type { QuantityId } from '../evaluation/quantities.ts';
import type { Report } from '../evaluation/report.ts';
import type { Words } from '../text/words.ts';
import { toRadians } from '../units/angle.ts';

/** Figures that an athlete feels move, and from how much on, in their SI units. */
const FELT = [
  ['frontKnee', toRadians(2)],
  ['trimRest', 0.002],
] as const satisfies readonly (readonly [QuantityId, number])[];

/**
 * What there is to feel by the figures of two settings of seat `index`: a knee opens only where its angle grows by 2° or
 * more, and the bow rises only where it does by 2 mm or more.
 */
export function feltOf(
  { before, now }: { readonly before: Report; readonly now: Report },
  index: number,
  words: Words,
): string[] {
  const read = ({ quantities }: Report, id: QuantityId) =>
    quantities.find((q) => q.id === id && (q.seat === null || q.seat === index))?.value;
  return FELT.flatMap(([quantity, least]) => {
    const [was, is] = [read(before, quantity), read(now, quantity)];
    if (was == null || is == null || Math.abs(is - was) < least) return [];
    return [words.say(`change.felt.${quantity}.${is > was ? 'more' : 'less'}`)];
  });
}

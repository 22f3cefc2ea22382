import type { QuantityId } from '../evaluation/quantities.ts';
import type { Report } from '../evaluation/report.ts';
import type { Words } from '../text/words.ts';
import { toRadians } from '../units/angle.ts';

/** Values whose change an athlete feels, and the least change felt, in their SI units (estimates). */
const FELT = [
  ['frontKnee', toRadians(2)],
  ['trimRest', 0.002],
] as const satisfies readonly (readonly [QuantityId, number])[];

/** What the values of two settings of seat `index` let an athlete feel: a knee opens from 2° on, the bow rises from 2 mm on. */
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

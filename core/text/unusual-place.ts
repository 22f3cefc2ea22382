import type { Finding } from '../evaluation/finding.ts';
import type { QuantityId } from '../evaluation/quantities.ts';
import { type FormatValue, signedText } from './signed-text.ts';

/** What an outcome would do at the usual place: `{v}` is by how much. */
const WOULD: Partial<Record<string, { readonly less: string; readonly more: string }>> = {
  trimRest: { less: 'the bow would lie {v} lower', more: 'the bow would lie {v} higher' },
  frontKnee: {
    less: 'the front knee would be {v} more bent',
    more: 'the front knee would be {v} straighter',
  },
  supportMargin: {
    less: 'the weight would be {v} nearer the edge of its supports',
    more: 'the weight would be {v} farther inside its supports',
  },
};

/** Lengths of these outcomes are small and read finely. */
const FINE: readonly string[] = ['trimRest', 'supportMargin'];

/** What is said of a place outside its usual band that works: that it does, and what the usual place would bring. */
export function unusualPlaceSentence(
  { quantity, instead, value, fromMiddleM }: Finding,
  format: FormatValue,
): string {
  const works = 'An unusual place, and it works.';
  const would = instead && WOULD[instead.quantity];
  if (!instead || !would) return works;
  const by = instead.to - instead.from;
  const size = format(Math.abs(by), instead.unit, FINE.includes(instead.quantity));
  const from = fromMiddleM === undefined ? 0 : value - fromMiddleM;
  const at = signedText({ id: quantity as QuantityId, value: instead.at - from, unit: 'm' }, format, false);
  const where = fromMiddleM === undefined ? at : `${at} of the boat’s middle`;
  return `${works} At ${where} ${(by < 0 ? would.less : would.more).replace('{v}', size)}.`;
}

/** True for a place that its rule calls unusual and its outcomes bear out. */
export function isUnusualPlace({ severity, sd, distance, instead }: Finding): boolean {
  return severity === 'check' && !sd && (distance > 0 || instead !== undefined);
}

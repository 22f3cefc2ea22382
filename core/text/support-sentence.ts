import type { Finding } from '../evaluation/finding.ts';
import type { Words } from './words.ts';

/**
 * A coach's sentence on a support margin that is not good: which edge of the support polygon the weight is near or past, by its
 * contacts; or that all three lie in one line. Null where the finding has no edge.
 */
export function supportSentence(
  { support, value }: Pick<Finding, 'support' | 'value'>,
  words: Words,
): string | null {
  if (!support) return null;
  if (support.inLine) return words.say('support.in-line');
  const [one, other] = [...support.nearestEdge].sort();
  const edge = one === other ? one : `${one}_${other}`;
  return words.say(value < 0 ? 'support.outside' : 'support.near', { edge });
}

import type { Finding } from '../evaluation/finding.ts';
import type { Words } from './words.ts';

/** From this probability on a sentence does not say "probably". */
const SURE = 0.9;

/**
 * A sentence with its doubt. `inside` describes a value in its band, `outside` one beyond it. The likelier one is said, as
 * probable and, for the coach, with the chance of the other. For an athlete, what may be outside is "perhaps". A value without
 * doubt is said plainly.
 */
export function inDoubt(
  { probability: p }: Pick<Finding, 'probability'>,
  { inside, outside, isOutside }: { inside: string; outside: string; isOutside: boolean },
  { words, reader }: { words: Words; reader: 'coach' | 'athlete' },
): string {
  if (p >= SURE) return outside;
  if (p > 0.5) return words.say('doubt.probably', { sentence: outside });
  if (reader === 'athlete')
    return isOutside
      ? words.say('doubt.perhaps', { sentence: outside })
      : words.say('doubt.probably', { sentence: inside });
  return words.say('doubt.probably.chance', { sentence: inside, of: oneIn(p) });
}

/** A probability as "one in n", 2 to 10: 0.3 is one in three. */
function oneIn(p: number): number {
  return Math.min(10, Math.max(2, Math.round(1 / p)));
}

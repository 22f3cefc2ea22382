import type { Finding } from '../evaluation/finding.ts';
import type { Words } from './words.ts';

/** From this probability on nobody need be told that it is only probable. */
const SURE = 0.9;

/**
 * A sentence in its doubt. `inside` is said of a value in its band, `outside` of one beyond it: whichever is likelier is said, as
 * probable and, for the coach, with the chance of the other. An athlete is told of what may be outside as "perhaps". A value
 * without doubt is said plainly.
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

/** A chance that can be pictured: 0.3 is one in three. */
function oneIn(p: number): number {
  return Math.min(10, Math.max(2, Math.round(1 / p)));
}

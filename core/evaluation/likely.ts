import type { Finding } from './finding.ts';

/** From this probability on nobody need be told that it is only probable. */
const SURE = 0.9;

/**
 * A sentence in its doubt. `inside` is said of a value in its band, `outside` of one beyond it: whichever is likelier is said, with
 * "probably" and, for the coach, the chance of the other. A value without doubt is said plainly.
 */
export function inDoubt(
  { probability: p }: Pick<Finding, 'probability'>,
  { inside, outside }: { inside: string; outside: string },
  reader: 'coach' | 'athlete',
): string {
  if (p >= SURE) return outside;
  if (p > 0.5) return `Probably ${lowered(outside)}`;
  const likely = `Probably ${lowered(inside)}`;
  if (reader === 'athlete') return likely;
  return `${likely.replace(/\.$/, '')}; about ${chance(p)} that it is otherwise.`;
}

/** A chance in words that can be pictured: 0.3 is one in three. */
function chance(p: number): string {
  const of = ['two', 'two', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];
  return `one chance in ${of[Math.min(10, Math.max(2, Math.round(1 / p)))]}`;
}

const lowered = (sentence: string) => sentence.charAt(0).toLowerCase() + sentence.slice(1);

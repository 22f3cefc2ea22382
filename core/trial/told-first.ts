import { HELPS } from './helps.ts';
import type { RankedChange } from './rank-changes.ts';

/** Whether a change helps with everything that was observed. */
export function helpsAll({ gains }: RankedChange): boolean {
  return gains.every((gain) => gain >= HELPS);
}

/**
 * The changes to be told first, at most `most`, in their order: the best of all; then the best for each observation that
 * none told so far helps with, so that nothing observed is left without a word; then the next best.
 */
export function toldFirst(changes: readonly RankedChange[], most: number): RankedChange[] {
  const told = new Set(changes.slice(0, 1));
  const observations = changes[0]?.gains.length ?? 0;
  for (let i = 0; i < observations; i++) {
    const helps = (change: RankedChange) => (change.gains[i] ?? 0) >= HELPS;
    if ([...told].some(helps)) continue;
    const best = changes
      .filter(helps)
      .sort((a, b) => b.relevance - a.relevance || b.gains[i]! - a.gains[i]!)[0];
    if (best) told.add(best);
  }
  for (const change of changes) {
    if (told.size >= most) break;
    told.add(change);
  }
  return changes.filter((change) => told.has(change)).slice(0, Math.max(most, told.size));
}

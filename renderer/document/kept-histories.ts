import type { Fit } from '../../core/document/fit-schema.ts';
import { createEditHistory, type EditHistory } from './edit-history.ts';

/** The most fits whose steps are kept while the program is open; the ones left longest ago go first. */
const MOST = 20;

const kept = new Map<string, { readonly history: EditHistory; readonly left: Fit }>();

/** Keeps a fit's steps of undo for when it is opened again, with the state that it was left in. */
export function keepHistory(fitId: string, history: EditHistory, left: Fit): void {
  kept.delete(fitId);
  kept.set(fitId, { history, left });
  const oldest = kept.keys().next().value;
  if (kept.size > MOST && oldest !== undefined) kept.delete(oldest);
}

/**
 * The steps of a fit that is opened again: those of before where it is just as it was left, none where something else has
 * changed it meanwhile (another window, a merge), for they would put that back too.
 */
export function historyFor(fitId: string, opened: Fit): EditHistory {
  const before = kept.get(fitId);
  return before && saysTheSame(before.left, opened) ? before.history : createEditHistory();
}

/** Whether two plain values are equal, in any order of their keys; undefined counts as absent. */
function saysTheSame(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const [mine, theirs] = [a as Record<string, unknown>, b as Record<string, unknown>];
  const keys = new Set([...Object.keys(mine), ...Object.keys(theirs)]);
  return [...keys].every((key) => saysTheSame(mine[key], theirs[key]));
}

import { call } from '../client/client.ts';
import type { Keep } from './autosave.ts';

let lastKept: Promise<unknown> = Promise.resolve();

/** Settles when the drafts sent off so far have been answered: whoever then opens a fit sees the newest. */
export function draftsSettled(): Promise<unknown> {
  return lastKept;
}

/** Waits for a document's end as well: a draft that is being sent may be followed by a newer one. */
export function waitForClose(closed: Promise<void>): void {
  waitForToo(closed);
}

/** Adds to what `draftsSettled` waits for; what it already waited for stays. */
function waitForToo(more: Promise<unknown>): void {
  lastKept = Promise.allSettled([lastKept, more]);
}

/** Keeps a fit's draft through the contract. */
export const keepDraft: Keep = async (draft) => {
  const asked = call('drafts.save', draft);
  waitForToo(asked);
  const result = await asked;
  if (result.ok) return { kind: 'kept', savedAt: result.value.savedAt };
  const { code, message } = result.error;
  return { kind: code === 'conflict' || code === 'not-found' ? 'conflict' : 'failed', message };
};

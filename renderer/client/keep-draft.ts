import type { Keep } from '../document/draft-keeper.ts';
import { call } from './client.ts';

/** Keeps a fit's draft through the contract. */
export const keepDraft: Keep = async (draft) => {
  const result = await call('drafts.save', draft);
  if (result.ok) return { kind: 'kept', savedAt: result.value.savedAt };
  const { code, message } = result.error;
  return { kind: code === 'conflict' || code === 'not-found' ? 'conflict' : 'failed', message };
};

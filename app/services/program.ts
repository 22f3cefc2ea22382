import type { CallError, CallResult } from '../contract/result.ts';
import type { Shell } from '../shell/shell.ts';
import type { Store } from '../store/store.ts';
import { callError, SENTENCES } from './sentences.ts';

/** What every service works on. */
export interface Program {
  readonly store: Store;
  readonly shell: Shell;
  readonly version: string;
  /** The folder that holds `assets/` as installed. */
  readonly assets: string;
}

export function done<T>(value: T): CallResult<T> {
  return { ok: true, value };
}

export function refused(
  code: CallError['code'],
  message: string,
  problems: CallError['problems'] = [],
): { readonly ok: false; readonly error: CallError } {
  return { ok: false, error: callError(code, message, problems) };
}

/** A row as found in the store, or why there is none. */
export function found<T>(what: string, row: T | null | 'none' | 'damaged'): CallResult<T> {
  if (row === null || row === 'none') return refused('not-found', SENTENCES['no-such-row'](what));
  if (row === 'damaged') return refused('damaged', SENTENCES['damaged-row'](what));
  return done(row);
}

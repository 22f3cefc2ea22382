import type { CallError, CallResult } from '../contract/result.ts';
import type { RecoveryRecord } from '../contract/safekeeping.ts';
import type { Log } from '../shell/log-file.ts';
import type { Shell } from '../shell/shell.ts';
import type { Store } from '../store/store.ts';
import type { LibraryLink } from './library-link.ts';
import { callError, SENTENCES } from './sentences.ts';
import type { Workbench } from './work.ts';
import type { WriteLock } from './write-lock.ts';

/** What every service works on. */
export interface Program {
  readonly store: Store;
  readonly shell: Shell;
  readonly version: string;
  /** What the program did and where it failed, never what anybody entered. */
  readonly log: Log;
  /** The folder that holds `assets/` as installed. */
  readonly assets: string;
  /** Held by work that needs the store to itself; every other call waits. */
  readonly writeLock: WriteLock;
  /** One long piece of work at a time: an export must not see rows of an import that may be taken back. */
  readonly turn: WriteLock;
  readonly work: Workbench;
  /** Whether the program did not come to its end the last time. */
  readonly cutShort: boolean;
  /** What was done about a damaged store at this start. */
  readonly recovery: RecoveryRecord | null;
  /** Sentences about the store that need somebody, by what they are about. */
  readonly notices: Map<string, string>;
  /** What this computer shares with its club, if anything. */
  readonly library: LibraryLink;
  /** Bundles that have been handed in and wait for an answer, by handle: private files beside the store. */
  readonly bundles: Map<string, string>;
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

/** There is no such row. */
export function missing(what: string) {
  return refused('not-found', SENTENCES['no-such-row'](what));
}

/** A row as found in the store, or why there is none. */
export function found<T>(what: string, row: T | null | 'none' | 'damaged'): CallResult<T> {
  if (row === null || row === 'none') return missing(what);
  if (row === 'damaged') return refused('damaged', SENTENCES['damaged-row'](what));
  return done(row);
}

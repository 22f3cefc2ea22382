import type { BlockForm } from '../../core/setout/block-forms.ts';
import type { LanguageTag } from '../contract/display.ts';
import type { Erasure } from '../store/erase.ts';
import type { ErasedCopies, ErasedEverywhere } from '../store/erase-everywhere.ts';
import type { NamedEntry } from '../store/join-people.ts';
import type { MergeCounts } from '../store/merge-counts.ts';
import type { Restored, RestoreHow } from '../store/restore.ts';

/** What became of reading a bundle from end to end. */
export type ReadBundle =
  | { readonly kind: 'read'; readonly madeAt: string; readonly changes: MergeCounts }
  | { readonly kind: 'refused'; readonly path: string; readonly message: string };

/** What became of reading a bundle for an import. */
export type StagedBundle = { readonly kind: 'staged' } | Extract<ReadBundle, { kind: 'refused' }>;

/** What each job is given, and what it gives. Everything passes between threads as a copy. */
export interface Jobs {
  /** Copies the store into one file and checks the copy; gives what is wrong with it, or null. */
  readonly backup: { input: { file: string; to: string }; output: string | null };
  /** Shortens the journal after a backup. The main thread writes nothing meanwhile. */
  readonly 'settle-backup': {
    input: { folder: string; at: number };
    output: { settled: boolean; needsBackup: boolean };
  };
  /** Writes everything into a bundle, unless it would be more than is read again. */
  readonly export: {
    input: { file: string; to: string; version: string; at: number; passphrase: string | null };
    output: 'written' | 'too-large';
  };
  /** Decrypts a bundle of `size` bytes into another file. */
  readonly 'bundle-decrypt': {
    input: { path: string; to: string; passphrase: string; size: number };
    output: 'decrypted' | 'wrong-passphrase' | 'damaged';
  };
  /** Says what importing a bundle would do, by doing it in a copy. */
  readonly 'bundle-preview': {
    input: { file: string; copy: string; path: string; at: number };
    output: ReadBundle;
  };
  /** Reads a bundle from end to end and writes it down as an import that is to be made. */
  readonly 'bundle-stage': {
    input: { folder: string; path: string };
    output: StagedBundle;
  };
  /** Says what erasing each of these entries would take away, by doing it in a copy. */
  readonly 'erase-preview': {
    input: { file: string; copy: string; entries: readonly NamedEntry[] };
    output: Erasure[];
  };
  /** Erases one entry from the store itself. The main thread writes nothing meanwhile. */
  readonly 'erase-store': {
    input: {
      folder: string;
      at: number;
      entry: NamedEntry & { takenAway?: boolean };
      clear: 'none' | 'full-names' | 'parts-too';
    };
    output: { erasure: Erasure; needsBackup: boolean };
  };
  /** Erases one entry from the copies of the store, and from a copy aside that is to take its place. */
  readonly 'erase-aside': {
    input: {
      folder: string;
      file: string;
      part: string;
      at: number;
      entry: NamedEntry & { takenAway?: boolean };
      clear: 'none' | 'full-names' | 'parts-too';
    };
    output: ErasedEverywhere;
  };
  /** Prepares the store as it is to be after restoring a backup. */
  readonly 'restore-aside': {
    input: { folder: string; file: string; part: string; at: number; name: string; how: RestoreHow };
    output: Restored;
  };
  /** Erases the person from the copies of the store; gives those that could not be rewritten. */
  readonly 'erase-copies': { input: { folder: string }; output: ErasedCopies };
  /** Erases the person from the journal and ends the erasure. The main thread writes nothing meanwhile. */
  readonly 'erase-journal': { input: { folder: string; at: number }; output: { needsBackup: boolean } };
  /** Models blocks as exact solids and gives their STEP files. `when` in milliseconds. */
  readonly 'model-blocks': {
    input: { parts: readonly { readonly form: BlockForm; readonly name: string }[]; when: number };
    output: string[];
  };
}
export type BackgroundJobName = keyof Jobs;

/** How a job reports its progress and learns that it is to stop. */
export interface JobHooks {
  progress(done: number, of: number): void;
  /** Throws `WorkCancelled` once the job is to stop. */
  goOn(): void;
}

/** The order that a worker receives. The first number of `stop` becomes other than 0 when it is to stop. */
export interface JobOrder {
  readonly name: BackgroundJobName;
  readonly input: unknown;
  readonly stop: SharedArrayBuffer;
  /** Whether it reports that it is ready and begins only on the next message. */
  readonly waits: boolean;
  /** The language that the program speaks: a refusal is put into words in the thread itself. */
  readonly language: LanguageTag;
}

/** A message of a worker. */
export type JobWord =
  | { readonly kind: 'ready' }
  | { readonly kind: 'progress'; readonly done: number; readonly of: number }
  | { readonly kind: 'done'; readonly output: unknown }
  | { readonly kind: 'cancelled' }
  | { readonly kind: 'failed'; readonly code: string; readonly message: string; readonly stack: string };

/** Thrown inside a long piece of work when the person has asked it to stop. */
export class WorkCancelled extends Error {}

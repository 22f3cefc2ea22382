import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { RecoveryRecord } from '../contract/safekeeping.ts';
import { programVersion } from '../shell/installed.ts';
import { openLog } from '../shell/log-file.ts';
import type { Shell } from '../shell/shell.ts';
import { newestGoodBackup } from '../store/backups.ts';
import { finishErasures } from '../store/erase-everywhere.ts';
import { keepManifest } from '../store/keep-manifest.ts';
import { openSafely } from '../store/open-safely.ts';
import { closeStore, STORE_FILE } from '../store/open-store.ts';
import type { Rebuilding } from '../store/rebuild.ts';
import type { Store } from '../store/store.ts';
import { forgetBundles } from './bundles.ts';
import { keepDailyBackups } from './daily-backup.ts';
import { speakAsChosen } from './display.ts';
import { findingSentences, rebuildingSentence } from './finding-sentences.ts';
import { createLibraryLink } from './library-link.ts';
import type { Program } from './program.ts';
import { refusalSentence, SENTENCES } from './sentences.ts';
import { finishImport } from './staged-imports.ts';
import { createWorkbench } from './work.ts';
import { createWriteLock } from './write-lock.ts';

/** A program that is open, or the sentence that says why it is not. */
export type OpenedProgram =
  | { readonly kind: 'open'; readonly program: Program; readonly close: () => void }
  | { readonly kind: 'refused'; readonly sentence: string };

/** Opens the store in `folder` for either shell: checks it, recovers it if it is damaged, keeps its daily backups. */
export function openProgram(where: {
  root: string;
  folder: string;
  shell: Shell;
  clock?: () => number;
}): OpenedProgram {
  // A store that was closed leaves no log beside it.
  const cutShort = existsSync(join(where.folder, `${STORE_FILE}-wal`));
  const log = openLog(where.folder, where.clock);
  const version = programVersion(where.root);
  const opened = openOrRecover(where.folder, where.clock);
  if (opened.kind === 'refused') {
    log.write(`start: version ${version}, ${where.shell.kind}, the store was not opened`);
    return opened;
  }
  const { store, recovery, notices } = opened;
  log.write(`start: version ${version}, ${where.shell.kind}, ${process.platform} ${process.arch}`);
  if (recovery) log.write('start: the store was damaged and has been recovered');
  const library = createLibraryLink();
  const program: Program = {
    store,
    shell: where.shell,
    version,
    log,
    assets: join(where.root, 'assets'),
    writeLock: createWriteLock(),
    turn: createWriteLock(),
    work: createWorkbench(),
    cutShort,
    recovery,
    notices,
    bundles: new Map(),
    library,
  };
  void speakAsChosen(program);
  const left = finishErasures(store);
  if (left.length > 0) notices.set('erasure', SENTENCES['erase-unfinished'](left));
  void finishImport(program);
  const stopBackups = keepDailyBackups(program);
  library.start(program);
  return {
    kind: 'open',
    program,
    close() {
      stopBackups();
      library.stop();
      forgetBundles(program);
      keepManifest(store);
      closeStore(store);
    },
  };
}

type OpenedStore =
  | {
      readonly kind: 'open';
      readonly store: Store;
      readonly recovery: RecoveryRecord | null;
      readonly notices: Map<string, string>;
    }
  | Extract<OpenedProgram, { kind: 'refused' }>;

function openOrRecover(folder: string, clock?: () => number): OpenedStore {
  const notices = new Map<string, string>();
  const opening = openSafely(folder, clock);
  if (opening.kind === 'refused') return { kind: 'refused', sentence: refusalSentence(opening.refusal) };
  const { store, copiedTo, findings } = opening;
  if (copiedTo) notices.set('upgrade', SENTENCES.upgraded(copiedTo));
  for (const [about, sentence] of findingSentences(findings)) notices.set(about, sentence);
  const { rebuilding } = findings;
  return { kind: 'open', store, recovery: rebuilding && recoveryRecord(folder, rebuilding), notices };
}

function recoveryRecord(folder: string, rebuilding: Rebuilding): RecoveryRecord {
  const backup = newestGoodBackup(folder);
  const { quarantinedAt, salvaged, unreadable } = rebuilding;
  return {
    quarantinedAt,
    salvaged,
    unreadable,
    newestGoodBackup: backup,
    message: rebuildingSentence(rebuilding, backup?.takenAt ?? null),
  };
}

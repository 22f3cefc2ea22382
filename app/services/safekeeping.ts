import { randomUUID } from 'node:crypto';
import { rmSync } from 'node:fs';
import { join } from 'node:path';
import type { BackgroundJobName, Jobs } from '../background/job.ts';
import type { CallOutput, ParsedInput } from '../contract/contract.ts';
import type { CallResult } from '../contract/result.ts';
import { carryOver, type RowKey, takeAside } from '../store/aside.ts';
import { type Backup, backupFolder, takeBackup } from '../store/backups.ts';
import type { Erasure } from '../store/erase.ts';
import {
  type ErasedCopies,
  type ErasedEverywhere,
  namesErased,
  settleErasure,
} from '../store/erase-everywhere.ts';
import { entriesOfPerson, type NamedEntry } from '../store/join-people.ts';
import { keepManifest } from '../store/keep-manifest.ts';
import { recordTitle } from '../store/record-title.ts';
import type { Restored } from '../store/restore.ts';
import { athletes } from '../store/roster.ts';
import { guardedTables, keyValues, whereKey } from '../store/row-guard.ts';
import { dropStaged } from '../store/staged-import.ts';
import { done, missing, type Program, refused } from './program.ts';
import { SENTENCES } from './sentences.ts';

/** Takes a backup now. Edits go on meanwhile; the copy is of the moment at which it was begun. */
export async function takeBackupNow(program: Program): Promise<CallResult<Backup>> {
  return done(await program.turn.alone(() => backUp(program, 'asked')));
}

/** Takes a backup in a worker. Edits wait a moment at its end, while the journal is shortened. */
export function backUp(program: Program, cause: Backup['cause']): Promise<Backup> {
  const { store, work } = program;
  return takeBackup(store, cause, {
    copy: ({ file }, to) => work.inWorker('backup', { name: 'backup', input: { file, to } }),
    async settle({ folder, clock }) {
      const input = { folder, at: clock() };
      await inLentStore(program, 'backup', { name: 'settle-backup', input });
    },
  });
}

/** Restores a backup, after one of the present. */
export function restore(
  program: Program,
  { name, how }: ParsedInput<'backups.restore'>,
): Promise<CallResult<CallOutput<'backups.restore'>>> {
  return program.turn.alone(async () => {
    const presentKeptAs = await backUp(program, 'before-restore');
    const restored = await restoreIn(program, { name, how, presentKeptAs });
    if (restored === 'no-such-backup') return refused('not-found', SENTENCES['no-such-backup']);
    if (restored === 'unreadable') return refused('damaged', SENTENCES['backup-unreadable']);
    return done({ presentKeptAs });
  });
}

/**
 * Restores: the new file is prepared aside and takes the store's place in a moment. What was written meanwhile is in the backup of
 * the present where everything is replaced, and stays where only something is added.
 */
async function restoreIn(
  program: Program,
  { name, how, presentKeptAs }: ParsedInput<'backups.restore'> & { presentKeptAs: Backup },
): Promise<Restored> {
  const { store, work } = program;
  return withAside(program, async (aside) => {
    const { folder, file, clock } = store;
    const input = { folder, file, part: aside.part, at: clock(), name, how };
    const restored = await work.inWorker('restore', { name: 'restore-aside', input });
    if (restored !== 'restored') return restored;
    await aside.take((changed) => {
      if (how === 'bring-back') carryOver(store, aside.part, changed);
      return how === 'replace' && changed.length > 0 ? join(backupFolder(folder), presentKeptAs.name) : null;
    });
    await aTurn();
    keepManifest(store);
    await backUpSoon(program);
    return restored;
  });
}

/** The journal has begun again: a backup makes it whole. Where that cannot be taken now, a later one does it. */
async function backUpSoon(program: Program): Promise<void> {
  try {
    await backUp(program, 'daily');
  } catch {
    // The safeguard knows that one is needed, and the next look tells what is in the way.
  }
}

/** A file aside, and how it takes the store's place. */
interface Aside {
  readonly part: string;
  /**
   * Takes the store's place, after what `before` does with the rows that were written meanwhile. `before` gives where the old file
   * goes, null for nowhere; where it gives false, nothing is taken.
   */
  take(before: (changed: readonly RowKey[]) => string | null | false): Promise<boolean>;
}

function aTurn(): Promise<void> {
  return new Promise((resolve) => setImmediate(resolve));
}

async function withAside<T>({ store, writeLock }: Program, work: (aside: Aside) => Promise<T>): Promise<T> {
  const part = unfinishedFile(store);
  const watch = store.safeguard.watch();
  try {
    return await work({
      part,
      take: (before) =>
        writeLock.alone(async () => {
          const oldTo = before(watch.changed());
          if (oldTo === false) return false;
          // Whoever reads has a turn between the two; whoever writes waits for both.
          await aTurn();
          takeAside(store, part, oldTo);
          return true;
        }),
    });
  } finally {
    watch.end();
    for (const ending of ['', '-wal', '-shm', '-journal']) rmSync(part + ending, { force: true });
  }
}

/** Says what erasing an athlete would take away. A worker finds out, in a copy; edits go on meanwhile. */
export async function previewErase(
  { store, turn, work }: Program,
  { id }: ParsedInput<'athletes.previewErase'>,
): Promise<CallResult<CallOutput<'athletes.previewErase'>>> {
  const name = athleteName(store, id);
  if (name === null) return missing('athlete');
  const entries = entriesToErase(store, { id, name });
  const copy = unfinishedFile(store);
  const input = { file: store.file, copy, entries };
  const each = await turn.alone(() => work.inWorker('erase-preview', { name: 'erase-preview', input }));
  return done(withTitles(store, together(each)));
}

/** A file that a worker writes beside the store: private, and swept at the next start if it is left behind. */
export function unfinishedFile({ file }: Program['store']): string {
  return `${file}-${randomUUID()}.part`;
}

/** Erases an athlete for good, once the name has been given as it stands. */
export function erase(
  program: Program,
  { id, name, clear }: ParsedInput<'athletes.erase'>,
): Promise<CallResult<CallOutput<'athletes.erase'>>> {
  const { store, turn } = program;
  return turn.alone(async () => {
    const known = athleteName(store, id);
    if (known === null) return missing('athlete');
    if (known.trim() !== name.trim()) return refused('not-allowed', SENTENCES['erase-name'](known));
    dropStaged(store.folder);
    const each: Erasure[] = [];
    let copies: ErasedCopies = { copiesRewritten: 0, copiesLeft: [] };
    for (const entry of entriesToErase(store, { id, name: known })) {
      const one = await eraseEntry(program, entry, clear);
      each.push(one);
      copies = one;
    }
    if (store.safeguard.needsBackup()) await backUpSoon(program);
    const { copiesRewritten, copiesLeft } = copies;
    const erased = { ...together(each), copiesRewritten, copiesLeft };
    return done({
      ...withTitles(store, erased),
      message: SENTENCES['erase-reach'](erased.copiesLeft.length),
    });
  });
}

/** A file is prepared aside this many times at most; after that, edits wait while the store itself is written. */
const TRIES = 3;

/**
 * Erases one entry: a worker erases from the copies and from a copy aside, which takes the store's place in a moment. Where somebody
 * wrote of that person meanwhile it begins again. Cut short anywhere, it is finished at the next start.
 */
export async function eraseEntry(
  program: Program,
  entry: NamedEntry & { takenAway?: boolean },
  clear: ParsedInput<'athletes.erase'>['clear'],
): Promise<ErasedEverywhere> {
  const { store, work } = program;
  for (let i = 0; i < TRIES; i++) {
    const erased = await withAside(program, async (aside) => {
      const { folder, file, clock } = store;
      const input = { folder, file, part: aside.part, at: clock(), entry, clear };
      const made = await work.inWorker('erase', { name: 'erase-aside', input });
      const isTaken = await aside.take((changed) => {
        if (changed.some((row) => isNamedIn(store, row))) return false;
        carryOver(store, aside.part, changed);
        return null;
      });
      if (!isTaken) return null;
      await aTurn();
      settleErasure(store);
      return made;
    });
    if (erased) return erased;
  }
  return eraseInPlace(program, entry, clear);
}

/** Whether a row as it is now names whoever is being erased. */
function isNamedIn({ db, folder }: Program['store'], { table, key }: RowKey): boolean {
  const names = namesErased(folder);
  const guarded = guardedTables(db).find(({ name }) => name === table)!;
  const row = db
    .prepare(`SELECT * FROM "${table}" WHERE ${whereKey(guarded)}`)
    .raw()
    .get(...keyValues(key));
  return ((row ?? []) as unknown[]).some((value) => typeof value === 'string' && names(value));
}

/** Erases one entry from the store itself. Edits wait while it is written; they go on while the copies of it are. */
async function eraseInPlace(
  program: Program,
  entry: NamedEntry & { takenAway?: boolean },
  clear: ParsedInput<'athletes.erase'>['clear'],
): Promise<ErasedEverywhere> {
  const { store, work } = program;
  const { folder } = store;
  const input = { folder, at: store.clock(), entry, clear };
  const { erasure } = await inLentStore(program, 'erase', { name: 'erase-store', input });
  const copies = await work.inWorker('erase', { name: 'erase-copies', input: { folder } });
  const at = store.clock();
  await inLentStore(program, 'erase', { name: 'erase-journal', input: { folder, at } });
  return { ...erasure, ...copies };
}

/** A person's entry, and before it every one that is joined to it: whoever is erased goes with all of them. */
function entriesToErase(store: Program['store'], entry: NamedEntry): NamedEntry[] {
  return [...entriesOfPerson(store, entry.id).joined, entry];
}

function together(each: readonly Erasure[]): Erasure {
  const sum = (of: (erasure: Erasure) => number) => each.reduce((total, one) => total + of(one), 0);
  return {
    fits: [...new Set(each.flatMap(({ fits }) => fits))],
    crewFits: [...new Set(each.flatMap(({ crewFits }) => crewFits))],
    revisions: sum(({ revisions }) => revisions),
    drafts: sum(({ drafts }) => drafts),
    trials: sum(({ trials }) => trials),
    measurings: sum(({ measurings }) => measurings),
    photos: sum(({ photos }) => photos),
    words: each.flatMap(({ words }) => words),
  };
}

/** The places in which the name stands, each with what its record is called. */
function withTitles<E extends Erasure>(store: Program['store'], erasure: E) {
  const words = erasure.words.map(({ kind, id, text, full }) => ({
    kind,
    title: recordTitle(store, { kind, id }),
    text,
    full,
  }));
  return { ...erasure, words };
}

/** The name as listed; an athlete whose own row does not read can be erased as well. */
function athleteName(store: Program['store'], id: string): string | null {
  const known = athletes.get(store, id)?.athlete.name;
  if (known !== undefined) return known;
  const row = store.db.prepare<[string], { name: string }>('SELECT name FROM athletes WHERE id = ?').get(id);
  return row?.name ?? null;
}

/** Jobs that write the store itself. */
type LentJob = {
  [N in BackgroundJobName]: Jobs[N]['output'] extends { needsBackup: boolean } ? N : never;
}[BackgroundJobName];

/** Lets a worker write the store, once it has loaded what it needs. Edits wait meanwhile; what only reads goes on. */
function inLentStore<N extends LentJob>(
  { store, writeLock, work }: Program,
  what: Parameters<Program['work']['inWorker']>[0],
  job: { name: N; input: Jobs[N]['input'] },
): Promise<Jobs[N]['output']> {
  const hold = (run: () => Promise<Jobs[N]['output']>) =>
    writeLock.alone(async () => {
      store.safeguard.lend();
      let left: { needsBackup: boolean; settled?: boolean } = { needsBackup: false };
      try {
        const done = await run();
        left = done;
        return done;
      } finally {
        store.safeguard.takeBack(left);
      }
    });
  return work.inWorker(what, { ...job, hold });
}

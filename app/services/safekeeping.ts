import { randomUUID } from 'node:crypto';
import type { JobName, Jobs } from '../background/job.ts';
import type { CallOutput, ParsedInput } from '../contract/contract.ts';
import type { CallResult } from '../contract/result.ts';
import { type Backup, takeBackup } from '../store/backups.ts';
import type { Erasure } from '../store/erase.ts';
import type { ErasedCopies, ErasedEverywhere } from '../store/erase-everywhere.ts';
import { entriesOf, type NamedEntry } from '../store/join-people.ts';
import { recordTitle } from '../store/record-title.ts';
import { athletes } from '../store/roster.ts';
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
    const { folder, clock } = program.store;
    const input = { folder, at: clock(), name, how };
    const { restored } = await inLentStore(program, 'restore', { name: 'restore', input });
    if (restored === 'no-such-backup') return refused('not-found', SENTENCES['no-such-backup']);
    if (restored === 'unreadable') return refused('damaged', SENTENCES['backup-unreadable']);
    return done({ presentKeptAs });
  });
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
    const { copiesRewritten, copiesLeft } = copies;
    const erased = { ...together(each), copiesRewritten, copiesLeft };
    return done({
      ...withTitles(store, erased),
      message: SENTENCES['erase-reach'](erased.copiesLeft.length),
    });
  });
}

/**
 * Erases one entry, in workers. Edits wait while the store itself is written; they go on while the copies of it are,
 * which takes longer. Cut short anywhere, it is finished at the next start.
 */
export async function eraseEntry(
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
  return [...entriesOf(store, entry.id).joined, entry];
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
type LentJob = { [N in JobName]: Jobs[N]['output'] extends { needsBackup: boolean } ? N : never }[JobName];

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

import { existsSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { makePrivateFile } from '../shell/private-files.ts';
import type { Incoming, IncomingFit, IncomingFitPart } from './incoming.ts';
import { mergeSteps } from './merge.ts';
import type { MergeCounts } from './merge-counts.ts';
import { syncFile } from './migrate.ts';
import { atomically, type Store } from './store.ts';

/**
 * What is about to be imported, read to its end and found sound. From the moment the file has this name the import takes place:
 * in short transactions, and after a crash at the next start.
 */
const STAGED = 'import-under-way.db';
const TABLES = `
CREATE TABLE items (n INTEGER PRIMARY KEY, kind TEXT NOT NULL, item TEXT NOT NULL, bytes BLOB) STRICT;
CREATE TABLE whole (items INTEGER NOT NULL, bytes INTEGER NOT NULL) STRICT;`;
const ENDINGS = ['', '-wal', '-shm', '-journal'];

/** How long one transaction of an import takes about, milliseconds. */
const TURN_MS = 6;
/** Revisions or trials that are imported at once: a few milliseconds. */
const MOST_AT_ONCE = 5;
/** What is larger goes into the store without being written down in the journal; a backup follows it. Bytes. */
const JOURNALLED = 8 * 1024 * 1024;

/** An import that has begun. */
export interface StagedImport {
  readonly items: number;
  readonly bytes: number;
  /** One after the other, in their order. */
  read(): Iterable<Incoming>;
  close(): void;
  /** It has been imported, or is not wanted. */
  remove(): void;
}

/** Writes items down as an import that is to be made. Throws what `items` throws, and then nothing is left. */
export function stageImport(folder: string, items: Iterable<Incoming>): void {
  const file = join(folder, STAGED);
  const beside = `${file}.part`;
  removeFile(beside);
  makePrivateFile(beside);
  const db = new Database(beside);
  try {
    db.pragma('journal_mode = OFF');
    db.pragma('synchronous = OFF');
    db.exec(TABLES);
    const add = db.prepare('INSERT INTO items (kind, item, bytes) VALUES (?, ?, ?)');
    const whole = { items: 0, bytes: 0 };
    db.transaction(() => {
      for (const piece of inSmallPieces(items)) {
        const { bytes, ...plain } = piece.item as { bytes?: Uint8Array };
        const text = JSON.stringify(plain);
        add.run(piece.kind, text, bytes ? Buffer.from(bytes) : null);
        whole.items += 1;
        whole.bytes += text.length + (bytes?.length ?? 0);
      }
      db.prepare('INSERT INTO whole (items, bytes) VALUES (@items, @bytes)').run(whole);
    })();
    db.close();
    syncFile(beside);
    renameSync(beside, file);
  } catch (error) {
    db.close();
    removeFile(beside);
    throw error;
  }
}

/** The import that has begun in a data folder; null if there is none. */
export function openStaged(folder: string): StagedImport | null {
  const file = join(folder, STAGED);
  if (!existsSync(file)) return null;
  const db = new Database(file, { readonly: true });
  const whole = db.prepare<[], { items: number; bytes: number }>('SELECT items, bytes FROM whole');
  return {
    ...whole.get()!,
    *read() {
      const next = db.prepare<[number], { n: number; kind: string; item: string; bytes: Buffer | null }>(
        'SELECT * FROM items WHERE n > ? ORDER BY n LIMIT 1',
      );
      for (let row = next.get(0); row; row = next.get(row.n)) {
        const { kind, bytes } = row;
        const item: object = JSON.parse(row.item);
        yield { kind, item: bytes ? { ...item, bytes } : item } as Incoming;
      }
    },
    close: () => void db.close(),
    remove() {
      db.close();
      removeFile(file);
    },
  };
}

/** Forgets an import that has not come to its end: somebody is erased, and it may hold that person. */
export function dropStaged(folder: string): void {
  removeFile(join(folder, STAGED));
}

/** Takes a staged import in, one short transaction at each step, between which the store may be edited. Gives at each how many items are in. */
export function* stagedSteps(store: Store, staged: StagedImport): Generator<number, MergeCounts> {
  const steps = mergeSteps(store, staged.read());
  let done = 0;
  for (;;) {
    store.safeguard.look();
    const until = performance.now() + TURN_MS;
    const last = atomically(
      store,
      () => {
        for (;;) {
          const step = steps.next();
          if (step.done || performance.now() > until) return step;
          done += 1;
        }
      },
      { unjournalled: staged.bytes > JOURNALLED },
    );
    store.safeguard.looked();
    if (last.done) return last.value;
    done += 1;
    yield done;
  }
}

function* inSmallPieces(items: Iterable<Incoming>): Generator<Incoming> {
  for (const item of items) yield* small(item);
}

/** An item in pieces that are each imported within a few milliseconds. */
function* small(incoming: Incoming): Generator<Incoming> {
  if (incoming.kind !== 'fit' && incoming.kind !== 'fit-part') {
    yield incoming;
    return;
  }
  const { item } = incoming;
  const fitId = incoming.kind === 'fit' ? incoming.item.id : incoming.item.fitId;
  const parts = partsOf(fitId, item);
  if (incoming.kind === 'fit') {
    // The newest revisions come with the fit: what it is like now is read off them.
    const head = parts.shift();
    const more = parts.length > 0 || incoming.item.more;
    const { revisions = [], trials = [] } = head ?? {};
    yield { kind: 'fit', item: { ...incoming.item, revisions, trials, ...(more ? { more: true } : {}) } };
  }
  for (const part of parts) yield { kind: 'fit-part', item: part };
}

function partsOf(
  fitId: string,
  { revisions, trials }: Pick<IncomingFit, 'revisions' | 'trials'>,
): IncomingFitPart[] {
  const newestFirst = [...revisions].sort((a, b) => b.number - a.number);
  const count = Math.ceil(Math.max(revisions.length, trials.length) / MOST_AT_ONCE);
  return Array.from({ length: count }, (_, i) => {
    const from = i * MOST_AT_ONCE;
    return {
      fitId,
      revisions: newestFirst.slice(from, from + MOST_AT_ONCE).reverse(),
      trials: trials.slice(from, from + MOST_AT_ONCE),
    };
  });
}

function removeFile(path: string): void {
  for (const ending of ENDINGS) rmSync(path + ending, { force: true });
}

import { copyFileSync, existsSync, renameSync } from 'node:fs';
import { join } from 'node:path';
import { type GoodCopy, goodCopies } from './good-copies.ts';
import { type ReadJournal, writeJournal } from './journal-file.ts';
import { emptyCounts } from './merge-counts.ts';
import { syncFile } from './migrate.ts';
import { closeStore, openStore, STORE_FILE, type StoreRefusal } from './open-store.ts';
import { quarantineStore, type Recovery, recoverStore, salvage } from './recover.ts';
import { replay } from './replay.ts';
import { positionOf } from './safeguard.ts';
import type { Store } from './store.ts';
import { renewIdentity } from './store-identity.ts';

/** What was found in a store's place. */
export type DamageCause = 'missing' | 'empty' | 'damaged' | 'foreign' | 'swapped' | 'older';

/** What is known beside a store of what belongs in it. */
export interface StoreFacts {
  /** Whose store it is; null if neither journal nor manifest reads. */
  readonly line: string | null;
  /** How far it had come at least. */
  readonly n: number;
  readonly journal: ReadJournal | null;
}

export type Rebuilt =
  | { readonly kind: 'rebuilt'; readonly store: Store; readonly rebuilding: Rebuilding }
  | { readonly kind: 'refused'; readonly refusal: StoreRefusal };

/** What was done about a store that could not be opened as it was. */
export interface Rebuilding extends Recovery {
  readonly cause: DamageCause;
  /** The backup that was built on; null if there was none. */
  readonly base: GoodCopy['backup'] | null;
  /** Whether everything that had been kept is there again. */
  readonly complete: boolean;
}

/**
 * Puts a store together again: what lies in its place is quarantined, the backup that had come furthest takes its place,
 * and the journal brings back what was kept since. Where that leaves a gap, what still reads of the old file is added.
 */
export function rebuildStore(
  folder: string,
  { cause, known, clock }: { cause: DamageCause; known: StoreFacts; clock: () => number },
): Rebuilt {
  const { journal } = known;
  const copies = goodCopies(folder).filter(
    ({ position }) => known.line === null || position === null || position.line === known.line,
  );
  const base = copies[0] ?? null;
  if (!base && !journal) return fromWhatReads(folder, cause, clock);
  const quarantinedAt = existsSync(join(folder, STORE_FILE)) ? quarantineStore(folder, clock) : '';
  if (base) putInPlace(base.path, folder);
  const opening = openStore(folder, clock);
  if (opening.kind === 'refused') return opening;
  const { store } = opening;
  const start = base?.position?.n ?? 0;
  const changes = (journal?.changes ?? []).filter(({ n }) => n > start);
  if (known.line !== null) store.db.prepare('UPDATE journal_position SET line = ?').run(known.line);
  replay(store.db, changes);
  const reached = positionOf(store.db)?.n ?? 0;
  const gapless =
    journal !== null && journal.damagedLines === 0 && (journal.from <= start || reached <= start);
  const complete = gapless && reached >= known.n;
  const ownFile = cause === 'damaged' || cause === 'older';
  const found =
    !complete && ownFile && quarantinedAt !== ''
      ? salvage(store, quarantinedAt)
      : { salvaged: emptyCounts(), unreadable: 0, brokenTables: [], pages: null };
  renewIdentity(store);
  const rebuilding = { ...found, cause, quarantinedAt, base: base?.backup ?? null, complete };
  return beginAgain(store, { journal: gapless ? journal : null, rebuilding });
}

/** Opens the rebuilt store again, over the journal that goes with it; without one, it begins a new one. */
function beginAgain(
  store: Store,
  { journal, rebuilding }: { journal: ReadJournal | null; rebuilding: Rebuilding },
): Rebuilt {
  const { folder, clock } = store;
  const line = positionOf(store.db)!.line;
  closeStore(store);
  if (journal) writeJournal(folder, { line, from: journal.from }, journal.changes);
  const opening = openStore(folder, clock);
  return opening.kind === 'open' ? { kind: 'rebuilt', store: opening.store, rebuilding } : opening;
}

/** Neither backup nor journal: what still reads is all there is. */
function fromWhatReads(folder: string, cause: DamageCause, clock: () => number): Rebuilt {
  const recovered = recoverStore(folder, clock);
  if (recovered.kind === 'refused') return recovered;
  const rebuilding = { ...recovered.recovery, cause, base: null, complete: false };
  return { kind: 'rebuilt', store: recovered.store, rebuilding };
}

/** Written beside its place and renamed into it: a crash on the way leaves no half of a store. */
function putInPlace(copy: string, folder: string): void {
  const place = join(folder, STORE_FILE);
  copyFileSync(copy, `${place}.part`);
  syncFile(`${place}.part`);
  renameSync(`${place}.part`, place);
}

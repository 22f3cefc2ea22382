import type Database from 'better-sqlite3';
import type { Incoming } from './incoming.ts';
import { readIncomingFit, readRevisions, readTrials } from './read-incoming.ts';

/** A fit, or what else belongs to it. */
export type FitPiece = Extract<Incoming, { kind: 'fit' | 'fit-part' }>;

interface Sized {
  readonly key: string;
  readonly bytes: number;
}

/**
 * One fit of a sound store in pieces of about `most` bytes: the fit with its newest revisions, then older revisions and more
 * trials. Nothing if nothing of it reads.
 */
export function* fitInPieces(db: Database.Database, id: string, most: number): Generator<FitPiece> {
  const revisions = cut(sizesOf(db, REVISIONS, id), most);
  const trials = cut(sizesOf(db, TRIALS, id), most);
  let head = false;
  for (let i = 0; i < Math.max(revisions.length, trials.length, 1); i++) {
    const piece = {
      revisions: readRevisions(db, revisions[i] ?? []),
      trials: readTrials(db, trials[i] ?? []),
    };
    const isLast = i + 1 >= Math.max(revisions.length, trials.length);
    if (head) {
      if (piece.revisions.length + piece.trials.length > 0)
        yield { kind: 'fit-part', item: { fitId: id, ...piece } };
      continue;
    }
    const item = readIncomingFit(db, id, { ...piece, more: !isLast });
    if (item) yield { kind: 'fit', item };
    head = item !== null;
  }
}

/** With what stands around a row's own texts. */
const AROUND = 300;
const REVISIONS = `SELECT id AS key, length(fit) + length(reason) + ${AROUND} AS bytes FROM revisions
  WHERE fit_id = ? ORDER BY number DESC`;
const TRIALS = `SELECT id AS key, length(trial) + ${AROUND} AS bytes FROM trials WHERE fit_id = ? ORDER BY created_at, id`;

function sizesOf(db: Database.Database, sql: string, id: string): Sized[] {
  return db.prepare<[string], Sized>(sql).all(id);
}

/** Keys in groups of at most `most` bytes each; one that is larger by itself is a group of its own. */
function cut(sized: readonly Sized[], most: number): string[][] {
  const groups: string[][] = [];
  let filled = Number.POSITIVE_INFINITY;
  for (const { key, bytes } of sized) {
    if (filled + bytes > most) {
      groups.push([]);
      filled = 0;
    }
    groups.at(-1)!.push(key);
    filled += bytes;
  }
  return groups;
}

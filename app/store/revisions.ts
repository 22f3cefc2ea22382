import { randomUUID } from 'node:crypto';
import { type Fit, fitSchema } from '../../core/document/fit-schema.ts';
import type { RevisionAnswer, RevisionSummary } from '../contract/records.ts';
import { newestDraft, touchFit } from './fit-list-entry.ts';
import { prepared } from './prepared.ts';
import { readStored } from './quarantine.ts';
import { describeRevision, REVISION_ROWS, type RevisionRow, summaryOfRow } from './revision-words.ts';
import { now, type Store } from './store.ts';
import { tracked } from './track.ts';

/** A revision as opened: what it says it is, and the fit it holds. */
export interface OpenedRevision {
  readonly revision: RevisionSummary;
  readonly fit: Fit;
}

/** So many revisions come with a fit; earlier ones are asked for. */
export const REVISIONS_AT_ONCE = 200;

/** Revisions of a fit, newest first: at most so many, and only those before the number `before` if it is given. */
export function listRevisions(
  store: Store,
  fitId: string,
  { before, limit = REVISIONS_AT_ONCE }: { before?: number; limit?: number } = {},
): RevisionSummary[] {
  const rows = prepared<[string, number, number], RevisionRow>(
    store.db,
    `${REVISION_ROWS} WHERE fit_id = ? AND number < ? ORDER BY number DESC LIMIT ?`,
  );
  return rows.all(fitId, before ?? Number.MAX_SAFE_INTEGER, limit).map((row) => summaryOfRow(store, row));
}

/** The identifiers of a fit's revisions. */
export function revisionIdsOf({ db }: Pick<Store, 'db'>, fitId: string): string[] {
  const ids = db.prepare<[string], string>('SELECT id FROM revisions WHERE fit_id = ?').pluck();
  return ids.all(fitId);
}

function revisionSummary(store: Store, id: string): RevisionSummary | null {
  const row = prepared<[string], RevisionRow>(store.db, `${REVISION_ROWS} WHERE revisions.id = ?`).get(id);
  return row ? summaryOfRow(store, row) : null;
}

/** One revision with its fit. `damaged` when its row is there but cannot be read. */
export function openRevision(store: Store, id: string): OpenedRevision | 'none' | 'damaged' {
  const revision = revisionSummary(store, id);
  if (!revision) return 'none';
  const fit = readRevision(store, id);
  return fit ? { revision, fit } : 'damaged';
}

function readRevision(store: Store, id: string): Fit | null {
  const { fit: text } = prepared<[string], { fit: string }>(
    store.db,
    'SELECT fit FROM revisions WHERE id = ?',
  ).get(id)!;
  return readStored(store, { table: 'revisions', rowId: id }, { text, schema: fitSchema });
}

/** The newest revision of a fit that can be read; null if there is none. */
export function newestReadableRevision(store: Store, fitId: string): OpenedRevision | null {
  let before: number | undefined;
  for (;;) {
    const page = listRevisions(store, fitId, { before, limit: 20 });
    for (const revision of page) {
      const fit = readRevision(store, revision.id);
      if (fit) return { revision, fit };
    }
    before = page.at(-1)?.number;
    if (before === undefined) return null;
  }
}

/** Adds a named revision to a fit. The draft it was made from is kept by that, and goes. */
export function saveRevision(
  store: Store,
  made: {
    fitId: string;
    fit: Fit;
    name: string;
    reason: string;
    answers?: readonly RevisionAnswer[];
    basedOn?: string | null;
  },
): RevisionSummary | 'none' | 'conflict' {
  const { fitId, fit, name, reason, answers = [], basedOn } = made;
  return tracked(store, { kind: 'fit', id: fitId }, () => {
    const draftSavedAt = newestDraft(store, fitId);
    if (draftSavedAt === 'none') return 'none';
    if (basedOn !== undefined && basedOn !== draftSavedAt) return 'conflict';
    const at = now(store);
    const id = randomUUID();
    store.db
      .prepare(
        `INSERT INTO revisions (id, fit_id, number, name, reason, saved_at, fit)
         SELECT ?, ?, coalesce(max(number), 0) + 1, ?, ?, ?, ? FROM revisions WHERE fit_id = ?`,
      )
      .run(id, fitId, name, reason, at, JSON.stringify(fit), fitId);
    describeRevision(store, { id, fit, name, reason, answers });
    store.db.prepare('DELETE FROM drafts WHERE fit_id = ?').run(fitId);
    touchFit(store, { id: fitId, fit, at });
    return revisionSummary(store, id)!;
  });
}

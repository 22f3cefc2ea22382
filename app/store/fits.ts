import { randomUUID } from 'node:crypto';
import { z } from 'zod';
import { type Fit, fitSchema } from '../../core/document/fit-schema.ts';
import type { Listing } from '../contract/contract.ts';
import type { FitSummary, OpenedFit } from '../contract/records.ts';
import { listEntry, newestDraft, touchFit } from './fit-list-entry.ts';
import { prepared } from './prepared.ts';
import { putBack, readStored } from './quarantine.ts';
import { listRevisions, newestReadableRevision } from './revisions.ts';
import { EVERY_ROW, searchPattern } from './search-text.ts';
import { now, type Store } from './store.ts';
import { tracked } from './track.ts';

interface FitRow {
  readonly id: string;
  readonly name: string;
  readonly boatName: string;
  readonly athleteNames: string;
  readonly changedAt: string;
  readonly archivedAt: string | null;
  readonly revisions: number;
  readonly draftSavedAt: string | null;
}

const SUMMARY = `SELECT fits.id, fits.name, boat_name AS boatName, athlete_names AS athleteNames,
    changed_at AS changedAt, archived_at AS archivedAt, drafts.saved_at AS draftSavedAt,
    (SELECT count(*) FROM revisions WHERE fit_id = fits.id) AS revisions
  FROM fits LEFT JOIN drafts ON drafts.fit_id = fits.id`;

/** Summaries of one page of fits, last changed first. */
export function listFits(store: Store, { archived, search, limit, offset }: Listing): FitSummary[] {
  return store.db
    .prepare<[number, string, number, number], FitRow>(
      `${SUMMARY} WHERE (archived_at IS NOT NULL) = ? AND search LIKE ? ESCAPE '\\'
       ORDER BY changed_at DESC, fits.id LIMIT ? OFFSET ?`,
    )
    .all(archived ? 1 : 0, searchPattern(search), limit ?? EVERY_ROW, offset)
    .map((row) => summaryOf(store, row))
    .filter((summary) => summary !== null);
}

/** Every fit that stands in a boat now, archived ones too, last changed first. */
export function fitsOfBoat(store: Store, boatId: string): FitSummary[] {
  return store.db
    .prepare<[string], FitRow>(`${SUMMARY} WHERE boat_id = ? ORDER BY changed_at DESC, fits.id`)
    .all(boatId)
    .map((row) => summaryOf(store, row))
    .filter((summary) => summary !== null);
}

function summaryOf(store: Store, row: FitRow): FitSummary | null {
  const place = { table: 'fits', rowId: row.id } as const;
  const athleteNames = readStored(store, place, { text: row.athleteNames, schema: z.array(z.string()) });
  if (!athleteNames) return null;
  const { id, name, boatName, revisions, changedAt } = row;
  const hasDraft = row.draftSavedAt !== null;
  return {
    id,
    name,
    boatName,
    athleteNames,
    revisions,
    hasDraft,
    archived: row.archivedAt !== null,
    changedAt,
  };
}

/** One fit's summary; null if there is none or its row is quarantined. */
function fitSummary(store: Store, id: string): FitSummary | null {
  const row = store.db.prepare<[string], FitRow>(`${SUMMARY} WHERE fits.id = ?`).get(id);
  return row ? summaryOf(store, row) : null;
}

/** Makes a fit; what it holds is its first draft. */
export function createFit(store: Store, fit: Fit): OpenedFit {
  const id = randomUUID();
  return tracked(store, { kind: 'fit', id }, () => {
    const at = now(store);
    store.db
      .prepare(
        `INSERT INTO fits (id, name, boat_name, athlete_names, athlete_ids, boat_id, search, created_at, changed_at)
         VALUES (@id, @name, @boatName, @athleteNames, @athleteIds, @boatId, @search, @at, @at)`,
      )
      .run({ id, at, ...listEntry(fit) });
    writeDraft(store, { id, fit, at });
    return openedFit(store, { id, fit, draftSavedAt: at });
  });
}

function openedFit(store: Store, opened: Omit<OpenedFit, 'revisions'>): OpenedFit {
  return { ...opened, revisions: listRevisions(store, opened.id) };
}

/**
 * A fit's newest state: its draft if there is one that reads, else its newest revision that reads. `damaged` when
 * there is a fit but nothing of it can be read.
 */
export function openFit(store: Store, id: string): OpenedFit | 'none' | 'damaged' {
  if (!store.db.prepare('SELECT 1 FROM fits WHERE id = ?').get(id)) return 'none';
  const newest = newestState(store, id);
  return newest ? openedFit(store, { id, ...newest }) : 'damaged';
}

/** A fit as it stands now, without its revisions; null if nothing of it can be read. */
export function newestState(store: Store, id: string): Pick<OpenedFit, 'fit' | 'draftSavedAt'> | null {
  const draft = readDraft(store, id);
  if (draft) return { fit: draft.fit, draftSavedAt: draft.savedAt };
  const newest = newestReadableRevision(store, id);
  return newest && { fit: newest.fit, draftSavedAt: null };
}

function readDraft(store: Store, id: string): { fit: Fit; savedAt: string } | null {
  const row = store.db
    .prepare<[string], { text: string; savedAt: string }>(
      'SELECT fit AS text, saved_at AS savedAt FROM drafts WHERE fit_id = ?',
    )
    .get(id);
  if (!row) return null;
  const fit = readStored(store, { table: 'drafts', rowId: id }, { text: row.text, schema: fitSchema });
  return fit && { fit, savedAt: row.savedAt };
}

/**
 * Keeps a fit as it stands; on the disk when this returns. `basedOn`, if given, is the draft's instant that the
 * caller last saw.
 */
export function saveDraft(
  store: Store,
  draft: { id: string; fit: Fit; basedOn?: string | null },
): { savedAt: string } | 'none' | 'conflict' {
  return tracked(store, { kind: 'fit', id: draft.id }, () => {
    const { id, fit } = draft;
    const known = newestDraft(store, id);
    if (known === 'none') return 'none';
    if (draft.basedOn !== undefined && draft.basedOn !== known) return 'conflict';
    const at = laterThan(known, now(store));
    writeDraft(store, { id, fit, at });
    touchFit(store, { id, fit, at });
    return { savedAt: at };
  });
}

/** `at`, or a millisecond after `before` where the clock has not moved on: two drafts never share an instant. */
export function laterThan(before: string | null, at: string): string {
  return before !== null && at <= before ? new Date(Date.parse(before) + 1).toISOString() : at;
}

/** Writes a draft's row; part of a larger edit that is noted as a whole. */
export function writeDraft(store: Store, { id, fit, at }: { id: string; fit: Fit; at: string }): void {
  const put = prepared(
    store.db,
    `INSERT INTO drafts (fit_id, saved_at, fit) VALUES (?, ?, ?)
     ON CONFLICT (fit_id) DO UPDATE SET saved_at = excluded.saved_at, fit = excluded.fit`,
  );
  put.run(id, at, JSON.stringify(fit));
  putBack(store, { table: 'drafts', rowId: id });
}

/** Forgets a draft, unless it is all there is of the fit. */
export function discardDraft(store: Store, id: string): OpenedFit | 'none' | 'damaged' | 'only-draft' {
  return tracked(store, { kind: 'fit', id }, () => {
    const newest = newestReadableRevision(store, id);
    if (!newest) return store.db.prepare('SELECT 1 FROM fits WHERE id = ?').get(id) ? 'only-draft' : 'none';
    store.db.prepare('DELETE FROM drafts WHERE fit_id = ?').run(id);
    putBack(store, { table: 'drafts', rowId: id });
    touchFit(store, { id, fit: newest.fit, at: now(store) });
    return openFit(store, id);
  });
}

/** Sets a fit aside from the list, or back into it; nothing of it is lost. Null if there is none. */
export function setFitArchived(store: Store, id: string, archived: boolean): FitSummary | null {
  return tracked(store, { kind: 'fit', id }, () => {
    store.db
      .prepare('UPDATE fits SET archived_at = CASE WHEN ? THEN coalesce(archived_at, ?) END WHERE id = ?')
      .run(archived ? 1 : 0, now(store), id);
    return fitSummary(store, id);
  });
}

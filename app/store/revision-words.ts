import type { Fit } from '../../core/document/fit-schema.ts';
import { type RevisionAnswer, type RevisionSummary, revisionAnswers } from '../contract/records.ts';
import { athleteIds } from './fit-list-entry.ts';
import { prepared } from './prepared.ts';
import { readStored } from './quarantine.ts';
import { searchText } from './search-text.ts';
import type { Store } from './store.ts';

/** A revision's row as far as a list needs it, its answers still text. */
export type RevisionRow = Omit<RevisionSummary, 'answers'> & { readonly answers: string | null };

/** Columns and tables from which `summaryOfRow` makes a summary. */
export const REVISION_ROWS = `SELECT revisions.id, number, name, reason, revisions.saved_at AS savedAt, answers
  FROM revisions LEFT JOIN revision_words ON revision_id = revisions.id`;

/** Answers that do not read are left out of the list and listed as quarantined; the revision itself stays. */
export function summaryOfRow(store: Store, row: RevisionRow): RevisionSummary {
  const place = { table: 'revision_words', rowId: row.id } as const;
  const answers =
    row.answers === null ? [] : readStored(store, place, { text: row.answers, schema: revisionAnswers });
  return { ...row, answers: answers ?? [] };
}

/** Writes beside a new revision what it answers, who knelt, and the words it is found by. */
export function describeRevision(
  { db }: Pick<Store, 'db'>,
  made: { id: string; fit: Fit; name: string; reason: string; answers: readonly RevisionAnswer[] },
): void {
  const { id, fit, name, reason, answers } = made;
  const add = prepared(
    db,
    `INSERT INTO revision_words (revision_id, answers, athlete_ids, search, saved_at)
     SELECT id, ?, ?, ?, saved_at FROM revisions WHERE id = ?`,
  );
  add.run(JSON.stringify(answers), JSON.stringify(athleteIds(fit)), searchText(name, reason), id);
}

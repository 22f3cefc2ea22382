import type { IncomingTrial } from './incoming.ts';
import { type MergedRecord, mergeRecord } from './merge-record.ts';
import { prepared } from './prepared.ts';
import { putBack } from './quarantine.ts';
import type { Store } from './store.ts';
import { trialWords } from './trials.ts';

/** Takes a trial of a fit in. */
export function mergeTrial(store: Store, fitId: string, item: IncomingTrial): MergedRecord {
  const { id, trial, revisionId, athleteId, archivedAt, versions, changedAt } = item;
  const content = { document: trial, archived: archivedAt !== null, revisionId, athleteId };
  const insert = () => insertTrial(store, fitId, item);
  return mergeRecord(store, { kind: 'trial', id }, { content, versions, changedAt, insert });
}

function insertTrial(store: Store, fitId: string, item: IncomingTrial): void {
  const { versions: _, trial, ...row } = item;
  const put = prepared(
    store.db,
    `INSERT INTO trials (id, fit_id, revision_id, athlete_id, trial, search, created_at, changed_at, archived_at)
     VALUES (@id, @fitId, @revisionId, @athleteId, @text, @search, @createdAt, @changedAt, @archivedAt)
     ON CONFLICT (id) DO UPDATE SET revision_id = excluded.revision_id, athlete_id = excluded.athlete_id,
       trial = excluded.trial, search = excluded.search, changed_at = excluded.changed_at`,
  );
  put.run({ ...row, fitId, text: JSON.stringify(trial), search: trialWords(trial) });
  putBack(store, { table: 'trials', rowId: item.id });
}

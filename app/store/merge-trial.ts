import type { IncomingTrial } from './incoming.ts';
import type { MergeCount } from './merge-counts.ts';
import { isSetAside, putBack } from './quarantine.ts';
import type { Store } from './store.ts';
import { trialWords } from './trials.ts';

/** Takes a trial of a fit in, by its id: added where it is missing, brought up to date where it is newer. */
export function mergeTrial(store: Store, fitId: string, item: IncomingTrial): keyof MergeCount {
  const { id, trial } = item;
  const text = JSON.stringify(trial);
  const known = store.db
    .prepare<[string], { text: string; changedAt: string }>(
      'SELECT trial AS text, changed_at AS changedAt FROM trials WHERE id = ?',
    )
    .get(id);
  if (known?.text === text) return 'same';
  const place = { table: 'trials', rowId: id } as const;
  if (known && known.changedAt >= item.changedAt && !isSetAside(store, place)) return 'keptNewer';
  store.db
    .prepare(
      `INSERT INTO trials (id, fit_id, revision_id, athlete_id, trial, search, created_at, changed_at, archived_at)
       VALUES (@id, @fitId, @revisionId, @athleteId, @text, @search, @createdAt, @changedAt, @archivedAt)
       ON CONFLICT (id) DO UPDATE SET revision_id = excluded.revision_id, athlete_id = excluded.athlete_id,
         trial = excluded.trial, search = excluded.search, changed_at = excluded.changed_at`,
    )
    .run({ ...item, fitId, text, search: trialWords(trial) });
  putBack(store, place);
  return known ? 'updated' : 'added';
}

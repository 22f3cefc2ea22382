import type { IncomingRevision } from './incoming.ts';
import { prepared } from './prepared.ts';
import { isQuarantined, putBack } from './quarantine.ts';
import { withRevisionsUnlocked } from './revision-lock.ts';
import { describeRevision } from './revision-words.ts';
import type { Store } from './store.ts';

/**
 * Adds a revision that is not known by its id, or cannot be read here any more. It takes the next free number where its own
 * is taken; its mark is the same everywhere.
 */
export function mergeRevision(store: Store, fitId: string, revision: IncomingRevision): boolean {
  if (prepared(store.db, 'SELECT 1 FROM revisions WHERE id = ?').get(revision.id)) {
    const place = { table: 'revisions', rowId: revision.id } as const;
    if (!isQuarantined(store, place)) return false;
    withRevisionsUnlocked(store, [revision.id], () => {
      store.db.prepare('DELETE FROM revision_words WHERE revision_id = ?').run(revision.id);
      store.db.prepare('DELETE FROM revisions WHERE id = ?').run(revision.id);
    });
    putBack(store, place);
  }
  const numbered = prepared(store.db, 'SELECT 1 FROM revisions WHERE fit_id = ? AND number = ?');
  const taken = numbered.get(fitId, revision.number);
  const add = prepared(
    store.db,
    `INSERT INTO revisions (id, fit_id, number, name, reason, saved_at, fit)
     SELECT @id, @fitId, CASE WHEN @taken THEN coalesce(max(number), 0) + 1 ELSE @number END,
       @name, @reason, @savedAt, @fit FROM revisions WHERE fit_id = @fitId`,
  );
  add.run({ ...revision, fitId, taken: taken ? 1 : 0, fit: JSON.stringify(revision.fit) });
  describeRevision(store, revision);
  return true;
}

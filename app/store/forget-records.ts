import { eraseVersionsOf } from './erase-versions.ts';
import type { RecordRef } from './record-versions.ts';
import { withRevisionsUnlocked } from './revision-lock.ts';
import { revisionIdsOf } from './revisions.ts';
import { atomically, type Store } from './store.ts';

/** What belongs to others goes after what may belong to it. */
const ORDER: readonly RecordRef['kind'][] = ['trial', 'photo', 'fit', 'paddle', 'boat', 'athlete'];

/**
 * Takes records out of this store without a word to anybody: no tombstone, no note of a removal. If they come again, they are new.
 * What own records hold of them stays. One record at each step.
 */
export function* forgetRecords(store: Store, refs: readonly RecordRef[]): Generator<void, void> {
  for (const kind of ORDER)
    for (const ref of refs.filter((one) => one.kind === kind)) {
      atomically(store, () => forget(store, ref));
      yield;
    }
}

function forget(store: Store, { kind, id }: RecordRef): void {
  const { db } = store;
  const remove = (sql: string) => db.prepare(sql).run(id);
  const gone = (other: RecordRef['kind'], ids: readonly string[]) => eraseVersionsOf(db, other, ids);
  const idsOf = (sql: string) => db.prepare<[string], string>(sql).pluck().all(id);
  if (kind === 'fit') {
    gone('trial', idsOf('SELECT id FROM trials WHERE fit_id = ?'));
    remove('DELETE FROM trials WHERE fit_id = ?');
    remove('DELETE FROM drafts WHERE fit_id = ?');
    withRevisionsUnlocked(store, revisionIdsOf(store, id), () => {
      remove('DELETE FROM revision_words WHERE revision_id IN (SELECT id FROM revisions WHERE fit_id = ?)');
      remove('DELETE FROM revisions WHERE fit_id = ?');
    });
  }
  if (kind === 'athlete') remove('DELETE FROM measurings WHERE athlete_id = ?');
  if (kind === 'boat') {
    gone('photo', idsOf('SELECT id FROM boat_photos WHERE boat_id = ?'));
    remove('DELETE FROM boat_photos WHERE boat_id = ?');
  }
  remove(`DELETE FROM ${kind === 'photo' ? 'boat_photos' : `${kind}s`} WHERE id = ?`);
  gone(kind, [id]);
}

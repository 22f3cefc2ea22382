import type { Incoming } from './incoming.ts';
import { type MergedRecord, mergeRecord } from './merge-record.ts';
import { subjectRow } from './photos.ts';
import { prepared } from './prepared.ts';
import { putRecord } from './put-record.ts';
import type { Store } from './store.ts';

type Item<K extends Incoming['kind']> = Extract<Incoming, { kind: K }>['item'];

/** Takes a photograph in, its boat having come before it. One that was removed here stays removed. */
export function mergePhoto(store: Store, item: Item<'photo'>): MergedRecord {
  const { id, boatId, mime, addedAt, bytes, versions, ...text } = item;
  const ref = { kind: 'photo', id } as const;
  const insert = () => {
    const add = prepared(
      store.db,
      `INSERT INTO boat_photos (id, boat_id, caption, mime, bytes, added_at, athlete_id, fit_id, study)
       VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT (id) DO NOTHING`,
    );
    add.run(id, boatId, text.caption, mime, Buffer.from(bytes), addedAt, ...subjectRow(text));
  };
  return mergeRecord(store, ref, {
    content: { document: text },
    versions,
    changedAt: addedAt,
    insert,
    put: (content) => {
      // Removed here and written under elsewhere meanwhile: it is shown again until somebody decides.
      if (content.document) insert();
      return putRecord(store, ref, { content, at: addedAt });
    },
  });
}

/** Takes over that a photograph was removed elsewhere; one that was written under here meanwhile stays until decided. */
export function mergeRemovedPhoto(store: Store, { id, versions }: Item<'removed-photo'>): MergedRecord {
  const content = { document: null };
  return mergeRecord(store, { kind: 'photo', id }, { content, versions, changedAt: '', insert: () => {} });
}

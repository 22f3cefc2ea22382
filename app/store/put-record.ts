import type { RecordContent } from '../changes/record-content.ts';
import { documentWords } from './document-words.ts';
import { subjectRow } from './photos.ts';
import { prepared } from './prepared.ts';
import { putFitState } from './put-fit-state.ts';
import { putBack } from './quarantine.ts';
import { checkedDocument } from './record-rows.ts';
import type { RecordRef } from './record-versions.ts';
import type { Store } from './store.ts';
import { trialWords } from './trials.ts';

/**
 * Writes a record that is here in the state that fields make, changed at `at`. False, and nothing is changed, if that is no
 * sound document. A photograph without a caption was removed, and goes.
 */
export function putRecord(
  store: Store,
  { kind, id }: RecordRef,
  state: { readonly content: RecordContent; readonly at: string },
): boolean {
  switch (kind) {
    case 'fit':
      return putFitState(store, id, state);
    case 'trial':
      return putTrial(store, id, state);
    case 'photo':
      return putPhotoText(store, id, state.content);
    default:
      return putListed(store, { kind, id }, state);
  }
}

interface State {
  readonly content: RecordContent;
  readonly at: string;
}

type Listed = { readonly kind: 'athlete' | 'boat' | 'paddle'; readonly id: string };

function putListed(store: Store, { kind, id }: Listed, { content, at }: State): boolean {
  const document = checkedDocument(kind, content.document);
  if (!document) return false;
  const put = prepared(
    store.db,
    `UPDATE ${kind}s SET name = @name, search = @search, ${kind} = @text, changed_at = max(changed_at, @at),
       archived_at = CASE WHEN @archived THEN coalesce(archived_at, @at) END WHERE id = @id`,
  );
  put.run({
    id,
    name: document.name,
    search: documentWords(document),
    text: JSON.stringify({ ...document, id }),
    archived: content.archived ? 1 : 0,
    at,
  });
  putBack(store, { table: `${kind}s`, rowId: id });
  if (kind === 'athlete') putMeasured(store, id, { content, at });
  return true;
}

/** The days of an athlete's measurings: those that are gone go. And to which other entry this one is joined. */
function putMeasured({ db }: Store, id: string, { content, at }: State): void {
  const days = content.measured ?? [];
  const put = prepared(
    db,
    `INSERT INTO measurings (athlete_id, taken_on, measuring, saved_at) VALUES (?, ?, ?, ?)
     ON CONFLICT (athlete_id, taken_on) DO UPDATE SET measuring = excluded.measuring, saved_at = excluded.saved_at
     WHERE measuring <> excluded.measuring`,
  );
  for (const day of days) put.run(id, day.takenOn, JSON.stringify(day), at);
  const removeOthers = prepared(
    db,
    'DELETE FROM measurings WHERE athlete_id = ? AND taken_on NOT IN (SELECT value FROM json_each(?))',
  );
  removeOthers.run(id, JSON.stringify(days.map(({ takenOn }) => takenOn)));
  prepared(db, 'UPDATE athletes SET joined_into = ? WHERE id = ?').run(content.joinedInto ?? null, id);
}

function putTrial(store: Store, id: string, { content, at }: State): boolean {
  const trial = checkedDocument('trial', content.document);
  if (!trial) return false;
  const put = prepared(
    store.db,
    `UPDATE trials SET revision_id = coalesce(@revisionId, revision_id), athlete_id = @athleteId, trial = @text,
       search = @search, changed_at = max(changed_at, @at),
       archived_at = CASE WHEN @archived THEN coalesce(archived_at, @at) END WHERE id = @id`,
  );
  put.run({
    id,
    revisionId: content.revisionId ?? null,
    athleteId: content.athleteId ?? null,
    text: JSON.stringify(trial),
    search: trialWords(trial),
    archived: content.archived ? 1 : 0,
    at,
  });
  putBack(store, { table: 'trials', rowId: id });
  return true;
}

function putPhotoText({ db }: Store, id: string, { document }: RecordContent): boolean {
  const text = checkedDocument('photo', document);
  if (!text) {
    prepared(db, 'DELETE FROM boat_photos WHERE id = ?').run(id);
    return true;
  }
  // Words of a picture that is gone cannot stand: they go on waiting.
  const put = prepared(
    db,
    'UPDATE boat_photos SET caption = ?, athlete_id = ?, fit_id = ?, study = ? WHERE id = ?',
  );
  return put.run(text.caption, ...subjectRow(text), id).changes > 0;
}

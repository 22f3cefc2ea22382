import type { RecordKind } from '../changes/record-shapes.ts';
import type { RecordRef } from './record-versions.ts';
import type { Store } from './store.ts';

const QUERIES: Readonly<Record<RecordKind, string>> = {
  athlete: 'SELECT name FROM athletes WHERE id = ?',
  boat: 'SELECT name FROM boats WHERE id = ?',
  paddle: 'SELECT name FROM paddles WHERE id = ?',
  fit: 'SELECT name FROM fits WHERE id = ?',
  trial: 'SELECT fits.name FROM trials JOIN fits ON fits.id = fit_id WHERE trials.id = ?',
  photo: 'SELECT name FROM boat_photos JOIN boats ON boats.id = boat_id WHERE boat_photos.id = ?',
};

/** What a record is called in a list; a trial by its fit, a photograph by its boat. Empty if it is no longer there. */
export function recordTitle({ db }: Store, { kind, id }: RecordRef): string {
  return String(db.prepare<[string], string>(QUERIES[kind]).pluck().get(id) ?? '');
}

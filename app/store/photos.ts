import { randomUUID } from 'node:crypto';
import type { PhotoStudy } from '../../core/photograph/photo-study-schema.ts';
import type { PhotoMime, PhotoRecord } from '../contract/photos.ts';
import { entryIdsOf } from './join-people.ts';
import { atomically, now, type Store } from './store.ts';
import { tracked } from './track.ts';

/** One photograph, largest, bytes: what the page makes of a telephone's picture stays well below. */
export const PHOTO_BYTES = 4 * 1024 * 1024;
/** Photographs of one boat, at most; and of one athlete. */
export const PHOTOS_OF_A_BOAT = 24;
export const PHOTOS_OF_AN_ATHLETE = 60;
/** All photographs of the store, bytes: a bundle of everything must stay small enough to be read again. */
export const ALL_PHOTO_BYTES = 400 * 1024 * 1024;

const RECORD = `SELECT id, boat_id AS boatId, caption, mime, length(bytes) AS bytes, added_at AS addedAt,
  athlete_id AS athleteId, fit_id AS fitId, study FROM boat_photos`;

/** Whom a photograph shows, and what was marked in it. */
type Subject = Pick<PhotoRecord, 'athleteId' | 'fitId' | 'study'>;

/** The three columns of a photograph's subject, as they are written. */
export function subjectRow({ athleteId, fitId, study }: Subject): (string | null)[] {
  return [athleteId ?? null, fitId ?? null, study ? JSON.stringify(study) : null];
}

/** A row with its subject read; what is null is left out. */
export function readSubject<R extends object>(row: R): R {
  const known = Object.entries(row).filter(([, value]) => value !== null);
  return Object.fromEntries(
    known.map(([name, value]) => [name, name === 'study' ? JSON.parse(String(value)) : value]),
  ) as R;
}

/** A boat's own photographs without their bytes, in the order they were added; those of athletes in it are left out. */
export function listPhotos(store: Store, boatId: string): PhotoRecord[] {
  return photosWhere(store, 'boat_id = ? AND athlete_id IS NULL', boatId);
}

/** Photographs of an athlete in a boat, under whichever entry of the roster they were added; likewise. */
export function photosOfAthlete(store: Store, athleteId: string): PhotoRecord[] {
  return entryIdsOf(store, athleteId).flatMap((id) => photosWhere(store, 'athlete_id = ?', id));
}

function photosWhere({ db }: Store, condition: string, key: string): PhotoRecord[] {
  return db
    .prepare<[string], PhotoRecord>(`${RECORD} WHERE ${condition} ORDER BY added_at, id`)
    .all(key)
    .map(readSubject);
}

/** The picture itself; null if there is none. */
export function openPhoto(store: Pick<Store, 'db'>, id: string): { mime: PhotoMime; bytes: Buffer } | null {
  const found = store.db
    .prepare<[string], { mime: PhotoMime; bytes: Buffer }>('SELECT mime, bytes FROM boat_photos WHERE id = ?')
    .get(id);
  return found ?? null;
}

/** Why a photograph was not imported. */
export type PhotoRefusal = 'no-boat' | 'no-picture' | 'too-large' | 'too-many' | 'store-full';

/** Adds a photograph of a boat, or of an athlete in it, once its own first bytes have shown that it is a picture. */
export function addPhoto(
  store: Store,
  { boatId, caption, bytes, ...subject }: { boatId: string; caption: string; bytes: Uint8Array } & Subject,
): PhotoRecord | PhotoRefusal {
  const mime = pictureMime(bytes);
  if (mime === null) return 'no-picture';
  if (bytes.length > PHOTO_BYTES) return 'too-large';
  return atomically(store, () => {
    if (!store.db.prepare('SELECT 1 FROM boats WHERE id = ?').get(boatId)) return 'no-boat';
    if (isFull(store, boatId, subject)) return 'too-many';
    if (bytesOfAll(store) + bytes.length > ALL_PHOTO_BYTES) return 'store-full';
    const id = randomUUID();
    return tracked(store, { kind: 'photo', id }, () => {
      store.db
        .prepare(
          `INSERT INTO boat_photos (id, boat_id, caption, mime, bytes, added_at, athlete_id, fit_id, study)
           VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)`,
        )
        .run(id, boatId, caption, mime, Buffer.from(bytes), now(store), ...subjectRow(subject));
      return photoRecord(store, id)!;
    });
  });
}

function isFull(store: Store, boatId: string, { athleteId }: Subject): boolean {
  if (athleteId) return photosOfAthlete(store, athleteId).length >= PHOTOS_OF_AN_ATHLETE;
  return listPhotos(store, boatId).length >= PHOTOS_OF_A_BOAT;
}

function bytesOfAll(store: Store): number {
  const sum = store.db.prepare<[], number>('SELECT coalesce(sum(length(bytes)), 0) FROM boat_photos').pluck();
  return sum.get()!;
}

function photoRecord(store: Store, id: string): PhotoRecord | null {
  return photosWhere(store, 'id = ?', id)[0] ?? null;
}

/** Writes another caption under a photograph; null if there is none. */
export function describePhoto(store: Store, id: string, caption: string): PhotoRecord | null {
  return tracked(store, { kind: 'photo', id }, () => {
    store.db.prepare('UPDATE boat_photos SET caption = ? WHERE id = ?').run(caption, id);
    return photoRecord(store, id);
  });
}

/** Keeps what was marked in a photograph and read off it; null if there is none. */
export function studyPhoto(store: Store, id: string, study: PhotoStudy): PhotoRecord | null {
  return tracked(store, { kind: 'photo', id }, () => {
    store.db.prepare('UPDATE boat_photos SET study = ? WHERE id = ?').run(JSON.stringify(study), id);
    return photoRecord(store, id);
  });
}

/** Takes a photograph out of the store; false if there is none. */
export function removePhoto(store: Store, id: string): boolean {
  return tracked(
    store,
    { kind: 'photo', id },
    () => store.db.prepare('DELETE FROM boat_photos WHERE id = ?').run(id).changes > 0,
  );
}

/** What kind of picture these bytes are by their own first ones (PNG, JFIF and WebP specifications); null if none. */
export function pictureMime(bytes: Uint8Array): PhotoMime | null {
  const begins = (at: number, ...expected: number[]) => expected.every((byte, i) => bytes[at + i] === byte);
  if (begins(0, 0xff, 0xd8, 0xff)) return 'image/jpeg';
  if (begins(0, 0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a)) return 'image/png';
  if (begins(0, 0x52, 0x49, 0x46, 0x46) && begins(8, 0x57, 0x45, 0x42, 0x50)) return 'image/webp';
  return null;
}

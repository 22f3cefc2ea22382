import { createHash } from 'node:crypto';
import { Zip, ZipDeflate } from 'fflate';
import type { z } from 'zod';
import { listErased } from '../store/erased-people.ts';
import { openPhoto } from '../store/photos.ts';
import {
  readIncomingAthletes,
  readIncomingBoats,
  readIncomingFit,
  readIncomingPaddles,
  readRemovedPhotos,
} from '../store/read-incoming.ts';
import { now, type Store } from '../store/store.ts';
import { BUNDLE_FORMAT, type bundleContents, photoFileName, READ_ME } from './bundle-format.ts';

/** Where a bundle is made from: a store, or a snapshot of one. */
export type BundleSource = Pick<Store, 'db' | 'clock'>;

/** A whole bundle in memory, a file of it at each step: for small stores. */
export function* bundleSteps(store: BundleSource, version: string): Generator<void, Uint8Array> {
  const chunks: Uint8Array[] = [];
  yield* writeBundle(store, version, (chunk) => chunks.push(chunk));
  return Buffer.concat(chunks);
}

/**
 * Writes everything in the store as a bundle, a file of it at each step. Each fit is read whole in one step, so that it
 * is of one piece even while others work on the store between two steps.
 */
export function* writeBundle(
  store: BundleSource,
  version: string,
  write: (chunk: Uint8Array) => void,
): Generator<void, void> {
  const packed = packer(write);
  const files: z.infer<typeof bundleContents>['files'] = [];
  const add = (name: string, content: string | Uint8Array) => files.push(packed.add(name, content));

  add('READ-ME.txt', READ_ME);
  add('erased.json', JSON.stringify(listErased(store.db), null, 1));
  add('athletes.json', JSON.stringify(readIncomingAthletes(store.db), null, 1));
  yield;
  const boats = readIncomingBoats(store.db);
  add('boats.json', JSON.stringify(boats, null, 1));
  yield;
  add('paddles.json', JSON.stringify(readIncomingPaddles(store.db), null, 1));
  yield;
  add('removed-photos.json', JSON.stringify(readRemovedPhotos(store.db), null, 1));
  for (const photo of boats.flatMap(({ photos }) => photos)) {
    const found = openPhoto(store, photo.id);
    if (found) add(photoFileName(photo), found.bytes);
    yield;
  }
  for (const id of fitIds(store)) {
    const fit = readIncomingFit(store.db, id);
    if (fit) add(`fits/${id}.json`, JSON.stringify(fit));
    yield;
  }
  for (const [i, { table, raw }] of unreadableRows(store).entries())
    add(`unreadable/${table}-${i + 1}.txt`, raw);
  const contents: z.infer<typeof bundleContents> = {
    format: BUNDLE_FORMAT,
    program: `Kneelwright ${version}`,
    madeAt: now(store),
    files,
  };
  packed.add('bundle.json', JSON.stringify(contents, null, 1));
  packed.finish();
}

/** How many steps `bundleSteps` takes, about. */
export function bundleLength(store: BundleSource): number {
  const photos = store.db.prepare<[], number>('SELECT count(*) FROM boat_photos').pluck();
  return fitIds(store).length + photos.get()! + 3;
}

function fitIds(store: BundleSource): string[] {
  return store.db.prepare<[], string>('SELECT id FROM fits ORDER BY created_at, id').pluck().all();
}

function unreadableRows(store: BundleSource) {
  return store.db
    .prepare<[], { table: string; raw: string }>(
      'SELECT table_name AS "table", raw FROM quarantine ORDER BY found_at, row_id LIMIT 10000',
    )
    .all();
}

function packer(write: (chunk: Uint8Array) => void) {
  const zip = new Zip((error, chunk) => {
    if (error) throw error;
    write(chunk);
  });
  return {
    add(name: string, content: string | Uint8Array) {
      const bytes = typeof content === 'string' ? Buffer.from(content, 'utf8') : content;
      // A picture is packed already.
      const file = new ZipDeflate(name, { level: typeof content === 'string' ? 6 : 0 });
      zip.add(file);
      file.push(bytes, true);
      return { name, bytes: bytes.length, sha256: createHash('sha256').update(bytes).digest('hex') };
    },
    finish(): void {
      zip.end();
    },
  };
}

import type { z } from 'zod';
import { say } from '../shell/say.ts';
import { listErased } from '../store/erased-people.ts';
import { fitInPieces } from '../store/fit-parts.ts';
import { openPhoto } from '../store/photos.ts';
import {
  readIncomingAthletes,
  readIncomingBoats,
  readIncomingPaddles,
  readRemovedPhotos,
} from '../store/read-incoming.ts';
import { now, type Store } from '../store/store.ts';
import {
  BUNDLE_FORMAT,
  BUNDLE_FORMAT_IN_PARTS,
  BUNDLE_LIMITS,
  type bundleContents,
  PART_BYTES,
  photoFileName,
} from './bundle-format.ts';
import { type PackedFile, packer } from './pack.ts';

/** Where a bundle is made from: a store, or a snapshot of one. */
export type BundleSource = Pick<Store, 'db' | 'clock'>;

/** How large a bundle and each file in it may become. */
const SIZES = { limits: BUNDLE_LIMITS, part: PART_BYTES };
type Sizes = typeof SIZES;

/** A whole bundle in memory, a file of it at each step: for small stores. */
export function* bundleSteps(
  store: BundleSource,
  version: string,
  sizes?: Sizes,
): Generator<void, Uint8Array> {
  const chunks: Uint8Array[] = [];
  yield* writeBundle(store, { version, ...sizes }, (chunk) => chunks.push(chunk));
  return Buffer.concat(chunks);
}

/**
 * Writes everything in the store as a bundle, a file of it at each step, none of it in memory as a whole. Each piece is read in
 * one step. Throws `BundleTooLarge` where it would be larger than what a program reads.
 */
export function* writeBundle(
  store: BundleSource,
  { version, limits, part }: { version: string } & Partial<Sizes>,
  write: (chunk: Uint8Array) => void,
): Generator<void, void> {
  const { db } = store;
  const most = part ?? PART_BYTES;
  const packed = packer(write, limits);
  const files: PackedFile[] = [];
  let inParts = false;
  const add = (name: string, content: string | Uint8Array) => files.push(packed.add(name, content));
  const addList = function* (name: string, items: Iterable<object>): Generator<void> {
    let number = 0;
    for (const list of lists(items, most)) {
      number += 1;
      inParts ||= number > 1;
      add(number === 1 ? `${name}.json` : `${name}-${number}.json`, `[\n${list.join(',\n')}\n]`);
      yield;
    }
  };

  add('READ-ME.txt', `${say('bundle.readme')}\n`);
  add('erased.json', JSON.stringify(listErased(db), null, 1));
  yield* addList('athletes', readIncomingAthletes(db));
  const photos: Parameters<typeof photoFileName>[0][] = [];
  yield* addList(
    'boats',
    noting(readIncomingBoats(db), (boat) => photos.push(...boat.photos)),
  );
  yield* addList('paddles', readIncomingPaddles(db));
  yield* addList('removed-photos', readRemovedPhotos(db));
  for (const photo of photos) {
    const found = openPhoto(store, photo.id);
    if (found) add(photoFileName(photo), found.bytes);
    yield;
  }
  for (const id of fitIds(store)) {
    let number = 0;
    for (const { item } of fitInPieces(db, id, most)) {
      number += 1;
      inParts ||= number > 1;
      add(number === 1 ? `fits/${id}.json` : `fits/${id}-${number}.json`, JSON.stringify(item));
      yield;
    }
  }
  let unreadable = 0;
  for (const { table, raw } of unreadableRows(store)) {
    unreadable += 1;
    add(`unreadable/${table}-${unreadable}.txt`, raw);
  }
  const contents: z.infer<typeof bundleContents> = {
    format: inParts ? BUNDLE_FORMAT_IN_PARTS : BUNDLE_FORMAT,
    program: `Kneelwright ${version}`,
    madeAt: now(store),
    files,
  };
  packed.add('bundle.json', JSON.stringify(contents, null, 1));
  packed.finish();
}

/** The items as JSON, in lists of about `most` bytes each; one list where there are none. */
function* lists(items: Iterable<object>, most: number): Generator<string[]> {
  let list: string[] = [];
  let bytes = 0;
  for (const item of items) {
    const text = JSON.stringify(item, null, 1);
    if (list.length > 0 && bytes + text.length > most) {
      yield list;
      [list, bytes] = [[], 0];
    }
    list.push(text);
    bytes += text.length;
  }
  yield list;
}

function* noting<T>(items: Iterable<T>, note: (item: T) => void): Generator<T> {
  for (const item of items) {
    note(item);
    yield item;
  }
}

/** How many steps `bundleSteps` takes, about. */
export function bundleLength(store: BundleSource): number {
  const photos = store.db.prepare<[], number>('SELECT count(*) FROM boat_photos').pluck();
  return fitIds(store).length + photos.get()! + 3;
}

function fitIds(store: BundleSource): string[] {
  return store.db.prepare<[], string>('SELECT id FROM fits ORDER BY created_at, id').pluck().all();
}

/** Rows that no longer read, each cut to what one file holds: such a row never makes an export fail. */
function* unreadableRows({ db }: BundleSource): Generator<{ table: string; raw: string }> {
  const keys = db
    .prepare<[], number>(`SELECT rowid FROM quarantine ORDER BY found_at, row_id LIMIT ${MOST_UNREADABLE}`)
    .pluck()
    .all();
  const one = db.prepare<[unknown], { table: string; raw: string }>(
    `SELECT table_name AS "table", substr(raw, 1, ${LONGEST_UNREADABLE}) AS raw FROM quarantine WHERE rowid = ?`,
  );
  for (const key of keys) yield one.get(key)!;
}
const MOST_UNREADABLE = 10_000;
/** Letters; a letter takes up to four bytes. */
const LONGEST_UNREADABLE = 4 * 1024 * 1024;

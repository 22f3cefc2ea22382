import { createHash } from 'node:crypto';
import type { z } from 'zod';
import { problemLine, problemsOf } from '../problems/problem-sentences.ts';
import { oddText } from '../shell/plain-text.ts';
import { type Incoming, type IncomingPhoto, incomingFit, incomingFitPart } from '../store/incoming.ts';
import { PHOTO_BYTES, pictureMime } from '../store/photos.ts';
import {
  BUNDLE_NAMES,
  bundleAthletes,
  bundleBoats,
  bundleContents,
  bundleErased,
  bundlePaddles,
  bundleRemovedPhotos,
  NEWEST_FORMAT,
  photoFileName,
} from './bundle-format.ts';
import type { Packed } from './packed.ts';
import { BundleRefused, bundleRefusal } from './refusal.ts';
import { type BundleFile, unpackEntry } from './unpack.ts';
import { admitEntries, type ZipEntry, zipDirectory } from './zip-directory.ts';

/** What a bundle says of itself. */
export type BundleContents = z.infer<typeof bundleContents>;

/**
 * Reads a bundle item by item, each checked against its schema before it is given out. The list of contents is read first: it
 * tells a bundle of a later program from a damaged one, and every file is compared with it. Gives that list. Throws
 * `BundleRefused`: whoever takes items in must be able to take all of them back.
 */
export function* bundleItems(packed: Packed): Generator<Incoming, BundleContents> {
  const entries = zipDirectory(packed);
  const contents = contentsOf(packed, entries);
  admitEntries(entries);
  const listed = new Map(contents.files.map((file) => [file.name, file]));
  const photos = new Map<string, Announced>();
  for (const entry of entries.filter(({ name }) => !BUNDLE_NAMES.contents.test(name))) {
    const file = unpackEntry(packed, entry);
    compare(file, listed.get(file.name));
    listed.delete(file.name);
    if (BUNDLE_NAMES.photo.test(file.name)) {
      yield photoOf(file, photos);
      continue;
    }
    for (const item of itemsOf(file)) {
      if (item.kind === 'boat') announce(item.item, photos);
      yield item;
    }
  }
  for (const name of [...listed.keys(), ...photos.keys()]) throw bundleRefusal(name, 'not-there');
  return contents;
}

/** The list of contents. Its checksum is compared before its version is read: damage never looks like a later program. */
function contentsOf(packed: Packed, entries: readonly ZipEntry[]): BundleContents {
  const entry = entries.find(({ name }) => BUNDLE_NAMES.contents.test(name));
  if (!entry) {
    admitEntries(entries);
    throw bundleRefusal('bundle.json', 'not-there');
  }
  admitEntries([entry]);
  const file = unpackEntry(packed, entry);
  const { format } = (jsonOf(file) ?? {}) as { format?: unknown };
  const [, version] = /^kneelwright-bundle\/(\d{1,6})$/.exec(String(format)) ?? [];
  if (version !== undefined && Number(version) > NEWEST_FORMAT) throw bundleRefusal('bundle.json', 'newer');
  return parseFile(file, bundleContents);
}

/** A photograph that boats.json names and that has not come yet. */
type Announced = IncomingPhoto & { readonly boatId: string };

function announce(boat: Extract<Incoming, { kind: 'boat' }>['item'], photos: Map<string, Announced>): void {
  for (const photo of boat.photos) photos.set(photoFileName(photo), { ...photo, boatId: boat.id });
}

function photoOf({ name, bytes }: BundleFile, photos: Map<string, Announced>): Incoming {
  const announced = photos.get(name);
  if (!announced) throw bundleRefusal(name, 'strange-name');
  if (pictureMime(bytes) !== announced.mime) throw bundleRefusal(name, 'no-picture');
  if (bytes.length > PHOTO_BYTES) throw bundleRefusal(name, 'too-large', { most: PHOTO_BYTES / 1024 / 1024 });
  photos.delete(name);
  return { kind: 'photo', item: { ...announced, bytes } };
}

function itemsOf(file: BundleFile): Incoming[] {
  if (BUNDLE_NAMES.athletes.test(file.name)) {
    return parseFile(file, bundleAthletes).map((item) => ({ kind: 'athlete', item }));
  }
  if (BUNDLE_NAMES.boats.test(file.name)) {
    return parseFile(file, bundleBoats).map((item) => ({ kind: 'boat', item }));
  }
  if (BUNDLE_NAMES.paddles.test(file.name)) {
    return parseFile(file, bundlePaddles).map((item) => ({ kind: 'paddle', item }));
  }
  if (BUNDLE_NAMES.erased.test(file.name)) {
    return parseFile(file, bundleErased).map((item) => ({ kind: 'erased', item }));
  }
  if (BUNDLE_NAMES.removedPhotos.test(file.name)) {
    return parseFile(file, bundleRemovedPhotos).map((item) => ({ kind: 'removed-photo', item }));
  }
  if (BUNDLE_NAMES.fit.test(file.name)) return [{ kind: 'fit', item: parseFile(file, incomingFit) }];
  if (BUNDLE_NAMES.fitPart.test(file.name))
    return [{ kind: 'fit-part', item: parseFile(file, incomingFitPart) }];
  return [];
}

function parseFile<S extends z.ZodType>(file: BundleFile, schema: S): z.output<S> {
  const value = jsonOf(file);
  const parsed = schema.safeParse(value);
  const odd = parsed.success ? oddText(parsed.data) : null;
  if (odd) throw new BundleRefused(file.name, problemLine(odd));
  if (parsed.success) return parsed.data;
  const [first] = problemsOf(parsed.error, schema, value);
  throw first ? new BundleRefused(file.name, problemLine(first)) : bundleRefusal(file.name, 'damaged');
}

function jsonOf({ name, bytes }: BundleFile): unknown {
  try {
    return JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    throw bundleRefusal(name, 'not-json');
  }
}

function compare({ name, bytes }: BundleFile, listed: BundleContents['files'][number] | undefined): void {
  if (!listed) throw bundleRefusal(name, 'not-listed');
  const sha256 = createHash('sha256').update(bytes).digest('hex');
  if (listed.bytes !== bytes.length || listed.sha256 !== sha256) throw bundleRefusal(name, 'changed');
}

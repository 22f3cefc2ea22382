import { createHash } from 'node:crypto';
import type { z } from 'zod';
import { problemLine, problemsOf } from '../problems/problem-sentences.ts';
import { oddText } from '../shell/plain-text.ts';
import { type Incoming, type IncomingPhoto, incomingFit } from '../store/incoming.ts';
import { PHOTO_BYTES, pictureMime } from '../store/photos.ts';
import {
  BUNDLE_FORMAT,
  BUNDLE_NAMES,
  bundleAthletes,
  bundleBoats,
  bundleContents,
  bundleErased,
  bundlePaddles,
  bundleRemovedPhotos,
  photoFileName,
} from './bundle-format.ts';
import type { Packed } from './packed.ts';
import { BUNDLE_PROBLEMS, BundleRefused } from './refusal.ts';
import { type BundleFile, unpackBundle } from './unpack.ts';

/** What a bundle says of itself. */
export type BundleContents = z.infer<typeof bundleContents>;

/**
 * Reads a bundle item by item, each checked against its schema before it is given out; at the end, the list of
 * contents is held against what was read, so that nothing is missing and nothing was changed. Gives that list.
 * Throws `BundleRefused`: whoever takes items in must be able to take all of them back.
 */
export function* bundleItems(packed: Packed): Generator<Incoming, BundleContents> {
  try {
    return yield* itemsWithin(packed);
  } catch (error) {
    // What a later version writes differently is met first; what it says of itself stands at the end.
    if (error instanceof BundleRefused && isNewer(packed)) {
      throw new BundleRefused('bundle.json', BUNDLE_PROBLEMS.newer);
    }
    throw error;
  }
}

/** Whether a bundle says that a later version of its format was written. */
function isNewer(packed: Packed): boolean {
  try {
    for (const { name, bytes } of unpackBundle(packed)) {
      if (!BUNDLE_NAMES.contents.test(name)) continue;
      const { format } = JSON.parse(new TextDecoder().decode(bytes)) as { format?: unknown };
      const [, version] = /^kneelwright-bundle\/(\d{1,6})$/.exec(String(format)) ?? [];
      return version !== undefined && Number(version) > Number(BUNDLE_FORMAT.split('/')[1]);
    }
  } catch {
    // A bundle that does not unpack says nothing of itself.
  }
  return false;
}

function* itemsWithin(packed: Packed): Generator<Incoming, BundleContents> {
  const read = new Map<string, { bytes: number; sha256: string }>();
  const photos = new Map<string, Announced>();
  let contents: BundleContents | null = null;
  for (const file of unpackBundle(packed)) {
    if (BUNDLE_NAMES.contents.test(file.name)) {
      contents = parseFile(file, bundleContents);
      continue;
    }
    read.set(file.name, {
      bytes: file.bytes.length,
      sha256: createHash('sha256').update(file.bytes).digest('hex'),
    });
    if (BUNDLE_NAMES.photo.test(file.name)) {
      yield photoOf(file, photos);
      continue;
    }
    for (const item of itemsOf(file)) {
      if (item.kind === 'boat') announce(item.item, photos);
      yield item;
    }
  }
  for (const name of photos.keys()) throw new BundleRefused(name, BUNDLE_PROBLEMS['not-there']);
  if (!contents) throw new BundleRefused('bundle.json', BUNDLE_PROBLEMS['no-contents']);
  compare(contents, read);
  return contents;
}

/** A photograph that boats.json names and that has not come yet. */
type Announced = IncomingPhoto & { readonly boatId: string };

function announce(boat: Extract<Incoming, { kind: 'boat' }>['item'], photos: Map<string, Announced>): void {
  for (const photo of boat.photos) photos.set(photoFileName(photo), { ...photo, boatId: boat.id });
}

function photoOf({ name, bytes }: BundleFile, photos: Map<string, Announced>): Incoming {
  const announced = photos.get(name);
  if (!announced) throw new BundleRefused(name, BUNDLE_PROBLEMS['not-announced']);
  if (pictureMime(bytes) !== announced.mime) throw new BundleRefused(name, BUNDLE_PROBLEMS['no-picture']);
  if (bytes.length > PHOTO_BYTES)
    throw new BundleRefused(name, BUNDLE_PROBLEMS['too-large'](PHOTO_BYTES / 1024 / 1024));
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
  if (!BUNDLE_NAMES.fit.test(file.name)) return [];
  return [{ kind: 'fit', item: parseFile(file, incomingFit) }];
}

function parseFile<S extends z.ZodType>(file: BundleFile, schema: S): z.output<S> {
  let value: unknown;
  try {
    value = JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(file.bytes));
  } catch {
    throw new BundleRefused(file.name, BUNDLE_PROBLEMS['not-json']);
  }
  const parsed = schema.safeParse(value);
  const odd = parsed.success ? oddText(parsed.data) : null;
  if (odd) throw new BundleRefused(file.name, problemLine(odd));
  if (parsed.success) return parsed.data;
  const [first] = problemsOf(parsed.error, schema, value);
  throw new BundleRefused(file.name, first ? problemLine(first) : BUNDLE_PROBLEMS.damaged);
}

function compare(
  contents: BundleContents,
  read: ReadonlyMap<string, { bytes: number; sha256: string }>,
): void {
  for (const { name, bytes, sha256 } of contents.files) {
    const found = read.get(name);
    if (!found) throw new BundleRefused(name, BUNDLE_PROBLEMS['not-there']);
    if (found.bytes !== bytes || found.sha256 !== sha256) {
      throw new BundleRefused(name, BUNDLE_PROBLEMS.changed);
    }
  }
  const listed = new Set(contents.files.map(({ name }) => name));
  for (const name of read.keys()) {
    if (!listed.has(name)) throw new BundleRefused(name, BUNDLE_PROBLEMS['not-listed']);
  }
}

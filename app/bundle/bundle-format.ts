import { z } from 'zod';
import type { PhotoMime } from '../contract/photos.ts';
import { instant } from '../contract/records.ts';
import { erasedPerson } from '../store/erased-people.ts';
import { incomingAthlete, incomingBoat, incomingPaddle, removedPhoto } from '../store/incoming.ts';

/** Written into every bundle, so that a later program knows what it reads. */
export const BUNDLE_FORMAT = 'kneelwright-bundle/2';
/** For bundles whose files continue in further ones. Older programs refuse it, so it is written only where it is needed. */
export const BUNDLE_FORMAT_IN_PARTS = 'kneelwright-bundle/3';
/** The highest format that is read here. */
export const NEWEST_FORMAT = 3;
/** Written by programs that kept no versions of fields. */
const FIRST_FORMAT = 'kneelwright-bundle/1';
export const BUNDLE_ENDING = 'kneelwright';
export const BUNDLE_MIME = 'application/zip';
export const ENCRYPTED_MIME = 'application/octet-stream';

/** What a bundle may be at most. Beyond this it is refused before any of it is kept. */
export const BUNDLE_LIMITS = {
  /** As it lies on the disk, bytes. */
  packed: 512 * 1024 * 1024,
  /** One file in it, unpacked, bytes. */
  file: 64 * 1024 * 1024,
  /** All of it, unpacked, bytes. */
  unpacked: 2 * 1024 * 1024 * 1024,
  /** The zip format without its extension (zip64) holds 65 535 files at most. */
  files: 65_000,
};
/** A list or a history longer than this continues in a further file, bytes. It is well below what one file may hold. */
export const PART_BYTES = 4 * 1024 * 1024;
export type BundleLimits = Readonly<typeof BUNDLE_LIMITS>;

/** The list of contents, `bundle.json`: the last file of a bundle, so that a cut-off one has none. */
export const bundleContents = z.strictObject({
  format: z.enum([BUNDLE_FORMAT_IN_PARTS, BUNDLE_FORMAT, FIRST_FORMAT]),
  program: z.string().max(60),
  madeAt: instant,
  files: z
    .array(z.strictObject({ name: z.string().max(200), bytes: z.int().min(0), sha256: z.hash('sha256') }))
    .max(BUNDLE_LIMITS.files),
});

export const bundleAthletes = z.array(incomingAthlete).max(100_000);
export const bundleBoats = z.array(incomingBoat).max(100_000);
export const bundlePaddles = z.array(incomingPaddle).max(100_000);
export const bundleErased = z.array(erasedPerson).max(100_000);
export const bundleRemovedPhotos = z.array(removedPhoto).max(100_000);

/** The only names a bundle may hold. Nothing is ever written under them, so they cannot lead anywhere. */
export const BUNDLE_NAMES = {
  contents: /^bundle\.json$/,
  readme: /^READ-ME\.txt$/,
  athletes: /^athletes(-[1-9][0-9]{0,4})?\.json$/,
  boats: /^boats(-[1-9][0-9]{0,4})?\.json$/,
  paddles: /^paddles(-[1-9][0-9]{0,4})?\.json$/,
  erased: /^erased\.json$/,
  removedPhotos: /^removed-photos(-[1-9][0-9]{0,4})?\.json$/,
  fit: /^fits\/[0-9a-f-]{36}\.json$/,
  fitPart: /^fits\/[0-9a-f-]{36}-[1-9][0-9]{0,4}\.json$/,
  photo: /^photos\/[0-9a-f-]{36}\.(jpg|png|webp)$/,
  unreadable: /^unreadable\/[a-z_]{1,20}-[0-9]{1,6}\.txt$/,
} as const;

const PHOTO_ENDINGS: Readonly<Record<PhotoMime, string>> = {
  'image/jpeg': 'jpg',
  'image/png': 'png',
  'image/webp': 'webp',
};

/** A photograph's file name in a bundle. */
export function photoFileName({ id, mime }: { readonly id: string; readonly mime: PhotoMime }): string {
  return `photos/${id}.${PHOTO_ENDINGS[mime]}`;
}

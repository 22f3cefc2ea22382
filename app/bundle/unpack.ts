import { Unzip, UnzipInflate } from 'fflate';
import { BUNDLE_LIMITS, BUNDLE_NAMES } from './bundle-format.ts';

/** A bundle, or a part of one, is not as it must be; `path` and `message` say what and what is allowed. */
export class BundleRefused extends Error {
  readonly path: string;
  constructor(path: string, message: string) {
    super(message);
    this.path = path;
  }
}

/** One file of a bundle, unpacked. */
export interface BundleFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** How much of the packed bytes is fed in at once: bounds how far a bomb can swell before it is seen. */
const SLICE = 64 * 1024;

/**
 * Unpacks a bundle file by file, counting what really comes out and not what the headers promise. Throws
 * `BundleRefused` at the first name that is not a bundle's own, and at the first byte over a limit.
 */
export function* unpackBundle(packed: Uint8Array): Generator<BundleFile> {
  if (packed.length > BUNDLE_LIMITS.packed) throw tooLarge('', BUNDLE_LIMITS.packed);
  const ready: BundleFile[] = [];
  const seen = new Set<string>();
  let open = 0;
  let total = 0;
  const unzip = new Unzip();
  unzip.register(UnzipInflate);
  unzip.onfile = (file) => {
    admitName(file.name, seen);
    open += 1;
    const parts: Uint8Array[] = [];
    let size = 0;
    file.ondata = (error, part, final) => {
      if (error) throw new BundleRefused(file.name, 'cannot be unpacked; the bundle is damaged');
      size += part.length;
      total += part.length;
      if (size > BUNDLE_LIMITS.file) throw tooLarge(file.name, BUNDLE_LIMITS.file);
      if (total > BUNDLE_LIMITS.unpacked) throw tooLarge('', BUNDLE_LIMITS.unpacked);
      parts.push(part);
      if (!final) return;
      open -= 1;
      ready.push({ name: file.name, bytes: Buffer.concat(parts) });
    };
    file.start();
  };
  for (let at = 0; at < packed.length; at += SLICE) {
    feed(unzip, packed.subarray(at, at + SLICE), at + SLICE >= packed.length);
    yield* ready.splice(0);
  }
  if (seen.size === 0)
    throw new BundleRefused('', 'is not a zip file; needed is a bundle as this program exports it');
  if (open > 0) throw new BundleRefused('', 'is cut off; needed is the whole bundle');
}

function feed(unzip: Unzip, slice: Uint8Array, last: boolean): void {
  try {
    unzip.push(slice, last);
  } catch (error) {
    if (error instanceof BundleRefused) throw error;
    throw new BundleRefused('', 'cannot be unpacked; it is damaged, or no bundle of this program');
  }
}

function admitName(name: string, seen: Set<string>): void {
  const known = Object.values(BUNDLE_NAMES).some((pattern) => pattern.test(name));
  if (!known) throw new BundleRefused(plainName(name), 'is not a file that a bundle holds');
  if (seen.has(name)) throw new BundleRefused(name, 'is in the bundle twice');
  seen.add(name);
  if (seen.size > BUNDLE_LIMITS.files) {
    throw new BundleRefused('', `holds too many files; allowed is at most ${BUNDLE_LIMITS.files}`);
  }
}

function plainName(name: string): string {
  return name.slice(0, 60).replace(/[^\p{L}\p{N}._/\\ -]/gu, '?');
}

function tooLarge(path: string, limit: number): BundleRefused {
  return new BundleRefused(path, `is too large; allowed is at most ${limit / 1024 / 1024} MB`);
}

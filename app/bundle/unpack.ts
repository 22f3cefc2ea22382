import { Unzip, UnzipInflate } from 'fflate';
import { BUNDLE_LIMITS, BUNDLE_NAMES, type BundleLimits } from './bundle-format.ts';
import type { Packed } from './packed.ts';
import { BUNDLE_PROBLEMS, BundleRefused } from './refusal.ts';

/** One file of a bundle, unpacked. */
export interface BundleFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/**
 * Unpacks a bundle file by file, counting what really comes out and not what the headers promise. Throws
 * `BundleRefused` at the first name that is not a bundle's own, and at the first byte over a limit.
 */
export function* unpackBundle(packed: Packed, limits: BundleLimits = BUNDLE_LIMITS): Generator<BundleFile> {
  if (packed.size > limits.packed) throw tooLarge('', limits.packed);
  const ready: BundleFile[] = [];
  const seen = new Set<string>();
  let open = 0;
  let total = 0;
  const unzip = new Unzip();
  unzip.register(UnzipInflate);
  unzip.onfile = (file) => {
    admitName(file.name, seen, limits);
    open += 1;
    const parts: Uint8Array[] = [];
    let size = 0;
    file.ondata = (error, part, final) => {
      if (error) throw refusalOf(error, file.name);
      size += part.length;
      total += part.length;
      if (size > limits.file) throw tooLarge(file.name, limits.file);
      if (total > limits.unpacked) throw tooLarge('', limits.unpacked);
      parts.push(part);
      if (!final) return;
      open -= 1;
      ready.push({ name: file.name, bytes: Buffer.concat(parts) });
    };
    file.start();
  };
  let fed = 0;
  for (const slice of packed.slices()) {
    fed += slice.length;
    feed(unzip, slice, fed >= packed.size);
    yield* ready.splice(0);
  }
  if (seen.size === 0) throw new BundleRefused('', BUNDLE_PROBLEMS['not-a-zip']);
  if (open > 0) throw new BundleRefused('', BUNDLE_PROBLEMS['cut-off']);
}

function feed(unzip: Unzip, slice: Uint8Array, last: boolean): void {
  try {
    unzip.push(slice, last);
  } catch (error) {
    throw refusalOf(error, '');
  }
}

/** The unpacker passes on what was thrown inside it: a refusal of ours stays what it is. */
function refusalOf(error: unknown, path: string): BundleRefused {
  if (error instanceof BundleRefused) return error;
  return new BundleRefused(path, BUNDLE_PROBLEMS.damaged);
}

function admitName(name: string, seen: Set<string>, limits: BundleLimits): void {
  const known = Object.values(BUNDLE_NAMES).some((pattern) => pattern.test(name));
  if (!known) throw new BundleRefused(plainName(name), BUNDLE_PROBLEMS['strange-name']);
  if (seen.has(name)) throw new BundleRefused(name, BUNDLE_PROBLEMS.twice);
  seen.add(name);
  if (seen.size > limits.files) {
    throw new BundleRefused('', BUNDLE_PROBLEMS['too-many'](limits.files));
  }
}

function plainName(name: string): string {
  return name.slice(0, 60).replace(/[^\p{L}\p{N}._/\\ -]/gu, '?');
}

function tooLarge(path: string, limit: number): BundleRefused {
  return new BundleRefused(path, BUNDLE_PROBLEMS['too-large'](limit / 1024 / 1024));
}

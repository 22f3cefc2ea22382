import { crc32, inflateRawSync } from 'node:zlib';
import type { BundleLimits } from './bundle-format.ts';
import type { Packed } from './packed.ts';
import { bundleRefusal } from './refusal.ts';
import { admitEntries, contentAt, type ZipEntry, zipDirectory } from './zip-directory.ts';

/** One file of a bundle, unpacked. */
export interface BundleFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/**
 * Unpacks a bundle file by file, in the order of its list. Throws `BundleRefused` before anything is unpacked if a name is not
 * a bundle's own or the list itself is over a limit, and at the first file that is not as the list says.
 */
export function* unpackBundle(packed: Packed, limits?: BundleLimits): Generator<BundleFile> {
  const entries = zipDirectory(packed, limits);
  admitEntries(entries, limits);
  for (const entry of entries) yield unpackEntry(packed, entry);
}

/** Unpacks one file. No more comes out than the list says, and only what has its checksum. */
export function unpackEntry(packed: Packed, entry: ZipEntry): BundleFile {
  const { name, isDeflated, crc, packedSize, size } = entry;
  const kept = packed.read(contentAt(packed, entry), packedSize);
  const bytes = isDeflated ? inflated(kept, entry) : kept;
  if (bytes.length !== size || crc32(bytes) !== crc) throw bundleRefusal(name, 'damaged');
  return { name, bytes };
}

function inflated(bytes: Uint8Array, { name, size }: ZipEntry): Uint8Array {
  try {
    return inflateRawSync(bytes, { maxOutputLength: Math.max(1, size) });
  } catch {
    throw bundleRefusal(name, 'damaged');
  }
}

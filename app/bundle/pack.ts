import { createHash } from 'node:crypto';
import { crc32, deflateRawSync } from 'node:zlib';
import { Zip, type ZipInputFile } from 'fflate';
import { BUNDLE_LIMITS, type BundleLimits } from './bundle-format.ts';

/** Thrown where a bundle would become larger than what is read again. */
export class BundleTooLarge extends Error {}

/** One file of a bundle, as the list of contents names it. */
export interface PackedFile {
  readonly name: string;
  readonly bytes: number;
  readonly sha256: string;
}

/** Puts files into a zip one after the other. */
export interface Packer {
  /** Adds a file: text is deflated, a picture lies there as it is. */
  add(name: string, content: string | Uint8Array): PackedFile;
  finish(): void;
}

/** A zip that is given to `write` piece by piece. Throws `BundleTooLarge` before it goes over what `unpackBundle` reads. */
export function packer(write: (chunk: Uint8Array) => void, limits: BundleLimits = BUNDLE_LIMITS): Packer {
  const held = { files: 0, unpacked: 0, packed: 0 };
  const zip = new Zip((error, chunk) => {
    if (error) throw error;
    held.packed += chunk.length;
    if (held.packed > limits.packed) throw new BundleTooLarge('packed');
    write(chunk);
  });
  return {
    add(name, content) {
      const isText = typeof content === 'string';
      const bytes = isText ? Buffer.from(content, 'utf8') : content;
      held.files += 1;
      held.unpacked += bytes.length;
      if (bytes.length > limits.file || held.files > limits.files || held.unpacked > limits.unpacked)
        throw new BundleTooLarge(name);
      const file: ZipInputFile = {
        filename: name,
        size: bytes.length,
        crc: crc32(bytes),
        compression: isText ? 8 : 0,
      };
      zip.add(file);
      file.ondata!(null, isText ? deflateRawSync(bytes) : Uint8Array.from(bytes), true);
      return { name, bytes: bytes.length, sha256: createHash('sha256').update(bytes).digest('hex') };
    },
    finish: () => zip.end(),
  };
}

import { BUNDLE_LIMITS, BUNDLE_NAMES, type BundleLimits } from './bundle-format.ts';
import type { Packed } from './packed.ts';
import { type BundleRefused, bundleRefusal } from './refusal.ts';

/** One file of a zip, as the list at the zip's end says. Sizes in bytes. */
export interface ZipEntry {
  readonly name: string;
  /** Whether it is deflated; else it lies there as it is. */
  readonly isDeflated: boolean;
  /** CRC-32 of what comes out. */
  readonly crc: number;
  readonly packedSize: number;
  readonly size: number;
  /** Where its own header begins. */
  readonly at: number;
}

/** Lengths and marks of the parts of a zip: PKWARE's APPNOTE.TXT, 4.3.7, 4.3.12 and 4.3.16. */
const LOCAL = { mark: 0x04034b50, length: 30 };
const ENTRY = { mark: 0x02014b50, length: 46 };
const END = { mark: 0x06054b50, length: 22, longestComment: 65_535 };
const METHODS: Readonly<Record<number, 'stored' | 'deflated'>> = { 0: 'stored', 8: 'deflated' };
const ENCRYPTED = 1;

/**
 * Reads the list of files at a zip's end. It gives each file's place and size, so that file contents are never searched for
 * marks. Throws `BundleRefused` where there is none, or where files lie over each other.
 */
export function zipDirectory(packed: Packed, limits: BundleLimits = BUNDLE_LIMITS): ZipEntry[] {
  if (packed.size > limits.packed) throw tooLarge('', limits.packed);
  const end = endOf(packed);
  const list = view(packed.read(end.listAt, end.listSize));
  const entries: ZipEntry[] = [];
  let at = 0;
  for (let i = 0; i < end.count; i++) {
    if (at + ENTRY.length > list.byteLength || list.getUint32(at, true) !== ENTRY.mark) throw damaged();
    const [nameLength, extraLength, noteLength] = [28, 30, 32].map((where) =>
      list.getUint16(at + where, true),
    ) as [number, number, number];
    const method = METHODS[list.getUint16(at + 10, true)];
    const isEncrypted = (list.getUint16(at + 8, true) & ENCRYPTED) !== 0;
    if (!method || isEncrypted || at + ENTRY.length + nameLength > list.byteLength) throw damaged();
    entries.push({
      name: Buffer.from(list.buffer, list.byteOffset + at + ENTRY.length, nameLength).toString('utf8'),
      isDeflated: method === 'deflated',
      crc: list.getUint32(at + 16, true),
      packedSize: list.getUint32(at + 20, true),
      size: list.getUint32(at + 24, true),
      at: list.getUint32(at + 42, true),
    });
    at += ENTRY.length + nameLength + extraLength + noteLength;
  }
  if (at !== list.byteLength) throw damaged();
  apart(entries, end.listAt);
  return entries;
}

/** Checks that the zip holds a bundle's own files only, each once, and no more than a bundle may. */
export function admitEntries(entries: readonly ZipEntry[], limits: BundleLimits = BUNDLE_LIMITS): void {
  if (entries.length > limits.files) throw bundleRefusal('', 'too-many', { most: limits.files });
  const seen = new Set<string>();
  let total = 0;
  for (const { name, size } of entries) {
    const known = Object.values(BUNDLE_NAMES).some((pattern) => pattern.test(name));
    if (!known) throw bundleRefusal(plainName(name), 'strange-name');
    if (seen.has(name)) throw bundleRefusal(name, 'twice');
    seen.add(name);
    total += size;
    if (size > limits.file) throw tooLarge(name, limits.file);
    if (total > limits.unpacked) throw tooLarge('', limits.unpacked);
  }
}

/** Where the bytes of a file begin: behind a header of its own. */
export function contentAt(packed: Packed, { name, at }: ZipEntry): number {
  const header = view(packed.read(at, LOCAL.length));
  if (header.byteLength < LOCAL.length || header.getUint32(0, true) !== LOCAL.mark) throw damaged(name);
  return at + LOCAL.length + header.getUint16(26, true) + header.getUint16(28, true);
}

/** The end of a zip: how many files there are, and where the list of them lies. */
function endOf(packed: Packed): { count: number; listAt: number; listSize: number } {
  const from = Math.max(0, packed.size - END.length - END.longestComment);
  const tail = view(packed.read(from, packed.size - from));
  for (let at = tail.byteLength - END.length; at >= 0; at--) {
    if (
      tail.getUint32(at, true) !== END.mark ||
      at + END.length + tail.getUint16(at + 20, true) !== tail.byteLength
    )
      continue;
    const [count, listSize, listAt] = [
      tail.getUint16(at + 10, true),
      tail.getUint32(at + 12, true),
      tail.getUint32(at + 16, true),
    ];
    if (listAt + listSize !== from + at) throw damaged();
    return { count, listAt, listSize };
  }
  const begins = view(packed.read(0, 4));
  const isZip = begins.byteLength === 4 && begins.getUint32(0, true) === LOCAL.mark;
  throw bundleRefusal('', isZip ? 'cut-off' : 'not-a-zip');
}

/** Files that lie over each other would unpack to far more than the zip holds. */
function apart(entries: readonly ZipEntry[], listAt: number): void {
  let free = 0;
  for (const { at, packedSize } of [...entries].sort((a, b) => a.at - b.at)) {
    if (at < free) throw damaged();
    free = at + LOCAL.length + packedSize;
  }
  if (free > listAt) throw damaged();
}

function view(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}

function plainName(name: string): string {
  return name.slice(0, 60).replace(/[^\p{L}\p{N}._/\\ -]/gu, '?');
}

function damaged(path = ''): BundleRefused {
  return bundleRefusal(path, 'damaged');
}

function tooLarge(path: string, limit: number): BundleRefused {
  return bundleRefusal(path, 'too-large', { most: limit / 1024 / 1024 });
}

import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { crc32 } from 'node:zlib';
import { z } from 'zod';
import { atomicWrite } from '../shell/atomic-write.ts';

const FILE = 'manifest.json';

const count = z.int().min(0);
const contents = z.strictObject({
  /** Names the store and its backups; see the table `journal_position`. */
  line: z.string().max(40),
  /** The number of the row written last, when this was written. */
  n: count,
  counts: z.record(z.string(), count),
  backups: z.array(z.strictObject({ name: z.string(), bytes: count, n: count })),
});
const sealed = z.strictObject({ sum: z.int(), manifest: contents });

/** What belongs to a data folder: whose it is, how far it had come, what was in it, and its backups. */
export type Manifest = z.infer<typeof contents>;

/** Reads a data folder's manifest; `damaged` if it is there and not as it was written. */
export function readManifest(folder: string): Manifest | 'damaged' | null {
  const path = join(folder, FILE);
  if (!existsSync(path)) return null;
  try {
    const { sum, manifest } = sealed.parse(JSON.parse(readFileSync(path, 'utf8')));
    return crc32(JSON.stringify(manifest)) === sum ? manifest : 'damaged';
  } catch {
    return 'damaged';
  }
}

/** Writes a data folder's manifest, whole or not at all. */
export function writeManifest(folder: string, manifest: Manifest): void {
  const text = JSON.stringify({ sum: crc32(JSON.stringify(manifest)), manifest }, null, 1);
  atomicWrite(join(folder, FILE), Buffer.from(text));
}

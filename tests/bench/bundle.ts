import { readdirSync, readFileSync } from 'node:fs';
import { extname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Fact } from './row.ts';

const BUILT = join(import.meta.dirname, '../../renderer/dist');
const KIB = 1024;

/** Size of the built page by kind of file, plain and compressed with gzip, KiB. The page must have been built. */
export function bundleFacts(): Fact[] {
  const files = readdirSync(BUILT, { recursive: true, encoding: 'utf8' });
  const of = (ending: string) =>
    files.filter((f) => extname(f) === ending).map((f) => readFileSync(join(BUILT, f)));
  const kib = (parts: readonly Uint8Array[]) => parts.reduce((sum, { length }) => sum + length, 0) / KIB;
  const fact = (name: string, value: number): Fact => ({ group: 'renderer', name, value, unit: 'KiB' });
  const [scripts, styles] = [of('.js'), of('.css')];
  return [
    fact('page script', kib(scripts)),
    fact('page script, compressed', kib(scripts.map((s) => gzipSync(s)))),
    fact('page style, compressed', kib(styles.map((s) => gzipSync(s)))),
    fact('page letters', kib(of('.woff2'))),
  ];
}

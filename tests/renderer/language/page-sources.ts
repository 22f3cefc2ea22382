import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const ROOT = join(import.meta.dirname, '../../..');

/** Every source of a folder of the house, by its path in it. */
export function sources(folder: string): { path: string; text: string }[] {
  return readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
    .filter((path) => /\.tsx?$/.test(path) && !path.startsWith('dist') && !path.endsWith('.d.ts'))
    .map((path) => ({ path, text: readFileSync(join(ROOT, folder, path), 'utf8') }));
}

/** Every source of the page, by its path under `renderer/`. */
export function pageSources(): { path: string; text: string }[] {
  return sources('renderer');
}

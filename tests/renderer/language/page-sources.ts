import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const RENDERER = join(import.meta.dirname, '../../../renderer');

/** Every source of the page, by its path under `renderer/`. */
export function pageSources(): { path: string; text: string }[] {
  return readdirSync(RENDERER, { recursive: true, encoding: 'utf8' })
    .filter((path) => /\.tsx?$/.test(path) && !path.startsWith('dist') && !path.endsWith('.d.ts'))
    .map((path) => ({ path, text: readFileSync(join(RENDERER, path), 'utf8') }));
}

import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** The folder that holds package.json, `assets/` and `renderer/dist/`, whether run from source or built. */
export function programFolder(from: string): string {
  return join(from, '..', '..');
}

/** The program's version, as package.json says it. */
export function programVersion(folder: string): string {
  const { version } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as { version: string };
  return version;
}

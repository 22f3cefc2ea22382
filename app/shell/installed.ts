import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

/** The folder that holds package.json, `assets/` and `renderer/dist/`, whether run from source or built. */
export function programFolder(from: string): string {
  const above = dirname(from);
  return existsSync(join(from, 'package.json')) || above === from ? from : programFolder(above);
}

/** The program's version, as package.json says it. */
export function programVersion(folder: string): string {
  const { version } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as { version: string };
  return version;
}

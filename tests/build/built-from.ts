import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** What is built, and from what. Paths below `root`. */
export interface Build {
  readonly root: string;
  readonly sources: readonly string[];
  /** Files that a whole build leaves; one of them missing is a reason to build. */
  readonly made: readonly string[];
  /** Where a build notes its sources. A folder that each build empties is best: the note goes with it. */
  readonly note: string;
}

/** The page and the desktop program. */
export const PROGRAM: Build = {
  root: join(import.meta.dirname, '../..'),
  sources: ['core', 'app', 'renderer', 'assets', 'package.json', 'package-lock.json', 'tsconfig.json'],
  made: [
    'renderer/dist/index.html',
    ...['main.js', 'preload.cjs'].map((name) => `app/dist/electron/${name}`),
    'app/dist/launch/start-built.js',
  ],
  note: 'renderer/dist/built-from.txt',
};

/** Folders inside the sources that are made from them. */
const NOT_SOURCES = ['dist', 'node_modules', 'screens'];

/** Whether what is built was made, whole and by `noteBuild`'s caller, from the sources as they are now. Looks at no clock. */
export function isBuilt(build: Build): boolean {
  const { root, made, note } = build;
  if (![...made, note].every((path) => existsSync(join(root, path)))) return false;
  return readFileSync(join(root, note), 'utf8') === noteOf(build);
}

/** Notes, after a whole build, what it was made from. */
export function noteBuild(build: Build): void {
  writeFileSync(join(build.root, build.note), noteOf(build));
}

/** A mark of every source, by path and content, and when each made file was written: another build in between shows. */
function noteOf({ root, sources, made }: Build): string {
  const hash = createHash('sha256');
  for (const path of sources.flatMap((source) => filesBelow(root, source))) {
    const content = readFileSync(join(root, path));
    hash.update(`${path}\0${content.length}\0`).update(content);
  }
  const written = made.map((path) => `${path} ${statSync(join(root, path)).mtimeMs}`);
  return [hash.digest('hex'), ...written, ''].join('\n');
}

/** Files below a path, in the order of their names; the path itself when it is a file, none when it is missing. */
function filesBelow(root: string, path: string): string[] {
  if (!existsSync(join(root, path))) return [];
  if (!statSync(join(root, path)).isDirectory()) return [path];
  return readdirSync(join(root, path))
    .filter((name) => !NOT_SOURCES.includes(name))
    .toSorted()
    .flatMap((name) => filesBelow(root, `${path}/${name}`));
}

import { readdirSync, statSync, utimesSync } from 'node:fs';
import { join } from 'node:path';
import { say } from '../shell/say.ts';
import { buildingFolder, placeBuild } from './place-build.ts';

/** Something that is built: into which folder, the file there that takes its place last, what it is made from, and how. Paths below the program's folder. */
interface Part {
  readonly name: string;
  readonly folder: string;
  readonly last: string;
  readonly from: readonly string[];
  readonly config: string;
}

const TEXTS = 'assets/messages';
const PAGE: Part = {
  name: 'page',
  folder: 'renderer/dist',
  last: 'index.html',
  from: ['renderer', 'core', 'app/contract', 'app/language', TEXTS, 'package-lock.json'],
  config: 'renderer/vite.config.ts',
};
const ELECTRON: Part = {
  name: 'electron',
  folder: 'app/dist/electron',
  last: 'preload.cjs',
  from: ['app', 'core', TEXTS, 'package-lock.json'],
  config: 'app/electron/vite.config.ts',
};
const PROGRAM: Part = {
  name: 'program',
  folder: 'app/dist/launch',
  last: 'start-built.js',
  from: ['app', 'core', TEXTS, 'package-lock.json'],
  config: 'app/launch/vite.config.ts',
};

/** Builds parts anew, whatever is there; all of them where none is named. */
export async function buildParts(root: string, names: readonly string[]): Promise<void> {
  const parts = [PAGE, ELECTRON, PROGRAM].filter(({ name }) => names.length === 0 || names.includes(name));
  for (const part of parts) await build(root, part);
}

/** Builds the page if it is missing or older than what it is made from. */
export async function buildPage(root: string): Promise<void> {
  if (isOlder(root, PAGE)) await build(root, PAGE, say('launch.building'));
}

/** Builds Electron's scripts if they are missing or older than what they are made from. */
export async function buildElectron(root: string): Promise<void> {
  if (isOlder(root, ELECTRON)) await build(root, ELECTRON, say('launch.building-shell'));
}

/** Builds the program that serves the page to a browser, for the next start; the same rule. It takes a second and says nothing. */
export async function buildProgram(root: string): Promise<void> {
  if (isOlder(root, PROGRAM)) await build(root, PROGRAM);
}

/** Whether the built program is there and newer than what it is made from. */
export function isProgramBuilt(root: string): boolean {
  return !isOlder(root, PROGRAM);
}

async function build(root: string, part: Part, says?: string): Promise<void> {
  if (says) console.log(says);
  // Whatever started us (a test run, say), the parts are built as they are shipped.
  process.env.NODE_ENV = 'production';
  const began = new Date();
  const outDir = buildingFolder(root, part.name);
  const { createBuilder } = await import('vite');
  const builder = await createBuilder({
    configFile: join(root, part.config),
    configLoader: 'native',
    logLevel: 'warn',
    plugins: [{ name: 'built-beside', configEnvironment: () => ({ build: { outDir } }) }],
  });
  await builder.buildApp();
  // A source that was changed meanwhile is newer than this.
  utimesSync(join(outDir, part.last), began, began);
  placeBuild(root, { from: outDir, to: join(root, part.folder), last: part.last });
}

function isOlder(root: string, { folder, last, from }: Part): boolean {
  const madeAt = statSync(join(root, folder, last), { throwIfNoEntry: false })?.mtimeMs;
  return madeAt === undefined || from.some((path) => isNewer(join(root, path), madeAt));
}

/** Whether a file, or anything in a folder, was changed after this instant. A thousand files are looked at: the least for each. */
function isNewer(path: string, thanMs: number): boolean {
  const found = statSync(path, { throwIfNoEntry: false });
  if (!found?.isDirectory()) return found !== undefined && found.mtimeMs > thanMs;
  return readdirSync(path, { withFileTypes: true }).some((entry) => {
    if (entry.name === 'dist' || entry.name === 'node_modules') return false;
    const inside = `${path}/${entry.name}`;
    return entry.isDirectory() ? isNewer(inside, thanMs) : statSync(inside).mtimeMs > thanMs;
  });
}

import { readFileSync } from 'node:fs';
import { basename, dirname, extname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Fact } from './row.ts';

const BUILT = join(import.meta.dirname, '../../renderer/dist');
const KIB = 1024;

/** What the newest build made, by path: files of older builds stay while a copy of the program runs. */
const builtFiles = () =>
  readFileSync(join(BUILT, 'files.txt'), 'utf8')
    .split('\n')
    .map((file) => file.replaceAll('\\', '/'));

/**
 * The scripts that stand before somebody can work at the bench: those of these names and all that they import, each once. What a
 * script only imports when asked to (another page, a language, the solver of hole plans) is not among them. Texts by file name.
 */
export function loadedBy(names: readonly string[]): ReadonlyMap<string, string> {
  const folder = join(BUILT, 'assets');
  const files = builtFiles()
    .filter((file) => dirname(file) === 'assets' && extname(file) === '.js')
    .map((file) => basename(file));
  const found = new Map<string, string>();
  const open = (file: string) => {
    if (found.has(file)) return;
    const text = readFileSync(join(folder, file), 'utf8');
    found.set(file, text);
    for (const [, imported] of text.matchAll(IMPORTED)) if (files.includes(imported!)) open(imported!);
  };
  for (const name of names) {
    const file = files.find((one) => one === `${name}.js` || one.startsWith(`${name}-`));
    if (!file) throw new Error(`the built page has no script ${name}`);
    open(file);
  }
  return found;
}

/** A script that another imports before it runs: `from"./x.js"` or `import"./x.js"`, but not `import("./x.js")`. */
const IMPORTED = /(?:from|import)\s*"\.\/([\w~.-]+\.js)"/g;

/** Size of the built page by kind of file, plain and compressed with gzip, KiB. The page must have been built. */
export function bundleFacts(): Fact[] {
  const files = builtFiles();
  const of = (ending: string, wanted: (file: string) => boolean = () => true) =>
    files.filter((f) => extname(f) === ending && wanted(f)).map((f) => readFileSync(join(BUILT, f)));
  const kib = (parts: readonly Uint8Array[]) => parts.reduce((sum, { length }) => sum + length, 0) / KIB;
  const fact = (name: string, value: number): Fact => ({ group: 'renderer', name, value, unit: 'KiB' });
  const isTexts = (file: string) => basename(file).startsWith('texts-');
  // What is copied in whole beside the page's own scripts is fetched only by who asks for it (postures from photographs).
  const isOwn = (file: string) => dirname(file) === 'assets';
  const scripts = of('.js', (file) => isOwn(file) && !isTexts(file));
  const [texts, styles] = [of('.js', isTexts), of('.css')];
  const copied = of('.js', (file) => !isOwn(file));
  const bench = [...loadedBy(['first', 'main', 'bench-page', 'analysis-worker']).values()];
  return [
    fact('page script', kib(scripts)),
    fact('page script, compressed', kib(bench.map((s) => gzipSync(s)))),
    fact('scripts of all pages and workers, compressed', kib(scripts.map((s) => gzipSync(s)))),
    fact('page texts of every language, compressed', kib(texts.map((s) => gzipSync(s)))),
    fact('libraries fetched when asked for, compressed', kib(copied.map((s) => gzipSync(s)))),
    fact('page style, compressed', kib(styles.map((s) => gzipSync(s)))),
    fact('page letters', kib(of('.woff2'))),
  ];
}

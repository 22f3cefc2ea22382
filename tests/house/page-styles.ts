import { globSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';

/** A class that a page writes and that stands only in style sheets which are not fetched with it. */
export interface UnstyledClass {
  readonly page: string;
  readonly module: string;
  readonly name: string;
}

const IMPORT = /^\s*import\s(?!type)(?:[^'"]*?\sfrom\s)?['"](\.[^'"]+)['"]|^@import "(\.[^"]+)"/gm;
const LAZY = /import\('(\.[^']+)'\)/g;
const GLOB = /import\.meta\.glob[^(]*\('(\.[^']+)'/g;
const CLASS_NAMES = /className(?:=|: )(?:['"]([^'"]+)['"]|\{([^}]*)\})/g;
const QUOTED = /['"`]([^'"`]*)['"`]/g;

/** Classes without their style on a page that is opened before any other. `root`: the folder of the page's sources. */
export function unstyledClasses(root: string): UnstyledClass[] {
  const text = new Map(
    globSync('**/*.{ts,tsx,css}', { cwd: root, exclude: (path) => path === 'dist' }).map((file) => {
      const path = join(root, file);
      return [path, readFileSync(path, 'utf8')] as const;
    }),
  );
  const named = (from: string, pattern: RegExp) =>
    [...text.get(from)!.matchAll(pattern)].map((match) => resolve(dirname(from), match[1] ?? match[2]!));
  const next = (from: string) => [
    ...named(from, IMPORT),
    ...named(from, GLOB).flatMap((pattern) => globSync(pattern)),
  ];
  const reached = (starts: readonly string[]) => {
    const seen = new Set(starts);
    for (const file of seen) for (const other of next(file)) if (text.has(other)) seen.add(other);
    return seen;
  };
  const sheets = sheetsOfClasses(text);
  const main = join(root, 'main.tsx');
  return [...text.keys()].flatMap((from) =>
    named(from, LAZY).flatMap((page) => {
      // A part that a page fetches later comes to what is there already.
      const there = reached([main, from, page]);
      return [...there].flatMap((module) =>
        classesWritten(module.endsWith('.tsx') ? text.get(module)! : '')
          .filter((name) => sheets.has(name) && !sheets.get(name)!.some((sheet) => there.has(sheet)))
          .map((name) => ({ page: relative(root, page), module: relative(root, module), name })),
      );
    }),
  );
}

/** The style sheets in which each class stands. */
function sheetsOfClasses(text: ReadonlyMap<string, string>): Map<string, string[]> {
  const sheets = new Map<string, string[]>();
  for (const [file, css] of text) {
    if (!file.endsWith('.css')) continue;
    for (const [, name] of css.matchAll(/\.([a-zA-Z][\w-]*)/g)) {
      sheets.set(name!, [...(sheets.get(name!) ?? []), file]);
    }
  }
  return sheets;
}

function classesWritten(source: string): string[] {
  const lists = [...source.matchAll(CLASS_NAMES)].flatMap(([, plain, inBraces]) =>
    plain === undefined ? [...inBraces!.matchAll(QUOTED)].map(([, quoted]) => quoted!) : [plain],
  );
  return lists.flatMap((list) => list.split(/\s+/)).filter((name) => name !== '');
}

import { globSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';

/** A rule that speaks of a page's classes and stands in a style sheet that is not fetched with the page. */
export interface MissedRule {
  readonly page: string;
  readonly sheet: string;
  readonly selector: string;
}

const IMPORT = /^\s*import\s(?!type)(?:[^'"]*?\sfrom\s)?['"](\.[^'"]+)['"]|^@import "(\.[^"]+)"/gm;
const LAZY = /import\('(\.[^']+)'\)/g;
const GLOB = /import\.meta\.glob[^(]*\('(\.[^']+)'/g;
const CLASS_NAMES = /className(?:=|: )(?:['"]([^'"]+)['"]|\{([^}]*)\})/g;
const QUOTED = /['"`]([^'"`]*)['"`]/g;
const CLASS = /\.([a-zA-Z][\w-]*)/g;

/** Rules that a page misses when it is opened before any other. `root`: the folder of the page's sources. */
export function missedRules(root: string): MissedRule[] {
  const text = sourcesIn(root);
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
  const rules = rulesOf(text);
  const main = join(root, 'main.tsx');
  return [...text.keys()].flatMap((from) =>
    named(from, LAZY).flatMap((page) => {
      // A part that a page fetches later comes to what is there already.
      const there = reached([main, from, page]);
      const written = new Set([...there].flatMap((module) => classesWritten(module, text.get(module)!)));
      return rules
        .filter(({ sheet, classes }) => !there.has(sheet) && classes.every((name) => written.has(name)))
        .map(({ sheet, selector }) => ({
          page: relative(root, page),
          sheet: relative(root, sheet),
          selector,
        }));
    }),
  );
}

function sourcesIn(root: string): Map<string, string> {
  const files = globSync('**/*.{ts,tsx,css}', { cwd: root, exclude: (path) => path === 'dist' });
  return new Map(files.map((file) => [join(root, file), readFileSync(join(root, file), 'utf8')] as const));
}

/** Every selector that names classes, with its sheet. */
function rulesOf(text: ReadonlyMap<string, string>) {
  return [...text].flatMap(([sheet, css]) => {
    if (!sheet.endsWith('.css')) return [];
    const bare = css.replace(/\/\*.*?\*\//gs, '');
    const heads = [...bare.matchAll(/^\s*([^{}@;]+)\{/gm)].flatMap(([, head]) =>
      partedByCommas(head!).split(','),
    );
    return heads
      .map((selector) => ({
        sheet,
        selector: selector.trim(),
        classes: [...selector.matchAll(CLASS)].map(([, name]) => name!),
      }))
      .filter(({ classes }) => classes.length > 0);
  });
}

/** A list of selectors in which every comma parts two of them: those within `:not(a, b)` are gone. */
function partedByCommas(selectors: string): string {
  const next = selectors.replace(/\(([^()]*)\)/g, (_, inner: string) => `[${inner.replaceAll(',', ' ')}]`);
  return next === selectors ? selectors : partedByCommas(next);
}

function classesWritten(module: string, source: string): string[] {
  if (!module.endsWith('.tsx')) return [];
  const lists = [...source.matchAll(CLASS_NAMES)].flatMap(([, plain, inBraces]) =>
    plain === undefined ? [...inBraces!.matchAll(QUOTED)].map(([, quoted]) => quoted!) : [plain],
  );
  return lists.flatMap((list) => list.split(/\s+/)).filter((name) => name !== '');
}

/** A selector of a sheet: the classes of what it styles, and all that it names. */
interface Styled {
  readonly sheet: string;
  readonly subject: readonly string[];
  readonly all: readonly string[];
}

/**
 * Classes that several sheets style, each with those sheets. A page may place a shared control within a part of its own: a selector that
 * also names a class whose home is the same sheet does not count. `root`: the folder of the page's sources.
 */
export function manyHomes(root: string): ReadonlyMap<string, readonly string[]> {
  const styled = [...sourcesIn(root)].flatMap(([path, css]) =>
    path.endsWith('.css') ? styledIn(relative(root, path), css) : [],
  );
  const homes = sheetsOf(styled.filter(({ all, subject }) => all.length === 1 && subject.length === 1));
  const within = ({ sheet, all }: Styled, name: string) =>
    all.some((other) => other !== name && [...(homes.get(other) ?? [sheet])].every((home) => home === sheet));
  const sheets = sheetsOf(
    styled.map((each) => ({ ...each, subject: each.subject.filter((name) => !within(each, name)) })),
  );
  return new Map([...sheets].filter(([, set]) => set.size > 1).map(([name, set]) => [name, [...set].sort()]));
}

function styledIn(sheet: string, css: string): Styled[] {
  const bare = css.replace(/\/\*.*?\*\//gs, '');
  const classes = (text: string) => [...text.matchAll(CLASS)].map(([, name]) => name!);
  return [...bare.matchAll(/^\s*([^{}@;]+)\{/gm)].flatMap(([, head]) =>
    partedByCommas(head!)
      .split(',')
      .map((selector) => {
        const last = selector
          .replace(/\[[^\]]*\]/g, '')
          .trim()
          .split(/[\s>+~]+/)
          .at(-1)!;
        return { sheet, subject: classes(last), all: classes(selector) };
      }),
  );
}

function sheetsOf(styled: readonly Styled[]): Map<string, Set<string>> {
  const sheets = new Map<string, Set<string>>();
  for (const { sheet, subject } of styled) {
    for (const name of subject) sheets.set(name, (sheets.get(name) ?? new Set()).add(sheet));
  }
  return sheets;
}

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
const CLASS_NAMES = /(?:className|look)(?:=|: )(?:['"]([^'"]+)['"]|\{([^}]*)\})/g;
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
  return [...text.keys()].flatMap((from) => {
    // What is no page (a language's texts) has no style.
    const pages = named(from, LAZY).filter((page) => text.has(page));
    return pages.flatMap((page) => {
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
    });
  });
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

/** A selector of a sheet: the classes of what it styles, all that it names, and the properties that it sets. */
interface Styled {
  readonly sheet: string;
  readonly selector: string;
  readonly subject: readonly string[];
  readonly all: readonly string[];
  readonly properties: readonly string[];
}

/** What a thing looks like, wherever it stands. The rest places it: margins, grids, widths, heights. */
const LOOK =
  /^(?:background|border|box-shadow|color|cursor|fill|font|letter-spacing|opacity|outline|stroke|text-(?:decoration|transform)|transition)/;

/** A class whose look several sheets write. */
export interface ManyHomes {
  /** The class, and the sheets that style it by itself. */
  readonly shared: ReadonlyMap<string, readonly string[]>;
  /** Rules of other sheets than the class's own that set more than its place: "sheet: selector". */
  readonly elsewhere: readonly string[];
}

/**
 * Classes whose look stands in more than one sheet. A class's home is the sheet that gives it a look by itself, without another class around it;
 * elsewhere it may be placed only (or be told its size by a custom property). `root`: the folder of the page's sources.
 */
export function manyHomes(root: string): ManyHomes {
  const styled = [...sourcesIn(root)].flatMap(([path, css]) =>
    path.endsWith('.css') ? styledIn(relative(root, path), css) : [],
  );
  const looks = styled.filter(({ properties }) => properties.some((property) => LOOK.test(property)));
  const homes = sheetsOf(looks.filter(({ all, subject }) => all.length === subject.length));
  const shared = [...homes]
    .filter(([, set]) => set.size > 1)
    .map(([name, set]) => [name, [...set].sort()] as const);
  const elsewhere = looks
    .filter(({ sheet, subject }) => {
      const isAway = subject.some((name) => homes.has(name) && !homes.get(name)!.has(sheet));
      const isOwn = subject.some((name) => homes.get(name)?.has(sheet));
      return isAway && !isOwn;
    })
    .map(({ sheet, selector }) => `${sheet}: ${selector}`);
  return { shared: new Map(shared), elsewhere: elsewhere.sort() };
}

function styledIn(sheet: string, css: string): Styled[] {
  const bare = css.replace(/\/\*.*?\*\//gs, '');
  const classes = (text: string) => [...text.matchAll(CLASS)].map(([, name]) => name!);
  return [...bare.matchAll(/^\s*([^{}@;]+)\{([^{}]*)/gm)].flatMap(([, head, body]) =>
    partedByCommas(head!)
      .split(',')
      .map((selector) => {
        const last = selector
          .replace(/\[[^\]]*\]/g, '')
          .trim()
          .split(/[\s>+~]+/)
          .at(-1)!;
        const properties = [...body!.matchAll(/([\w-]+)\s*:/g)].map(([, name]) => name!);
        return {
          sheet,
          selector: selector.trim(),
          subject: classes(last),
          all: classes(selector),
          properties,
        };
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

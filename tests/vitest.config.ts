import { globSync, readFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { defineConfig } from 'vitest/config';

const root = join(import.meta.dirname, '..');
/** Test files that only the long run takes. */
const LONG_ONLY = 'tests/**/*.long.test.ts';
/** How a test file takes in what differs between the runs: `cases`, the number of random cases, and the barriers of themes. */
const DIFFERS = /from '(?:\.\.?\/)+(?:cases|barriers)\.ts'/;

/** Where programs that tests start keep what they compiled: starting one takes a third of the time. Git does not see it. */
const COMPILED = join(root, 'node_modules/.cache/compiled');

/** Tests read the page in English, and the words of programs that they start, whatever the computer's language; names of files in any. */
process.env.LC_ALL = 'C.UTF-8';
const setupFiles = [join(import.meta.dirname, 'speak-english.ts')];

/** A test that takes this long hangs, even on a machine that is busy with other things; milliseconds. No test is timed. */
const HANGS_MS = 300_000;
const LONG_HANGS_MS = 1_800_000;

/**
 * What a test expects soon (`expect.poll`) is asked for this long, this often, milliseconds: seldom enough that the program answers
 * each time, and not so long that a program calls its library by itself meanwhile, instead of hearing of news.
 */
const SOON = { timeout: 100_000, interval: 150 };

interface Kind {
  readonly name: string;
  /** Folders in `tests/`. */
  readonly folders: readonly string[];
  /** Files of those folders that another kind takes. */
  readonly except?: readonly string[];
  /** Whether each file has a process of its own. Without it files share one, and their modules: the sources keep no state there. */
  readonly isolate?: boolean;
  /**
   * Whether Node itself loads the files, as it does when it runs the program: a fifth less processor time than through Vite,
   * whose modules reach each other by getters. Node reads TypeScript, but no JSX.
   */
  readonly native?: boolean;
}

/** One kind of test in the quick run (`npm test`). */
function quick({ name, folders, except = [], isolate = false, native = false }: Kind) {
  const include = folders.map((folder) => `tests/${folder}/**/*.test.ts`);
  const test = {
    name,
    include,
    exclude: [LONG_ONLY, ...except],
    setupFiles,
    isolate,
    testTimeout: HANGS_MS,
    hookTimeout: HANGS_MS,
    expect: { poll: SOON },
    experimental: { viteModuleRunner: !native, nodeLoader: false },
  };
  return { root, test: { ...test, environment: 'node' as const, env: { NODE_COMPILE_CACHE: COMPILED } } };
}

/** The same kind in the long run (`npm run test:long`): `*.long.test.ts`, and every file that asks for its `cases`. */
function long(kind: Kind) {
  const { test } = quick(kind);
  const include = kind.folders.flatMap(longFiles);
  const env = { ...test.env, KNEELWRIGHT_LONG: '1' };
  return { root, test: { ...test, include, exclude: [], env, testTimeout: LONG_HANGS_MS } };
}

function longFiles(folder: string): string[] {
  return globSync(`tests/${folder}/**/*.test.ts`, { cwd: root }).filter(
    (file) => file.endsWith('.long.test.ts') || DIFFERS.test(readFileSync(join(root, file), 'utf8')),
  );
}

/** Browser tests: one browser for all of them. */
function browser<P extends ReturnType<typeof quick>>({ test }: P) {
  return { root, test: { ...test, globalSetup: [join(import.meta.dirname, 'e2e/one-browser.ts')] } };
}

/** One project: its processes compile the core once for both. */
const core: Kind = { name: 'core', folders: ['core', 'reference'], native: true };
const house: Kind = { name: 'house', folders: ['house', 'bench', 'words'], native: true };
const renderer: Kind = { name: 'renderer', folders: ['renderer'] };
/** Starting a PostgreSQL leaves handlers of signals in the process. */
const library: Kind = { name: 'library', native: true, folders: ['app/library'], isolate: true };
const app: Kind = { name: 'app', native: true, folders: ['app'], except: ['tests/app/library/**'] };
const e2e: Kind = { name: 'e2e', folders: ['e2e'], native: true };
const coreLong: Kind = { name: 'core-long', folders: ['core', 'reference', 'house'], native: true };

export default defineConfig({
  root,
  test: {
    // One more than there are processors: tests of the browser and of processes also wait.
    maxWorkers: availableParallelism() + 1,
    projects: [
      ...[core, house, renderer, app, library].map(quick),
      browser(quick(e2e)),
      long(coreLong),
      long({ ...renderer, name: 'renderer-long' }),
      long({ ...app, name: 'app-long', isolate: true }),
      browser(long({ ...e2e, name: 'e2e-long' })),
    ],
  },
});

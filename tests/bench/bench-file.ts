import { readFileSync } from 'node:fs';
import { cpus, totalmem } from 'node:os';
import { type Fact, type Found, type Row, together } from './row.ts';

/** What one run of the bench found and where, as its JSON file holds it. */
export interface BenchFile {
  readonly measuredAt: string;
  readonly machine: {
    readonly cpu: string;
    readonly cores: number;
    readonly memoryGiB: number;
    readonly load: number;
  };
  /** The runtime's versions, and of every package that this one names. */
  readonly versions: Readonly<Record<string, string>>;
  readonly rows: readonly Row[];
  readonly facts: readonly Fact[];
}

const ROOT = new URL('../../', import.meta.url);

/** The file of a run that found this; `load` is the machine's when it began, processes that wanted to run. */
export function benchFile(found: readonly Found[], load: number): BenchFile {
  return {
    measuredAt: new Date().toISOString(),
    machine: {
      cpu: cpus()[0]?.model ?? 'unknown',
      cores: cpus().length,
      memoryGiB: Math.round(totalmem() / 2 ** 30),
      load,
    },
    versions: { node: process.versions.node, v8: process.versions.v8, ...packageVersions() },
    rows: found.flatMap(({ rows }) => rows),
    facts: found.flatMap(({ facts }) => facts),
  };
}

/** The versions that `package.json` pins. */
function packageVersions(): Record<string, string> {
  const text = readFileSync(new URL('package.json', ROOT), 'utf8');
  const { dependencies, devDependencies } = JSON.parse(text) as Record<
    'dependencies' | 'devDependencies',
    Record<string, string>
  >;
  const named = Object.entries({ ...dependencies, ...devDependencies });
  return Object.fromEntries(named.map(([name, version]) => [`${name} (package)`, version]));
}

/** A run's file read back. Throws an Error that names the file where it is not one. */
export function readBenchFile(path: string): BenchFile {
  const file = JSON.parse(readFileSync(path, 'utf8')) as Partial<BenchFile>;
  if (!Array.isArray(file.rows) || !Array.isArray(file.facts)) {
    throw new Error(
      `${path} is not a file that \`npm run bench -- --json FILE\` wrote; nothing was compared.`,
    );
  }
  return file as BenchFile;
}

/** Runs on one machine of different parts as one file, with the last one's time and versions. Throws where machines differ. */
export function joined(files: readonly BenchFile[]): BenchFile {
  const last = files.at(-1);
  if (!last) throw new Error('no file was named; nothing was read');
  if (files.some(({ machine }) => machine.cpu !== last.machine.cpu))
    throw new Error('these runs are of different machines; their numbers do not stand in one table');
  const load = Math.max(...files.map(({ machine }) => machine.load));
  return { ...last, machine: { ...last.machine, load }, ...together(files) };
}

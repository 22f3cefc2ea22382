import { readFileSync, writeFileSync } from 'node:fs';
import { loadavg } from 'node:os';
import { parseArgs } from 'node:util';
import { benchFile, joined, readBenchFile } from './bench-file.ts';
import { dependencies, dependencyLines } from './dependencies.ts';
import { tableLines } from './print-table.ts';
import { paragraphOf, withParagraph } from './readme-paragraph.ts';
import { type Found, GROUPS, type Group } from './row.ts';

/** Each part is loaded when it is its turn: what the test browser brings along would slow the core's own numbers by half. */
const RUNS: Readonly<Record<Group, () => Promise<Found>>> = {
  core: async () => (await import('./core-bench.ts')).coreBench(),
  renderer: async () => (await import('./renderer-bench.ts')).rendererBench(),
  store: async () => (await import('./store-bench.ts')).storeBench(),
  export: async () => (await import('./export-bench.ts')).exportBench(),
  library: async () => (await import('./library-bench.ts')).clubBench(),
};

/** Also allowed after `--only`: the table of dependencies, which takes no measuring. */
const DEPENDENCIES = 'deps';
const README = new URL('../../README.md', import.meta.url);

const OPTIONS = {
  /** Measures one part alone. */
  only: { type: 'string' },
  /** Takes what earlier runs wrote instead of measuring. */
  from: { type: 'string', multiple: true },
  /** Writes what was found. */
  json: { type: 'string' },
  /** Writes the README's paragraph from what was found. */
  readme: { type: 'boolean' },
} as const;

/** `npm run bench`: measures the parts wanted, prints one table, writes what was asked for. */
async function main(): Promise<void> {
  const { values } = parseArgs({ options: OPTIONS });
  if (values.only === DEPENDENCIES) return print(dependencyLines(dependencies()));
  const wanted = GROUPS.filter((group) => values.only === undefined || group === values.only);
  if (wanted.length === 0) {
    console.error(
      `--only ${values.only} is not known here; allowed are ${[...GROUPS, DEPENDENCIES].join(', ')}`,
    );
    process.exitCode = 2;
    return;
  }
  const [load] = loadavg();
  const file = values.from
    ? joined(values.from.map(readBenchFile))
    : benchFile(await measured(wanted), load ?? Number.NaN);
  print(tableLines(file));
  if (values.only === undefined) print(['', ...dependencyLines(dependencies())]);
  if (values.json) writeFileSync(values.json, `${JSON.stringify(file, null, 2)}\n`);
  if (values.readme) writeFileSync(README, withParagraph(readFileSync(README, 'utf8'), paragraphOf(file)));
}

async function measured(wanted: readonly Group[]): Promise<Found[]> {
  const found: Found[] = [];
  for (const group of wanted) found.push(await RUNS[group]());
  return found;
}

function print(lines: readonly string[]): void {
  console.log(lines.join('\n'));
}

await main();

import { readFileSync, writeFileSync } from 'node:fs';
import { cpus, totalmem } from 'node:os';
import { parseArgs } from 'node:util';
import { coreBench } from './core-bench.ts';
import { dragBench } from './drag-bench.ts';
import type { Row } from './measure.ts';
import { storeBench } from './store-bench.ts';

const GROUPS = ['core', 'renderer', 'store'] as const;

/** What one run found, as written to the JSON file. */
interface BenchFile {
  readonly measuredAt: string;
  readonly machine: { readonly cpu: string; readonly cores: number; readonly memoryGiB: number };
  readonly versions: Readonly<Record<string, string>>;
  readonly rows: readonly Row[];
  readonly facts: Readonly<Record<string, number>>;
}

async function storeRows(): Promise<{ rows: Row[]; facts: Record<string, number> }> {
  const { figures, openStoreMs, athletes, revisions } = await storeBench();
  const row = (name: string, ms: number, times: number | null): Row => ({
    group: 'store',
    name,
    medianUs: 1000 * ms,
    p95Us: Number.NaN,
    runs: 0,
    ratio: times === null ? null : { to: 'the same in an empty store', times },
  });
  const all = [...figures, { what: 'open the store', emptyMs: openStoreMs.empty, fullMs: openStoreMs.full }];
  return {
    rows: all.map(({ what, emptyMs, fullMs }) => row(`${what}, full store`, fullMs, fullMs / emptyMs)),
    facts: { 'athletes in the full store': athletes, 'revisions in the full store': revisions },
  };
}

async function rendererRows(): Promise<{ rows: Row[]; facts: Record<string, number> }> {
  const drags = await dragBench();
  const row = (
    name: string,
    { median, p95, count }: { median: number; p95: number; count: number },
  ): Row => ({
    group: 'renderer',
    name,
    medianUs: 1000 * median,
    p95Us: 1000 * p95,
    runs: count,
    ratio: null,
  });
  return {
    rows: drags.flatMap(({ what, scriptMs, frameMs }) => [
      row(`script of a move, ${what}`, scriptMs),
      row(`frame interval, ${what}`, frameMs),
    ]),
    facts: Object.fromEntries(drags.map((d) => [`share of frames in time, ${d.what}`, d.framesInTime])),
  };
}

const RUNS = { core: coreBench, renderer: rendererRows, store: storeRows } as const;

function print({ rows, facts, machine, versions }: BenchFile): void {
  console.log(`${machine.cpu}, ${machine.cores} cores, ${machine.memoryGiB} GiB; Node ${versions.node}`);
  for (const { group, name, medianUs, p95Us, ratio } of rows) {
    const beside = ratio ? `  ${ratio.times.toFixed(1)} × ${ratio.to}` : '';
    console.log(`${group.padEnd(9)}${name.padEnd(58)}${micro(medianUs)}${micro(p95Us)}${beside}`);
  }
  for (const [name, value] of Object.entries(facts)) console.log(`         ${name}: ${value.toPrecision(3)}`);
}

function micro(us: number): string {
  if (Number.isNaN(us)) return ''.padStart(13);
  return (us < 1000 ? `${us.toFixed(1)} µs` : `${(us / 1000).toFixed(2)} ms`).padStart(13);
}

function median(file: BenchFile, name: string): string {
  const row = file.rows.find((r) => r.name === name);
  return row ? micro(row.medianUs).trim() : 'not measured';
}

/** Writes the README's short performance paragraph from what was measured. */
function updateReadme(file: BenchFile): void {
  const path = new URL('../../README.md', import.meta.url);
  const text = readFileSync(path, 'utf8');
  const paragraph = `One step of a drag (stance in three phases, loads, three equilibria, findings) takes ${median(file, 'drag step, single')} for a
single and ${median(file, 'drag step, four')} for a four; a proposal ${median(file, 'proposal, single')} (medians on ${file.machine.cpu}, ${file.machine.cores} cores,
Node ${file.versions.node}). Figures of another machine: \`npm run bench\`.`;
  writeFileSync(
    path,
    text.replace(/(<!-- measured -->\n)[\s\S]*?(\n<!-- \/measured -->)/, `$1${paragraph}$2`),
  );
}

const { values } = parseArgs({
  options: { json: { type: 'string' }, only: { type: 'string' }, readme: { type: 'boolean' } },
});
const wanted = values.only ? GROUPS.filter((group) => group === values.only) : GROUPS;
if (wanted.length === 0) {
  console.error(`--only ${values.only} is not known here; allowed is ${GROUPS.join(', ')}`);
  process.exit(2);
}
const found = [];
for (const group of wanted) found.push(await RUNS[group]());
const file: BenchFile = {
  measuredAt: new Date().toISOString(),
  machine: {
    cpu: cpus()[0]?.model ?? 'unknown',
    cores: cpus().length,
    memoryGiB: Math.round(totalmem() / 2 ** 30),
  },
  versions: { node: process.versions.node, v8: process.versions.v8 },
  rows: found.flatMap((f) => f.rows),
  facts: Object.assign({}, ...found.map((f) => f.facts)) as Record<string, number>,
};
print(file);
if (values.json) writeFileSync(values.json, `${JSON.stringify(file, null, 2)}\n`);
if (values.readme) updateReadme(file);

import { type BenchFile, readBenchFile } from './bench-file.ts';
import { factText, timeText } from './print-table.ts';

/** A change of a median or a number by more than this share is worth a look. */
const WORTH_A_LOOK = 0.15;

/** A row or number that changed from one run to another. */
export interface Change {
  readonly name: string;
  readonly from: string;
  readonly to: string;
  /** Change over what it was; infinite where it was nothing. */
  readonly share: number;
}

interface Named {
  readonly name: string;
  readonly value: number;
  readonly text: string;
}

/** What changed by more than `WORTH_A_LOOK`, the most grown first: times, and the numbers that are not times. */
export function changes(before: BenchFile, after: BenchFile): { times: Change[]; facts: Change[] } {
  return {
    times: changed(timesIn(before), timesIn(after)),
    facts: changed(factsIn(before), factsIn(after)),
  };
}

function timesIn({ rows }: BenchFile): Named[] {
  return rows.map(({ group, name, medianUs, ownUs }) => ({
    name: `${group} ${name}`,
    value: ownUs ?? medianUs,
    text: timeText(ownUs ?? medianUs),
  }));
}

function factsIn({ facts }: BenchFile): Named[] {
  return facts.map((fact) => ({
    name: `${fact.group} ${fact.name}`,
    value: fact.value,
    text: factText(fact),
  }));
}

function changed(before: readonly Named[], after: readonly Named[]): Change[] {
  const old = new Map(before.map((one) => [one.name, one]));
  return after
    .flatMap(({ name, value, text }) => {
      const was = old.get(name);
      if (!was || was.value === value) return [];
      return [{ name, from: was.text, to: text, share: (value - was.value) / Math.abs(was.value) }];
    })
    .filter(({ share }) => Math.abs(share) > WORTH_A_LOOK)
    .sort((a, b) => b.share - a.share);
}

/** Names of rows that only one of two runs has. */
export function onlyInOne(before: BenchFile, after: BenchFile): string[] {
  const [old, now] = [before, after].map((file) => timesIn(file).map(({ name }) => name)) as [
    string[],
    string[],
  ];
  return [...old.filter((name) => !now.includes(name)), ...now.filter((name) => !old.includes(name))];
}

function main(): void {
  const [first, second] = process.argv.slice(2);
  if (!first || !second) {
    console.error('Two files are needed: npm run bench:compare -- BEFORE.json AFTER.json');
    process.exitCode = 2;
    return;
  }
  const [before, after] = [readBenchFile(first), readBenchFile(second)];
  const { times, facts } = changes(before, after);
  const line = ({ name, from, to, share }: Change) =>
    `${(100 * share).toFixed(0)} %  ${name}: ${from} to ${to}`;
  for (const change of times) console.log(`${change.share > 0 ? 'slower' : 'faster'} ${line(change)}`);
  for (const change of facts) console.log(`${change.share > 0 ? 'more' : 'less'} ${line(change)}`);
  if (times.length + facts.length === 0) console.log(`Nothing changed by more than ${100 * WORTH_A_LOOK} %.`);
  for (const name of onlyInOne(before, after)) console.log(`in one file only: ${name}`);
  process.exitCode = times.some(({ share }) => share > 0) ? 1 : 0;
}

if (import.meta.main) main();

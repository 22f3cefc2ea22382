import { readFileSync } from 'node:fs';
import type { Row } from './measure.ts';

/** A change of a median by more than this share is worth a look. */
export const WORTH_A_LOOK = 0.15;

/** A row that changed from one run to another. */
export interface Change {
  readonly name: string;
  readonly fromUs: number;
  readonly toUs: number;
  readonly share: number;
}

/** Rows of both runs whose median changed by more than `WORTH_A_LOOK`, the worst first. */
export function changes(before: readonly Row[], after: readonly Row[]): Change[] {
  const old = new Map(before.map((row) => [`${row.group} ${row.name}`, row.medianUs]));
  return after
    .flatMap((row) => {
      const name = `${row.group} ${row.name}`;
      const fromUs = old.get(name);
      if (fromUs === undefined) return [];
      return [{ name, fromUs, toUs: row.medianUs, share: row.medianUs / fromUs - 1 }];
    })
    .filter(({ share }) => Math.abs(share) > WORTH_A_LOOK)
    .sort((a, b) => b.share - a.share);
}

function rowsIn(path: string): Row[] {
  return (JSON.parse(readFileSync(path, 'utf8')) as { rows: Row[] }).rows;
}

if (import.meta.main) {
  const [before, after] = process.argv.slice(2);
  if (!before || !after) {
    console.error('Two files are needed: npm run bench:compare -- BEFORE.json AFTER.json');
    process.exit(2);
  }
  const found = changes(rowsIn(before), rowsIn(after));
  for (const { name, fromUs, toUs, share } of found) {
    console.log(
      `${share > 0 ? 'slower' : 'faster'} ${(100 * share).toFixed(0)} %  ${name}: ${fromUs.toFixed(1)} to ${toUs.toFixed(1)} µs`,
    );
  }
  if (found.length === 0) console.log('Nothing changed by more than 15 %.');
  process.exitCode = found.some(({ share }) => share > 0) ? 1 : 0;
}

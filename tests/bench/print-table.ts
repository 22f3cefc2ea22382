import type { BenchFile } from './bench-file.ts';
import type { Fact, Row } from './row.ts';

/** A time as a person reads it: 12.5 µs, 3.04 ms, 1.20 s. */
export function timeText(us: number): string {
  if (us < 1000) return `${us.toFixed(1)} µs`;
  return us < 1e6 ? `${(us / 1000).toFixed(2)} ms` : `${(us / 1e6).toFixed(2)} s`;
}

/** A number with its unit, three figures. */
export function factText({ value, unit }: Pick<Fact, 'value' | 'unit'>): string {
  const shown =
    Math.abs(value) >= 1000 ? Math.round(value).toString() : Number(value.toPrecision(3)).toString();
  return `${shown} ${unit}`.trim();
}

/** The table of a run, line by line: times, then the other numbers. */
export function tableLines({ machine, versions, measuredAt, rows, facts }: BenchFile): string[] {
  const width = Math.max(...[...rows, ...facts].map(({ name }) => name.length), 4);
  return [
    `${machine.cpu}, ${machine.cores} cores, ${machine.memoryGiB} GiB; Node ${versions.node}; ${measuredAt}`,
    '',
    `${'part'.padEnd(10)}${'what'.padEnd(width)}${'median'.padStart(12)}${'p95'.padStart(12)}${'runs'.padStart(8)}`,
    ...rows.map((row) => rowLine(row, width)),
    '',
    ...facts.flatMap((fact) => [
      `${fact.group.padEnd(10)}${fact.name.padEnd(width)}  ${factText(fact)}`,
      ...(fact.note ? [`${' '.repeat(10)}  ${fact.note}`] : []),
    ]),
  ];
}

function rowLine({ group, name, medianUs, p95Us, runs, ratio }: Row, width: number): string {
  const times = `${timeText(medianUs).padStart(12)}${(p95Us === null ? '' : timeText(p95Us)).padStart(12)}`;
  const beside = ratio ? `  ${Number(ratio.times.toPrecision(3))} × ${ratio.to}` : '';
  return `${group.padEnd(10)}${name.padEnd(width)}${times}${String(runs).padStart(8)}${beside}`;
}

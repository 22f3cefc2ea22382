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
    `${machine.cpu}, ${machine.cores} cores, ${machine.memoryGiB} GiB; Node ${versions.node}; ${measuredAt}; ${busyText(machine)}`,
    '',
    `${'part'.padEnd(10)}${'what'.padEnd(width)}${'median'.padStart(12)}${'p95'.padStart(12)}${'processor'.padStart(12)}${'runs'.padStart(8)}`,
    ...rows.map((row) => rowLine(row, width)),
    '',
    ...facts.flatMap((fact) => [
      `${fact.group.padEnd(10)}${fact.name.padEnd(width)}  ${factText(fact)}`,
      ...(fact.note ? [`${' '.repeat(10)}  ${fact.note}`] : []),
    ]),
  ];
}

/** How busy the machine was with anything else when the run began. */
function busyText({ load, cores }: BenchFile['machine']): string {
  return `load ${load.toFixed(1)} at its start${load > 0.75 * cores ? ', busy with other work: read processor times' : ''}`;
}

function rowLine({ group, name, medianUs, p95Us, ownUs, runs, ratio }: Row, width: number): string {
  const cell = (us: number | null) => (us === null ? '' : timeText(us)).padStart(12);
  const times = cell(medianUs) + cell(p95Us) + cell(ownUs);
  const beside = ratio ? `  ${Number(ratio.times.toPrecision(3))} × ${ratio.to}` : '';
  return `${group.padEnd(10)}${name.padEnd(width)}${times}${String(runs).padStart(8)}${beside}`;
}

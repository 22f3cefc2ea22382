import { describe, expect, it } from 'vitest';
import { offsetsHull } from '../../../../core/document/hull-kinds-schema.ts';
import { offsetsOfCsv } from '../../../../renderer/pages/boat/offsets-of-csv.ts';

/** A wedge-shaped hull of 3 stations, written with the given mark between cells and the given decimal mark. */
function csv(between: string, decimal: '.' | ','): string {
  const cell = (value: number) => value.toFixed(1).replace('.', decimal);
  const rows = [0, 2500, 5000].flatMap((x) => [
    [x, 0, 30.5],
    [x, x === 2500 ? 210 : 0, 300],
  ]);
  const head = ['station [mm]', 'half-breadth [mm]', 'height [mm]'].join(between);
  return [head, ...rows.map((row) => row.map(cell).join(between))].join('\r\n');
}

describe('a table of offsets in a CSV file', () => {
  it.each([
    [',', '.'],
    [';', ','],
    ['\t', ','],
  ] as const)('reads with %j between cells and %j as decimal mark', (between, decimal) => {
    const read = offsetsOfCsv(csv(between, decimal));
    if (!('hull' in read)) throw new Error(read.problems.join('\n'));
    expect(read.hull.stations.map(({ xM }) => xM)).toEqual([-2.5, 0, 2.5]);
    expect(read.hull.stations[1]!.section[1]![0]).toBeCloseTo(0.21, 9);
    expect(read.hull.stations[1]!.section[0]![1]).toBe(0);
    expect(offsetsHull.safeParse(read.hull).success).toBe(true);
  });

  it('reads with a byte order mark before it', () => {
    expect('hull' in offsetsOfCsv(`\u{feff}${csv(',', '.')}`)).toBe(true);
  });

  it('names the row of what is wrong, and takes nothing', () => {
    const read = offsetsOfCsv(csv(',', '.').replace('210.0', 'wide'));
    expect('problems' in read && read.problems[0]).toMatch(/^Row 5: “wide” is not a number/);
  });

  it('refuses what is no table', () => {
    expect('problems' in offsetsOfCsv('hello')).toBe(true);
    expect('problems' in offsetsOfCsv('')).toBe(true);
  });
});

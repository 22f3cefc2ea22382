import { describe, expect, it } from 'vitest';
import { classicOffsets } from '../../../core/hull/classic-offsets.ts';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { offsetsFromTable } from '../../../core/hull/offsets-from-table.ts';
import { offsetsOut } from '../../../core/hull/offsets-out.ts';
import { halfBreadth } from '../../../core/hull/section-at.ts';
import { numberedSections, sectionsOut } from '../../../core/hull/sections-out.ts';
import { exampleFit } from '../example/example-fit.ts';
import { madeHull } from './made-hull.ts';

/** A double-ended hull of my own making, in millimetres. */
const TABLE = [
  ['half-breadths [mm]', '0', '1000', '2000', '3000', '4000'],
  ['keel', '60', '10', '0', '10', '60'],
  ['50', '', '150', '190', '150', ''],
  ['100', '20', '200', '240', '200', '20'],
  ['sheer', '50', '230', '280', '230', '50'],
  ['sheer height', '300', '250', '240', '250', '300'],
];

const read = (rows: readonly (readonly string[])[]) => {
  const table = offsetsFromTable(classicOffsets(rows) ?? rows);
  if (!table.ok) throw new Error(table.problems[0]!.key);
  return madeHull({ name: 'classic', stations: table.stations });
};

describe('a classic table of offsets', () => {
  it('is read station by station: keel, waterlines between keel and sheer, sheer', () => {
    const hull = read(TABLE);
    expect(hull.length).toBeCloseTo(4, 9);
    expect(halfBreadth(hull, 0, 0.1)).toBeCloseTo(0.24, 6);
    expect(halfBreadth(hull, 1, 0.05)).toBeCloseTo(0.15, 6);
    expect(hull.stations[0]!.section).toHaveLength(3);
    expect(hull.stations[2]!.section).toHaveLength(4);
  });

  it('reads waterlines below zero, with either minus sign, in any order', () => {
    const lower = (cell: string, row: number) => (row === 4 ? cell : String(Number(cell) - 80));
    const lowered = TABLE.map((row, r) =>
      row.map((cell, c) =>
        r === 0 || cell === '' || (c > 0 && (r === 2 || r === 3)) || Number.isNaN(Number(cell))
          ? cell
          : lower(cell, r),
      ),
    ).map((row) => row.map((cell) => cell.replace('-', '−')));
    const [head, keel, low, high, ...sheer] = lowered.map((row, r) => (r === 0 ? TABLE[0]! : row));
    const hull = read([head!, keel!, high!, low!, ...sheer]);
    expect(halfBreadth(hull, 0, 0.1)).toBeCloseTo(0.24, 6);
    expect(halfBreadth(hull, 1, 0.05)).toBeCloseTo(0.15, 6);
  });

  it('means the same in inches', () => {
    const inch = TABLE.map((row, r) =>
      row.map((cell, c) => {
        if (r === 0 && c === 0) return 'half-breadths [in]';
        return cell === '' || Number.isNaN(Number(cell)) ? cell : String(Number(cell) / 25.4);
      }),
    );
    const [metric, inches] = [read(TABLE), read(inch)];
    expect(inches.length).toBeCloseTo(metric.length, 6);
    expect(halfBreadth(inches, 0.4, 0.12)).toBeCloseTo(halfBreadth(metric, 0.4, 0.12)!, 6);
  });

  it('leaves every other table to the reader of points', () => {
    expect(classicOffsets([['station [mm]', 'half-breadth [mm]', 'height [mm]']])).toBeNull();
    expect(classicOffsets([])).toBeNull();
  });

  it('lets the reader of points name a wrong cell', () => {
    const wrong = TABLE.map((row) => row.map((cell) => (cell === '190' ? 'wide' : cell)));
    expect(offsetsFromTable(classicOffsets(wrong)!)).toMatchObject({ ok: false });
  });
});

describe('offsets given out', () => {
  it('are read again as the same hull', () => {
    const hull = hullOfBoat(exampleFit().boat);
    const again = offsetsFromTable(offsetsOut(hull));
    if (!again.ok) throw new Error(again.problems[0]!.key);
    expect(again.stations.length).toBe(hull.stations.length);
    for (const [k, { x, section }] of hull.stations.entries()) {
      const other = again.stations[k]!;
      expect(other.x).toBeCloseTo(x, 4);
      for (const [i, [y, z]] of section.entries()) {
        expect(other.section[i]![0]).toBeCloseTo(y, 4);
        expect(other.section[i]![1]).toBeCloseTo(z, 4);
      }
    }
  });
});

describe('sections given out', () => {
  it('are those of the body plan: each point on the hull, from keel to sheer, stern to bow', () => {
    const hull = hullOfBoat(exampleFit().boat);
    const [head, ...rows] = sectionsOut(hull);
    expect(head).toEqual(['section', 'from stern [mm]', 'half-breadth [mm]', 'height [mm]']);
    expect(new Set(rows.map(([section]) => section)).size).toBe(numberedSections(hull).length);
    for (const [section, from, half, height] of rows.filter((_, k) => k % 5 === 2)) {
      const x = hull.aftX + Number(from) / 1000;
      expect(Number(from)).toBeCloseTo(100 * Number(section) * hull.length, 0);
      expect(halfBreadth(hull, x, hull.lowestZ + Number(height) / 1000 - 1e-5)).toBeCloseTo(
        Number(half) / 1000,
        3,
      );
    }
  });
});

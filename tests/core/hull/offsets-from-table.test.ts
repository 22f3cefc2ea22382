import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import type { Message } from '../../../core/document/message.ts';
import { offsetsFromTable } from '../../../core/hull/offsets-from-table.ts';
import { readOffsetsHeader } from '../../../core/hull/offsets-header.ts';
import { immersedProperties } from '../../../core/hydrostatics/immersed-properties.ts';
import type { Words } from '../../../core/text/words.ts';
import { english } from '../../english.ts';
import { sampleStations } from '../../reference/hydro-sample-hulls.ts';
import { madeHull } from './made-hull.ts';

/** A problem as it is read. */
const said = ({ key, values }: Message) => (english as Words).say(key, values);

const SEED = 12;

const rowsOf = (text: string) =>
  text
    .trim()
    .split('\n')
    .map((line) => line.split(';').map((c) => c.trim()));

const good = `
station [mm]; half-breadth [mm]; height [mm]
0; 0; 50
0; 0; 300
1000; 0; 10
1000; 180; 100
1000; 200; 280
2000; 0; 0
2000; 200; 90
2000; 210; 270
4000; 0; 40
4000; 0; 310`;

function problemsOf(text: string) {
  const read = offsetsFromTable(rowsOf(text));
  return read.ok ? [] : read.problems;
}

/** The good table with one line replaced. */
const withLine = (from: string, to: string) => good.replace(`\n${from}\n`, `\n${to}\n`);

describe('offsetsFromTable', () => {
  it('reads stations into the boat frame: mid-length at 0, lowest keel at 0', () => {
    const read = offsetsFromTable(rowsOf(good));
    if (!read.ok) throw new Error('not read');
    expect(read.shift).toEqual({ x: 2, z: 0 });
    expect(read.stations.map((s) => s.x)).toEqual([-2, -1, 0, 2]);
    expect(read.stations[1]!.section).toEqual([
      [0, 0.01],
      [0.18, 0.1],
      [0.2, 0.28],
    ]);
  });

  it('any order of stations and columns, other columns, comments and blank rows, decimal commas, other units: the same hull', () => {
    const plain = offsetsFromTable(rowsOf(good));
    const lines = rowsOf(good).slice(1);
    const shuffled = [...lines.slice(5, 8), ...lines.slice(0, 2), ...lines.slice(8), ...lines.slice(2, 5)];
    const cm = (mm: string) => String(Number(mm) / 10).replace('.', ',');
    const m = (mm: string) => String(Number(mm) / 1000);
    const rows = [
      ['# drawn in the loft', ''],
      ['Height (cm)', 'note', 'X [m]', 'Half breadth, cm'],
      ...shuffled.map(([x, y, z]) => [cm(z!), 'faired', m(x!), cm(y!)]),
      ['', '', '', ''],
    ];
    expect(offsetsFromTable(rows)).toEqual(plain);
  });

  it('another origin changes only the shift', () => {
    const moved = rowsOf(good).map(([x, y, z], i) =>
      i === 0 ? [x!, y!, z!] : [String(Number(x) - 700), y!, String(Number(z) + 55)],
    );
    const [a, b] = [offsetsFromTable(rowsOf(good)), offsetsFromTable(moved)];
    if (!a.ok || !b.ok) throw new Error('not read');
    expect(b.stations).toEqual(a.stations);
    expect(b.shift.x).toBeCloseTo(1.3, 9);
    expect(b.shift.z).toBeCloseTo(0.055, 9);
  });

  it.each([
    [
      'no number',
      withLine('1000; 180; 100', '1000; wide; 100'),
      5,
      'half-breadth',
      /“wide” is not a number; a half-breadth is needed/,
    ],
    ['empty cell', withLine('1000; 180; 100', '1000; 180;'), 5, 'height', /Empty; a height is needed/],
    ['short row', withLine('1000; 180; 100', '1000; 180'), 5, 'height', /Empty/],
    ['thousands', withLine('1000; 180; 100', '1.000,5; 180; 100'), 5, 'station', /is not a number/],
    ['negative', withLine('1000; 180; 100', '1000; -180; 100'), 5, 'half-breadth', /negative/],
    ['falling', withLine('1000; 200; 280', '1000; 200; 90'), 6, 'height', /Lower than the row before/],
    ['one point', withLine('4000; 0; 40', '3000; 0; 40'), 10, 'station', /one point/],
    ['too long', withLine('4000; 0; 40', '4e6; 0; 40'), 10, 'station', /m long/],
    ['too broad', withLine('1000; 200; 280', '1000; 20000; 280'), 6, 'half-breadth', /m broad/],
    ['too deep', withLine('1000; 200; 280', '1000; 200; 28000'), 6, 'height', /m deep/],
    [
      'flat middle',
      withLine('1000; 180; 100', '1000; 180; 10').replace('1000; 200; 280', '1000; 200; 10'),
      6,
      null,
      /sheer must be last/,
    ],
  ] as const)('%s: one line, with its row and column', (_, text, row, column, message) => {
    const problems = problemsOf(text);
    expect(problems.some((p) => p.row === row && p.column === column && message.test(said(p)))).toBe(true);
  });

  it('three bad cells are three lines; nothing is half imported', () => {
    const bad = withLine('1000; 180; 100', 'a; b; c');
    const read = offsetsFromTable(rowsOf(bad));
    expect(read.ok).toBe(false);
    expect('stations' in read).toBe(false);
    expect(problemsOf(bad).map((p) => [p.row, p.column])).toEqual([
      [5, 'station'],
      [5, 'half-breadth'],
      [5, 'height'],
    ]);
  });

  it.each([
    ['nothing', [], /No rows/],
    ['blanks', [[''], ['  ', '']], /No rows/],
    ['a header alone', rowsOf('x [m]; y [m]; z [m]'), /No points/],
    ['two stations', rowsOf('x [m]; y [m]; z [m]\n0;0;0\n0;0.1;1\n1;0;0\n1;0.2;1'), /at least 3/],
    [
      'no water',
      rowsOf('x [m]; y [m]; z [m]\n0;0;0\n0;0;1\n1;0;0\n1;0;1\n2;0;0\n2;0;1'),
      /Every breadth is 0/,
    ],
    ['a flood of rows', Array.from({ length: 100_002 }, () => ['1', '2', '3']), /at most 100000/],
  ] as const)('%s: says so', (_, rows, message) => {
    const read = offsetsFromTable(rows);
    expect(read.ok).toBe(false);
    if (!read.ok) expect(said(read.problems[0]!)).toMatch(message);
  });

  it('a thousand bad rows end in one line that counts the rest', () => {
    const rows = [['x [m]', 'y [m]', 'z [m]'], ...Array.from({ length: 1000 }, () => ['?', '0', '0'])];
    const read = offsetsFromTable(rows);
    if (read.ok) throw new Error('read');
    expect(read.problems).toHaveLength(101);
    expect(read.problems[100]).toMatchObject({ row: null, column: null, values: { count: 900 } });
  });

  it(`any text at all is read or refused with at least one problem, seed ${SEED}`, () => {
    const cell = fc.oneof(
      fc.string({ maxLength: 6 }),
      fc.constantFrom('0', '1,5', '-3', '1e309', 'x [m]', 'height [cm]', 'NaN'),
    );
    const table = fc.array(fc.array(cell, { maxLength: 4 }), { maxLength: 12 });
    fc.assert(
      fc.property(table, fc.boolean(), (rows, headed) => {
        const read = offsetsFromTable(headed ? [['x [m]', 'y [cm]', 'z [mm]'], ...rows] : rows);
        if (read.ok) madeHull({ name: 'random', stations: read.stations });
        else expect(read.problems.length).toBeGreaterThan(0);
      }),
      { seed: SEED, numRuns: 500 },
    );
  });

  it('what a general CSV reader writes of a hull comes back as the same hull', () => {
    const stations = sampleStations('pair');
    const rows = stations.flatMap(({ x, section }) => section.map(([y, z]) => [x, y, z]));
    const text = Papa.unparse({ fields: ['station [m]', 'half-breadth [m]', 'height [m]'], data: rows });
    const read = offsetsFromTable(Papa.parse<string[]>(text).data);
    if (!read.ok) throw new Error(read.problems[0]!.key);
    const at = { draft: 0.13, trim: 0.003, heel: 0.05 };
    const [a, b] = [stations, read.stations].map((s) =>
      immersedProperties(madeHull({ name: 'p', stations: s }), at),
    );
    expect(b).toEqual(a);
  });
});

describe('readOffsetsHeader', () => {
  it.each([
    ['station [mm]', 'half-breadth (cm)', 'height m', [0.001, 0.01, 1]],
    ['X_mm', 'halfbreadth [mm]', 'Z, mm', [0.001, 0.001, 0.001]],
    ['  Station  ( M )', 'Y [M]', 'HEIGHT[CM]', [1, 1, 0.01]],
  ] as const)('%s | %s | %s', (x, y, z, units) => {
    const read = readOffsetsHeader(['extra', x, y, z]);
    if (!read.ok) throw new Error(read.problems[0]!.key);
    const { station, height } = read.columns;
    expect([station.index, read.columns['half-breadth'].index, height.index]).toEqual([1, 2, 3]);
    expect([station.unitM, read.columns['half-breadth'].unitM, height.unitM]).toEqual(units);
  });

  it('asks for a missing unit, refuses a strange one, names a missing column', () => {
    const read = readOffsetsHeader(['station', 'half-breadth [yd]', 'beam [mm]']);
    if (read.ok) throw new Error('read');
    expect(read.problems.map((p) => p.column)).toEqual(['station', 'half-breadth', 'height']);
    expect(said(read.problems[0]!)).toMatch(/“station” needs its unit/);
    expect(said(read.problems[1]!)).toMatch(/“half-breadth \[yd\].*\[in\]/);
    expect(said(read.problems[2]!)).toMatch(/No column “height/);
  });
});

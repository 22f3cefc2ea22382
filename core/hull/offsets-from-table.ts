import { checkOffsets } from '../document/check-offsets.ts';
import type { Message } from '../document/message.ts';
import type { SectionPoint, Station } from './hull.ts';
import {
  type FoundColumn,
  OFFSETS_COLUMNS,
  type OffsetsColumn,
  readOffsetsHeader,
} from './offsets-header.ts';

/** One thing wrong with a table. `row` counts from 1, the header included, as the rows were given; null: the whole table. */
export interface TableProblem extends Message {
  /** The header is row 1. */
  readonly row: number | null;
  /** Null where it is the whole row. */
  readonly column: OffsetsColumn | null;
}

/** The whole table, or its problems. */
export type OffsetsTable =
  | {
      readonly ok: true;
      /** Aftmost first, metres, boat frame. */
      readonly stations: readonly Station[];
      /** Subtracted from the table's own x and z to reach the boat frame, metres. */
      readonly shift: { readonly x: number; readonly z: number };
    }
  | { readonly ok: false; readonly problems: readonly TableProblem[] };

/** Most rows read: fifty times a fine table. A longer file is something else. */
const MOST_ROWS = 100_000;

/** Problems listed at most; a table with more has one cause that repeats. */
const MOST_PROBLEMS = 100;

/** Largest boat that a table may describe, metres: longer, broader or deeper and the unit is wrong. */
const LARGEST = { length: 30, halfBreadth: 2, depth: 2 } as const;

/** Stations nearer than this are the same station, metres. */
const SAME_STATION = 1e-6;

/** Coordinates are kept to a tenth of a micrometre: hides the dust of unit conversion. */
const STEPS_PER_METRE = 1e7;

/**
 * Reads a table of offsets from the cells of a text table.
 *
 * Columns in any order, other columns ignored; the header gives the unit of each: `[m]`, `[cm]`, `[mm]`, `[in]` or `[ft]`.
 *
 * | header | means |
 * |---|---|
 * | `station [mm]` (or `x`) | place along the boat, growing toward the bow, from any origin |
 * | `half-breadth [mm]` (or `y`) | from the centreline, 0 or more |
 * | `height [mm]` (or `z`) | from any level |
 *
 * One row is one point. Stations come in any order; the rows of a station run from its keel to its sheer, heights never
 * falling. Decimal points and commas both read. Blank rows and rows that begin with `#` are passed over. At least 3
 * stations of 2 points; a stem is a station whose half-breadths are 0.
 *
 * The result stands in the boat frame: mid-length at x = 0, lowest point of the keel at z = 0. If anything is wrong nothing
 * is returned but the problems, one line each.
 */
export function offsetsFromTable(rows: readonly (readonly string[])[]): OffsetsTable {
  const headerAt = rows.findIndex((row) => !isPassedOver(row));
  if (headerAt < 0) return { ok: false, problems: [{ ...WHOLE, key: 'table.empty' }] };
  if (rows.length > MOST_ROWS) {
    const values = { count: rows.length, most: MOST_ROWS };
    return { ok: false, problems: [{ ...WHOLE, key: 'table.many-rows', values }] };
  }
  const header = readOffsetsHeader(rows[headerAt]!);
  if (!header.ok) return { ok: false, problems: header.problems.map((p) => ({ row: headerAt + 1, ...p })) };
  const problems: TableProblem[] = [];
  const points: TablePoint[] = [];
  for (let at = headerAt + 1; at < rows.length; at++) {
    if (isPassedOver(rows[at]!)) continue;
    const point = readPoint(rows[at]!, at + 1, { columns: header.columns, problems });
    if (point) points.push(point);
  }
  if (problems.length > 0) return { ok: false, problems: capped(problems) };
  return inBoatFrame(groupStations(points));
}

/** A problem of the whole table. */
const WHOLE = { row: null, column: null } as const;

/** One row of the table in metres, with its number for messages. */
interface TablePoint {
  /** As the table's own rows are numbered, from 1. */
  readonly row: number;
  /** Forward, metres. */
  readonly x: number;
  /** Half-breadth, metres. */
  readonly y: number;
  /** Height, metres. */
  readonly z: number;
}

/** Rows of one station, keel first. */
interface TableStation {
  /** Forward, metres. */
  readonly x: number;
  readonly points: TablePoint[];
}

/** Blank rows and rows that begin with # are no data. */
const isPassedOver = (row: readonly string[]) =>
  row.every((cell) => cell.trim() === '') || row[0]!.trim().startsWith('#');

/** One row as a point in metres; null when a cell is no number, which is then among the problems. */
function readPoint(
  cells: readonly string[],
  row: number,
  { columns, problems }: { columns: Readonly<Record<OffsetsColumn, FoundColumn>>; problems: TableProblem[] },
): TablePoint | null {
  const [x, y, z] = OFFSETS_COLUMNS.map((column) => {
    const cell = (cells[columns[column].index] ?? '').trim();
    const value = readNumber(cell);
    if (value === null) {
      const values = { text: cell.slice(0, 20), what: column };
      problems.push({ row, column, key: cell === '' ? 'table.cell-empty' : 'table.no-number', values });
      return null;
    }
    return value * columns[column].unitM;
  });
  if (x == null || y == null || z == null) return null;
  if (y >= 0) return { row, x, y, z };
  problems.push({ row, column: 'half-breadth', key: 'table.half-negative' });
  return null;
}

/** A decimal number with point or comma, or null. */
function readNumber(cell: string): number | null {
  const plain = cell.replace('−', '-').replace(',', '.');
  return /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(plain) ? Number(plain) : null;
}

/** Rows by station, aftmost first; the rows of a station stay in the order of the table. */
function groupStations(points: readonly TablePoint[]): TableStation[] {
  const byPlace = new Map<number, TableStation>();
  for (const point of points) {
    const place = Math.round(point.x / SAME_STATION);
    const station = byPlace.get(place) ?? { x: point.x, points: [] };
    station.points.push(point);
    byPlace.set(place, station);
  }
  return [...byPlace.values()].sort((a, b) => a.x - b.x);
}

/** The last checks, and the move to the boat frame. */
function inBoatFrame(stations: readonly TableStation[]): OffsetsTable {
  const problems = [...stations.flatMap(stationProblems), ...sizeProblems(stations)];
  const shift = {
    x: stations.length > 0 ? (stations[0]!.x + stations[stations.length - 1]!.x) / 2 : 0,
    z: stations.reduce(
      (least, s) => s.points.reduce((l, p) => Math.min(l, p.z), least),
      Number.POSITIVE_INFINITY,
    ),
  };
  const rounded = (value: number) => Math.round(value * STEPS_PER_METRE) / STEPS_PER_METRE + 0;
  const moved = stations.map(({ x, points }) => ({
    x: rounded(x - shift.x),
    section: points.map(({ y, z }): SectionPoint => [rounded(y), rounded(z - shift.z)]),
  }));
  if (problems.length === 0) {
    for (const { station, row, ...message } of checkOffsets(moved)) {
      const points = station === null ? [] : stations[station]!.points;
      problems.push({ row: points[row ?? 0]?.row ?? null, column: null, ...message });
    }
  }
  if (problems.length > 0) return { ok: false, problems: capped(problems) };
  return { ok: true, stations: moved, shift: { x: rounded(shift.x), z: rounded(shift.z) } };
}

/** A station must run upward from keel to sheer and have both. */
function stationProblems({ points }: TableStation): TableProblem[] {
  const problems: TableProblem[] = [];
  points.forEach(({ row, z }, i) => {
    if (i > 0 && z < points[i - 1]!.z) {
      problems.push({ row, column: 'height', key: 'table.height-falls' });
    }
  });
  if (points.length < 2) {
    problems.push({ row: points[0]!.row, column: 'station', key: 'table.one-point' });
  }
  return problems;
}

/** A boat of impossible size means a wrong unit. The problem is at the row of the farthest point. */
function sizeProblems(stations: readonly TableStation[]): TableProblem[] {
  const all = stations.flatMap((s) => s.points);
  const [first] = all;
  if (!first) return [{ ...WHOLE, key: 'table.no-points' }];
  const least = all.reduce((a, b) => (b.z < a.z ? b : a), first);
  const highest = all.reduce((a, b) => (b.z > a.z ? b : a), first);
  const broadest = all.reduce((a, b) => (b.y > a.y ? b : a), first);
  const foremost = all.reduce((a, b) => (b.x > a.x ? b : a), first);
  const aftmost = all.reduce((a, b) => (b.x < a.x ? b : a), first);
  const problems: TableProblem[] = [];
  const tooMuch = ({ row }: TablePoint, column: OffsetsColumn, { key, by }: { key: string; by: number }) =>
    problems.push({ row, column, key, values: { by: Math.round(by * 10) / 10 } });
  const length = foremost.x - aftmost.x;
  if (length > LARGEST.length) tooMuch(foremost, 'station', { key: 'table.too-long', by: length });
  if (broadest.y > LARGEST.halfBreadth) {
    tooMuch(broadest, 'half-breadth', { key: 'table.too-broad', by: 2 * broadest.y });
  }
  const depth = highest.z - least.z;
  if (depth > LARGEST.depth) tooMuch(highest, 'height', { key: 'table.too-deep', by: depth });
  return problems;
}

/** The first problems and a line that counts the rest. */
function capped(problems: readonly TableProblem[]): TableProblem[] {
  if (problems.length <= MOST_PROBLEMS) return [...problems];
  const rest = problems.length - MOST_PROBLEMS;
  return [...problems.slice(0, MOST_PROBLEMS), { ...WHOLE, key: 'table.more', values: { count: rest } }];
}

import Papa from 'papaparse';
import type { OffsetsHull } from '../../../core/fit/boat-schema.ts';
import { checkOffsets } from '../../../core/hull/check-offsets.ts';
import type { SectionPoint, Station } from '../../../core/hull/hull.ts';
import { say } from '../../language/messages.ts';

/** A table of offsets as read, or everything that is wrong with the file, in words. */
export type ReadOffsets = { readonly hull: OffsetsHull } | { readonly problems: readonly string[] };

/** Most problems worth showing at once. */
const MOST_PROBLEMS = 8;

const X_NAMES = /^(x|station|stations)\b/i;
const Y_NAMES = /^(y|half.?breadth|b\/2)\b/i;
const Z_NAMES = /^(z|height)\b/i;

/**
 * Reads a table of offsets. Two layouts: columns x, y, z with one point a row; or a first row of heights (waterlines), a
 * first column of stations, half-breadths in the cells, blank where a station has none. `metresPer` is metres in one unit
 * of the file. The hull is brought to the boat frame: the middle of its length at x = 0, its lowest point at z = 0.
 */
export function offsetsOfCsv(text: string, metresPer: number): ReadOffsets {
  const rows = Papa.parse<string[]>(text.trim(), { skipEmptyLines: 'greedy', comments: '#' }).data;
  const header = rows[0]?.map((cell) => cell.trim()) ?? [];
  const named = [X_NAMES, Y_NAMES, Z_NAMES].map((name) => header.findIndex((cell) => name.test(cell)));
  const problems: string[] = [];
  const number = (cell: string | undefined, row: number): number => {
    const value = Number((cell ?? '').trim().replace(',', '.'));
    if (cell?.trim() && Number.isFinite(value)) return value * metresPer;
    problems.push(problemAt(row, say('boat.offsets.bad-number', { text: cell?.trim() ?? '' })));
    return 0;
  };
  const stations = named.every((column) => column >= 0)
    ? pointByPoint(rows.slice(1), named as [number, number, number], number)
    : waterlineTable(rows, number);
  if (!stations || stations.length === 0) return { problems: [say('boat.offsets.not-a-table')] };
  if (problems.length > 0) return { problems: problems.slice(0, MOST_PROBLEMS) };
  const found = checkOffsets(stations).map(({ station, message }) =>
    station === null ? message : say('boat.offsets.problem', { row: station + 1, what: message }),
  );
  return found.length > 0 ? { problems: found.slice(0, MOST_PROBLEMS) } : { hull: inBoatFrame(stations) };
}

const problemAt = (row: number, what: string) => say('boat.offsets.problem', { row, what });

type ReadNumber = (cell: string | undefined, row: number) => number;

function pointByPoint(
  rows: readonly string[][],
  [xColumn, yColumn, zColumn]: [number, number, number],
  number: ReadNumber,
): Station[] {
  const byX = new Map<number, SectionPoint[]>();
  rows.forEach((cells, i) => {
    const row = i + 2;
    const x = number(cells[xColumn], row);
    const point: SectionPoint = [number(cells[yColumn], row), number(cells[zColumn], row)];
    byX.set(x, [...(byX.get(x) ?? []), point]);
  });
  return [...byX].map(([x, section]) => ({ x, section })).sort((a, b) => a.x - b.x);
}

function waterlineTable(rows: readonly string[][], number: ReadNumber): Station[] | null {
  const heights = rows[0]?.slice(1);
  if (!heights || heights.length < 2 || heights.some((cell) => !/\d/.test(cell))) return null;
  const zs = heights.map((cell) => number(cell, 1));
  return rows
    .slice(1)
    .map((cells, i) => {
      const section = zs.flatMap((z, k): SectionPoint[] =>
        cells[k + 1]?.trim() ? [[number(cells[k + 1], i + 2), z]] : [],
      );
      return { x: number(cells[0], i + 2), section: section.sort((a, b) => a[1] - b[1]) };
    })
    .sort((a, b) => a.x - b.x);
}

function inBoatFrame(stations: readonly Station[]): OffsetsHull {
  const xs = stations.map(({ x }) => x);
  const middle = (Math.min(...xs) + Math.max(...xs)) / 2;
  const low = Math.min(...stations.flatMap(({ section }) => section.map(([, z]) => z)));
  return {
    kind: 'offsets',
    stations: stations.map(({ x, section }) => ({
      xM: x - middle,
      section: section.map(([y, z]): [number, number] => [y, z - low]),
    })),
  };
}

import Papa from 'papaparse';
import type { OffsetsHull } from '../../../core/document/hull-kinds-schema.ts';
import { classicOffsets } from '../../../core/hull/classic-offsets.ts';
import { offsetsFromTable } from '../../../core/hull/offsets-from-table.ts';
import { say, sayMessage } from '../../language/messages.ts';

/** A table of offsets as read, or what is wrong with the file, in words. */
export type ReadOffsets =
  | {
      readonly hull: OffsetsHull;
      /** What was taken from the table's own places and heights to come to mid-length and the lowest keel, metres. */
      readonly shift: { readonly x: number; readonly z: number };
    }
  | { readonly problems: readonly string[] };

/** Problems shown at once; the rest is counted by the last of them. */
const MOST_SHOWN = 8;

/** Reads the text of a CSV file (comma, semicolon or tab between cells) as a hull: points one a row, or a classic table of stations and waterlines; nothing of a wrong one is taken. */
export function offsetsOfCsv(text: string): ReadOffsets {
  const rows = Papa.parse<string[]>(text.replace(/^\u{feff}/u, ''), { skipEmptyLines: false }).data;
  const read = offsetsFromTable(classicOffsets(rows) ?? rows);
  if (read.ok) {
    return {
      shift: read.shift,
      hull: {
        kind: 'offsets',
        stations: read.stations.map(({ x, section }) => ({
          xM: x,
          section: section.map(([y, z]): [number, number] => [y, z]),
        })),
      },
    };
  }
  return {
    problems: read.problems.slice(0, MOST_SHOWN).map((problem) => {
      const { row } = problem;
      const what = sayMessage(problem);
      return row === null ? what : say('boat.offsets.problem', { row, what });
    }),
  };
}

import Papa from 'papaparse';
import type { Format } from '../../../app/language/format.ts';
import { MEASURE_KINDS } from '../../ui/fields/measure-kinds.ts';
import { BLANK_STATION, type BoatValues, type StationValues } from './boat-values.ts';

/** A table that was pasted into the stations: what they become, and how many cells were not understood. */
export interface PastedStations {
  readonly stations: readonly StationValues[];
  readonly notUnderstood: number;
}

/** The columns of the table of stations before its beams lower down. */
const READINGS = [
  'fromSternM',
  'keelM',
  'sheerM',
  'sheerBeamM',
] as const satisfies readonly (keyof StationValues)[];

/** Stations at most, as a tape's hull allows. */
const MOST = 60;

/**
 * Lays cells as a spreadsheet copies them (tabs between cells, a line each row) over the table of stations, from the entry
 * that they were pasted into. Bare numbers are in the shown unit. A first row without any number is a heading and is passed
 * over; empty cells leave what is there. Null for a single cell: that is an ordinary paste, and for an unknown entry.
 */
export function pasteStations(
  values: BoatValues,
  { entry, text }: { entry: string; text: string },
  format: Format,
): PastedStations | null {
  const from = placeOf(entry);
  const cells = Papa.parse<string[]>(text.trimEnd(), { delimiter: '\t' }).data;
  if (!from || (cells.length < 2 && (cells[0]?.length ?? 0) < 2)) return null;
  const read = cells.map((row) => row.map((cell) => readCell(cell, format)));
  const rows = read[0]!.some((cell) => typeof cell === 'number') ? read : read.slice(1);
  const stations = [...values.stations];
  rows.slice(0, MOST - from.row).forEach((row, i) => {
    const at = from.row + i;
    stations[at] = withCells(stations[at] ?? BLANK_STATION, row, {
      from: from.column,
      beams: values.beamHeightsM.length,
    });
  });
  return { stations, notUnderstood: rows.flat().filter((cell) => cell === 'no measure').length };
}

/** The row and column of an entry by its path: `stations.2.keelM`, `stations.2.beamsM.0`. */
function placeOf(entry: string): { row: number; column: number } | null {
  const [, row, key, beam] = /^stations\.(\d+)\.(\w+)(?:\.(\d+))?$/.exec(entry) ?? [];
  if (row === undefined) return null;
  const column =
    beam === undefined ? (READINGS as readonly string[]).indexOf(key ?? '') : READINGS.length + Number(beam);
  return column < 0 ? null : { row: Number(row), column };
}

function readCell(text: string, format: Format): number | 'empty' | 'no measure' {
  if (text.trim() === '') return 'empty';
  const read = MEASURE_KINDS.length.parse(text, format);
  return read.ok ? read.value : 'no measure';
}

function withCells(
  station: StationValues,
  cells: readonly (number | string)[],
  { from, beams }: { from: number; beams: number },
): StationValues {
  let next = station;
  for (const [i, cell] of cells.entries()) {
    if (typeof cell !== 'number') continue;
    const key = READINGS[from + i];
    const beam = from + i - READINGS.length;
    if (key) next = { ...next, [key]: cell };
    else if (beam < beams) next = { ...next, beamsM: withBeam(next.beamsM, { beam, beams, value: cell }) };
  }
  return next;
}

function withBeam(
  beamsM: StationValues['beamsM'],
  { beam, beams, value }: { beam: number; beams: number; value: number },
): StationValues['beamsM'] {
  return Array.from({ length: beams }, (_, i) => (i === beam ? value : (beamsM[i] ?? null)));
}

import { readFileSync } from 'node:fs';
import type { Hull, Station } from '../../core/hull/hull.ts';
import { offsetsFromTable } from '../../core/hull/offsets-from-table.ts';
import { madeHull } from '../core/hull/made-hull.ts';

export const SAMPLE_HULLS = ['single', 'pair', 'four', 'training'] as const;
export type SampleHull = (typeof SAMPLE_HULLS)[number];

/** Stations of a sample hull, from its table in assets/hulls. */
export function sampleStations(name: SampleHull): readonly Station[] {
  const text = readFileSync(new URL(`../../assets/hulls/${name}.csv`, import.meta.url), 'utf8');
  const read = offsetsFromTable(text.split('\n').map((line) => line.split(',')));
  if (!read.ok) throw new Error(`${name}: ${read.problems[0]?.key}`);
  return read.stations;
}

/** A sample hull ready for computing. */
export const sampleHull = (name: SampleHull): Hull => madeHull({ name, stations: sampleStations(name) });

import type { Hull } from './hull.ts';
import { millimetreText } from './offsets-out.ts';
import { sectionAt } from './section-at.ts';

/** Sections stand at the ends of this many equal parts of the length, numbered from 0 at the stern to 10 at the bow. */
const PARTS = 10;
/** A section narrower than this is closed, metres: a stem. */
const CLOSED_M = 1e-4;

/** One of the body plan's sections: its number and its points from keel to sheer, metres; heights over the hull's lowest point. */
export interface NumberedSection {
  /** 0 at the stern, 10 at the bow. */
  readonly station: number;
  /** Place along the boat. */
  readonly fromSternM: number;
  readonly points: readonly { readonly y: number; readonly z: number }[];
}

/** The station amidships. */
export const STATION_AMIDSHIPS = PARTS / 2;

/** The sections of a body plan from stern to bow; those that have closed to a stem are left out. */
export function numberedSections(hull: Hull): NumberedSection[] {
  return Array.from({ length: PARTS + 1 }, (_, station) => {
    const fromSternM = (hull.length * station) / PARTS;
    const points = sectionAt(hull, hull.aftX + fromSternM).map(({ y, z }) => ({ y, z: z - hull.lowestZ }));
    return { station, fromSternM, points };
  }).filter(({ points }) => Math.max(...points.map(({ y }) => y)) >= CLOSED_M);
}

/**
 * The same sections as rows of a text table, header first, millimetres to a hundredth: one row a point. Place from the stern,
 * half-breadth from the centreline, height over the lowest point of the keel.
 */
export function sectionsOut(hull: Hull): string[][] {
  return [
    ['section', 'from stern [mm]', 'half-breadth [mm]', 'height [mm]'],
    ...numberedSections(hull).flatMap(({ station, fromSternM, points }) =>
      points.map(({ y, z }) => [String(station), ...[fromSternM, y, z].map(millimetreText)]),
    ),
  ];
}

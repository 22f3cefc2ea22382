import type { Hull } from './hull.ts';

/** A length in metres as millimetres to a hundredth, for a text table: 0.123456 is `123.46`. */
export function millimetreText(valueM: number): string {
  return String(Math.round(valueM * 1e5) / 100 + 0);
}

/**
 * The offsets of a hull as rows of a text table, header first, millimetres to a hundredth: one row a point, stations from aft
 * forward, each from keel to sheer. `offsetsFromTable` reads them again.
 */
export function offsetsOut({ stations }: Pick<Hull, 'stations'>): string[][] {
  return [
    ['station [mm]', 'half-breadth [mm]', 'height [mm]'],
    ...stations.flatMap(({ x, section }) => section.map(([y, z]) => [x, y, z].map(millimetreText))),
  ];
}

import type { Hull } from './hull.ts';

/**
 * The offsets of a hull as rows of a text table, header first, millimetres to a hundredth: one row a point, stations from aft
 * forward, each from keel to sheer. `offsetsFromTable` reads them again.
 */
export function offsetsOut({ stations }: Pick<Hull, 'stations'>): string[][] {
  const mm = (valueM: number) => String(Math.round(valueM * 1e5) / 100 + 0);
  return [
    ['station [mm]', 'half-breadth [mm]', 'height [mm]'],
    ...stations.flatMap(({ x, section }) => section.map(([y, z]) => [mm(x), mm(y), mm(z)])),
  ];
}

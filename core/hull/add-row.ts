import type { Hull } from './hull.ts';
import { ROW, SUM, VALUES_PER_ROW } from './section-rows.ts';

/** Adds one clipped row to the sums with its weight, metres of x: the only place where an integral along x is taken. */
export function addRow({ rows, scratch }: Pick<Hull, 'rows' | 'scratch'>, row: number, weight: number): void {
  const { values, sums } = scratch;
  const at = row * VALUES_PER_ROW;
  const x = rows.x[row]!;
  const area = weight * values[at + ROW.area]!;
  const breadth = weight * values[at + ROW.breadth]!;
  const breadthY = weight * values[at + ROW.breadthY]!;
  sums[SUM.volume]! += area;
  sums[SUM.momentX]! += area * x;
  sums[SUM.momentY]! += weight * values[at + ROW.momentY]!;
  sums[SUM.momentZ]! += weight * values[at + ROW.momentZ]!;
  sums[SUM.plane]! += breadth;
  sums[SUM.planeX]! += breadth * x;
  sums[SUM.planeY]! += breadthY;
  sums[SUM.planeXx]! += breadth * x * x;
  sums[SUM.planeXy]! += breadthY * x;
  sums[SUM.planeYy]! += weight * values[at + ROW.breadthYy]!;
  sums[SUM.shell]! += weight * values[at + ROW.shell]!;
}

import type { Hull } from './hull.ts';

/**
 * Estimate of a bare hull's centre of mass: the centroid of its shell's area, as for a skin of even thickness without decks or
 * fittings. On the centreline; metres, boat frame. A box 5 × 0.5 × 0.4 m without lid has it 0.128 m up. Where it matters, weigh
 * and balance the boat: 1 cm here is about 0.2 mm of trim in a racing single.
 */
export function shellCentre({ rows }: Hull): { x: number; z: number } {
  const sums = { area: 0, x: 0, z: 0 };
  for (let row = 0; row + 2 < rows.count; row += 2) {
    const sixth = (rows.x[row + 2]! - rows.x[row]!) / 6;
    addSection(sums, rows, { row, weight: sixth });
    addSection(sums, rows, { row: row + 1, weight: 4 * sixth });
    addSection(sums, rows, { row: row + 2, weight: sixth });
  }
  addEnd(sums, rows, 0);
  addEnd(sums, rows, rows.count - 1);
  return sums.area > 0 ? { x: sums.x / sums.area, z: sums.z / sums.area } : { x: 0, z: 0 };
}

/** Adds the shell of one half-section, edge by edge, with its Simpson weight. */
function addSection(
  sums: { area: number; x: number; z: number },
  { points, x, z, shell }: Hull['rows'],
  { row, weight }: { row: number; weight: number },
): void {
  for (let k = row * points + 1; k < (row + 1) * points; k++) {
    const piece = weight * (shell[k]! - shell[k - 1]!);
    sums.area += piece;
    sums.x += piece * x[row]!;
    sums.z += (piece * (z[k]! + z[k - 1]!)) / 2;
  }
}

/** A flat end is shell too: its area and height follow from the sums along its half-section. */
function addEnd(
  sums: { area: number; x: number; z: number },
  { points, x, area, momentZ }: Hull['rows'],
  row: number,
): void {
  const last = (row + 1) * points - 1;
  sums.area += area[last]!;
  sums.x += area[last]! * x[row]!;
  sums.z += momentZ[last]!;
}

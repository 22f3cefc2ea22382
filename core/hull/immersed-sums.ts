import { clipRow, type WaterLine } from './clip-row.ts';
import type { Hull } from './hull.ts';
import { fillRow, ROW, SUM, VALUES_PER_ROW } from './section-rows.ts';

/** The water plane z = draft − alongSlope·x − acrossSlope·y: metres and tangents. */
export interface WaterPlane {
  readonly draft: number;
  readonly alongSlope: number;
  readonly acrossSlope: number;
}

/** How far above its lowest point a section is cut to see how flat its bottom is where it leaves the water, metres. */
const BOTTOM_PROBE = 1e-9;

/**
 * Integrates what lies under a water plane and returns `hull.scratch.sums` (places: `SUM`), good until the next call.
 *
 * Every section is clipped exactly. Along x each interval between stations is integrated by Simpson's rule over its two
 * stations and the lofted section between them; where the hull leaves the water inside an interval, over the part in
 * the water. A flat end (a box, a transom) counts as shell. An interval depends on nothing outside it, so every sum is continuous in the plane: Newton needs that.
 */
export function immersedSums(hull: Hull, plane: WaterPlane): Float64Array {
  const { rows, scratch } = hull;
  const { values, weights, sums } = scratch;
  const water: WaterLine = { row: 0, height: 0, slope: plane.acrossSlope };
  for (let row = 0; row < rows.count; row++) {
    water.row = row;
    water.height = plane.draft - plane.alongSlope * rows.x[row]!;
    clipRow(rows, water, values);
  }
  sums.fill(0);
  weights.fill(0);
  sums[SUM.wetAft] = Number.POSITIVE_INFINITY;
  sums[SUM.wetFore] = Number.NEGATIVE_INFINITY;
  for (let row = 0; row < rows.count - 1; row += 2) weighInterval(hull, plane, row);
  for (let row = 0; row < rows.count; row++) {
    if (weights[row] !== 0) addRow(hull, row, weights[row]!);
  }
  sums[SUM.shell]! += values[ROW.area]! + values[(rows.count - 1) * VALUES_PER_ROW + ROW.area]!;
  return sums;
}

/** Depth of the row's lowest point below the water, negative; positive when it is clear of it. */
function clearance(hull: Hull, plane: WaterPlane, row: number): number {
  const { values } = hull.scratch;
  return values[row * VALUES_PER_ROW + ROW.least]! - plane.draft + plane.alongSlope * hull.rows.x[row]!;
}

/**
 * Weighs the rows of one interval between stations, or integrates the parts of it that are in the water.
 *
 * The lowest points of its three sections give a parabola of clearance over the interval; where it is below 0 the hull is
 * in the water. Two quick tests settle nearly every interval: all three sections in the water under a hollow parabola,
 * all three clear of it over a humped one.
 */
function weighInterval(hull: Hull, plane: WaterPlane, row: number): void {
  const c0 = clearance(hull, plane, row);
  const cm = clearance(hull, plane, row + 1);
  const c1 = clearance(hull, plane, row + 2);
  const curve = 2 * (c0 - 2 * cm + c1);
  if (c0 <= 0 && cm <= 0 && c1 <= 0 && curve >= 0) {
    weighWhole(hull, row);
    return;
  }
  if (c0 > 0 && cm > 0 && c1 > 0 && curve <= 0) return;
  const ends = [0, ...rootsInside(curve, 4 * cm - 3 * c0 - c1, c0), 1];
  for (let k = 1; k < ends.length; k++) {
    const [from, to] = [ends[k - 1]!, ends[k]!];
    const middle = (from + to) / 2;
    if (c0 + middle * (4 * cm - 3 * c0 - c1 + middle * curve) >= 0) continue;
    if (from === 0 && to === 1) weighWhole(hull, row);
    else addPiece(hull, plane, { row, from, to });
  }
}

/** Simpson's weights for an interval that is in the water from end to end. */
function weighWhole({ rows, scratch }: Hull, row: number): void {
  const { weights, sums } = scratch;
  const sixth = (rows.x[row + 2]! - rows.x[row]!) / 6;
  weights[row]! += sixth;
  weights[row + 1]! += 4 * sixth;
  weights[row + 2]! += sixth;
  sums[SUM.wetAft] = Math.min(sums[SUM.wetAft]!, rows.x[row]!);
  sums[SUM.wetFore] = Math.max(sums[SUM.wetFore]!, rows.x[row + 2]!);
}

/** Roots of a·u² + b·u + c strictly between 0 and 1, rising. */
function rootsInside(a: number, b: number, c: number): number[] {
  const inside = (u: number) => u > 0 && u < 1;
  const square = b * b - 4 * a * c;
  if (square < 0) return [];
  // The root that does not cancel first, the other from the product of roots; a = 0 leaves the second alone.
  const q = -(b + (b < 0 ? -1 : 1) * Math.sqrt(square)) / 2;
  const roots = [q / a, c / q].filter(inside);
  return roots.length === 2 && roots[0]! > roots[1]! ? [roots[1]!, roots[0]!] : roots;
}

/** A part of the interval that begins at `row`, in shares of its length. */
interface Piece {
  readonly row: number;
  readonly from: number;
  readonly to: number;
}

/** Adds the part of an interval that is in the water, by Simpson's rule with sections lofted on the way. */
function addPiece(hull: Hull, plane: WaterPlane, { row, from, to }: Piece): void {
  const { rows, scratch } = hull;
  const length = rows.x[row + 2]! - rows.x[row]!;
  const sixth = ((to - from) * length) / 6;
  for (const [share, weight] of [
    [from, sixth],
    [(from + to) / 2, 4 * sixth],
    [to, sixth],
  ] as const) {
    if (share === 0 || share === 1) {
      scratch.weights[row + 2 * share]! += weight;
      continue;
    }
    loftSpare(hull, plane, { row, share, leaving: share === from || share === to });
    addRow(hull, rows.count, weight);
  }
  scratch.sums[SUM.wetAft] = Math.min(scratch.sums[SUM.wetAft]!, rows.x[row]! + from * length);
  scratch.sums[SUM.wetFore] = Math.max(scratch.sums[SUM.wetFore]!, rows.x[row]! + to * length);
}

/**
 * Lofts and clips a section in the spare row. Where the hull leaves the water the section is cut just above its own
 * lowest point: no area, but a flat bottom keeps the breadth with which it leaves.
 */
function loftSpare(
  hull: Hull,
  plane: WaterPlane,
  { row, share, leaving }: { row: number; share: number; leaving: boolean },
): void {
  const { rows, scratch } = hull;
  fillRow(hull, rows.count, [row >> 1, share]);
  const water = {
    row: rows.count,
    height: plane.draft - plane.alongSlope * rows.x[rows.count]!,
    slope: plane.acrossSlope,
  };
  clipRow(rows, water, scratch.values);
  if (!leaving) return;
  const at = rows.count * VALUES_PER_ROW;
  water.height = scratch.values[at + ROW.least]! + BOTTOM_PROBE;
  clipRow(rows, water, scratch.values);
  scratch.values[at + ROW.area] = 0;
  scratch.values[at + ROW.momentY] = 0;
  scratch.values[at + ROW.momentZ] = 0;
  scratch.values[at + ROW.shell] = 0;
}

/** Adds one clipped row to the sums with its weight: the only place where an integral along x is taken. */
function addRow({ rows, scratch }: Hull, row: number, weight: number): void {
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

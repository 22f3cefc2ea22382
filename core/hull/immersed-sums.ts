import { addRow } from './add-row.ts';
import { clipRow, type WaterLine } from './clip-row.ts';
import type { Hull } from './hull.ts';
import { addPartialInterval } from './partial-interval.ts';
import { rootsInside } from './roots-inside.ts';
import { fillRow, ROW, SUM, VALUES_PER_ROW } from './section-rows.ts';
import type { WaterPlane } from './water-plane.ts';
import { addWholeInterval } from './whole-interval.ts';

/** How far above its lowest point a section is cut to see how flat its bottom is where it leaves the water, metres. */
const BOTTOM_PROBE = 1e-9;

/**
 * Integrates what lies under a water plane and returns `hull.scratch.sums` (places: `SUM`), good until the next call.
 *
 * Every section is clipped exactly. Along x each interval between stations is integrated by Simpson's rule over its two
 * stations and the lofted section between them; where the hull leaves the water inside an interval, over the part in the water.
 * A flat end (a box, a transom) counts as shell. An interval depends on nothing outside it, so every sum is continuous in the
 * plane: Newton needs that.
 *
 * With `ends: 'fine'` the intervals in which the hull leaves the water or its sheer goes under are integrated by Gauss's rule
 * instead: the waterplane's moments too are then right to 1e-4, for values that are shown. But these sums are not continuous to
 * the last digit.
 */
export function immersedSums(
  hull: Hull,
  plane: WaterPlane,
  ends: 'steady' | 'fine' = 'steady',
): Float64Array {
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
  for (let row = 0; row < rows.count - 1; row += 2) {
    if (ends === 'steady' || !isPartial(hull, plane, row)) weighInterval(hull, plane, row);
    else if (isWhollyWet(hull, plane, row)) addWholeInterval(hull, plane, row);
    else addPartialInterval(hull, plane, row);
  }
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

/** Whether the hull leaves the water inside an interval, or the sheer of a side crosses the water there. */
function isPartial(hull: Hull, plane: WaterPlane, row: number): boolean {
  const c0 = clearance(hull, plane, row);
  const cm = clearance(hull, plane, row + 1);
  const c1 = clearance(hull, plane, row + 2);
  const curve = c0 - 2 * cm + c1;
  if (c0 > 0 && cm > 0 && c1 > 0) return curve > 0;
  return curve < 0 || c0 > 0 || cm > 0 || c1 > 0 || sheerCrosses(hull, plane, row);
}

/** Heights nearer to the water than this, metres, need a closer look for a crossing between them. */
const CLOSE = 1e-6;

/** Whether a height over the water stays under −`CLOSE` along the parabola through its three readings in an interval. */
function staysUnder(c0: number, cm: number, c1: number): boolean {
  return Math.max(c0, cm, c1) + Math.abs(c0 - 2 * cm + c1) / 8 < -CLOSE;
}

/** Whether an interval is clearly in the water from end to end with the sheer of both sides above it: most humped ones are. */
function isWhollyWet(hull: Hull, plane: WaterPlane, row: number): boolean {
  const [c0, cm, c1] = [
    clearance(hull, plane, row),
    clearance(hull, plane, row + 1),
    clearance(hull, plane, row + 2),
  ];
  if (!staysUnder(c0, cm, c1)) return false;
  const under = (r: number) => -sheerOver(hull, plane, r);
  return staysUnder(under(row), under(row + 1), under(row + 2));
}

/** Height of the lower side's sheer over the water at a row. */
function sheerOver({ rows }: Hull, { draft, alongSlope, acrossSlope }: WaterPlane, row: number): number {
  const sheer = (row + 1) * rows.points - 1;
  return rows.z[sheer]! - draft + alongSlope * rows.x[row]! - Math.abs(acrossSlope) * rows.y[sheer]!;
}

/** Whether the sheer of either side goes under the water, or comes out of it, between the three rows of an interval. */
function sheerCrosses({ rows }: Hull, { draft, alongSlope, acrossSlope }: WaterPlane, row: number): boolean {
  let port = 0;
  let starboard = 0;
  for (let r = row; r < row + 3; r++) {
    const sheer = (r + 1) * rows.points - 1;
    const over = rows.z[sheer]! - draft + alongSlope * rows.x[r]!;
    const tilt = acrossSlope * rows.y[sheer]!;
    if (over + tilt > 0) port++;
    if (over - tilt > 0) starboard++;
  }
  return port % 3 !== 0 || starboard % 3 !== 0;
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
  const roots = rootsInside(curve, 4 * cm - 3 * c0 - c1, c0);
  for (let k = 0; k <= roots.length; k++) {
    const from = k === 0 ? 0 : roots[k - 1]!;
    const to = k === roots.length ? 1 : roots[k]!;
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

/** A part of the interval that begins at `row`, in shares of its length. */
interface Piece {
  /** Index of the interval's first row. */
  readonly row: number;
  /** 0 at the first row. */
  readonly from: number;
  /** 1 at the next row. */
  readonly to: number;
}

/** Adds the part of an interval that is in the water, by Simpson's rule with sections lofted on the way. */
function addPiece(hull: Hull, plane: WaterPlane, { row, from, to }: Piece): void {
  const { rows, scratch } = hull;
  const length = rows.x[row + 2]! - rows.x[row]!;
  const sixth = ((to - from) * length) / 6;
  const weigh = (share: number, weight: number) => {
    if (share === 0 || share === 1) {
      scratch.weights[row + 2 * share]! += weight;
      return;
    }
    loftSpare(hull, plane, { row, share, leaving: share === from || share === to });
    addRow(hull, rows.count, weight);
  };
  weigh(from, sixth);
  weigh((from + to) / 2, 4 * sixth);
  weigh(to, sixth);
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
  fillRow(hull, rows.count, { interval: row >> 1, share, under: Number.POSITIVE_INFINITY });
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

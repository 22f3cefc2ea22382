import type { SectionRows } from './hull.ts';
import { ROW, VALUES_PER_ROW } from './section-rows.ts';

/**
 * Water this little over the sheer, metres, still stands at it: a table of offsets that ends at the waterline, floated
 * there, has its waterplane and not a deck awash by rounding.
 */
export const SHEER_TOUCH = 1e-9;

/** A water line across one row: z = height − slope·y, metres and tangent. */
export interface WaterLine {
  /** Index of the row in `SectionRows`. */
  row: number;
  height: number;
  slope: number;
}

/**
 * Clips one row by a water line and writes what is under it to `values` (places: `ROW`). Exact for the polyline
 * section, closed by a flat deck at the sheer, whatever the number of crossings.
 *
 * Each half is clipped as an area between centreline and shell: keel and deck closings run at constant z and add
 * nothing to ∮ y dz, so only shell edges and the water line count. Mirrored input gives bit-equal sums.
 */
export function clipRow(rows: SectionRows, water: WaterLine, values: Float64Array): void {
  const at = water.row * VALUES_PER_ROW;
  values.fill(0, at, at + VALUES_PER_ROW);
  values[at + ROW.least] = Number.POSITIVE_INFINITY;
  values[at + ROW.most] = Number.NEGATIVE_INFINITY;
  if (water.slope === 0 && rows.rising[water.row] === 1) {
    clipUpright(rows, water, values);
    return;
  }
  clipHalf(rows, water, values, 1);
  if (water.slope !== 0) {
    clipHalf(rows, water, values, -1);
    return;
  }
  for (let k = at + ROW.area; k <= at + ROW.shell; k++) values[k]! *= 2;
  values[at + ROW.momentY] = 0;
  values[at + ROW.breadthY] = 0;
}

/**
 * Both halves of a row that rises all the way, under a level water line: one crossing, found by bisection. The same numbers as
 * `clipHalf` to the last digit, in a fraction of the steps.
 */
function clipUpright(rows: SectionRows, { row, height }: WaterLine, values: Float64Array): void {
  const { points, y, z, area, momentZ, shell } = rows;
  const first = row * points;
  const last = first + points - 1;
  const at = row * VALUES_PER_ROW;
  values[at + ROW.least] = z[first]!;
  values[at + ROW.most] = z[last]!;
  if (!(z[first]! < height)) return;
  const over = firstNotUnder(z, { from: first, to: last, height });
  const end = over - 1;
  let a = area[end]!;
  let mz = momentZ[end]!;
  let s = shell[end]!;
  let b = 0;
  if (over <= last) {
    const u = (height - z[end]!) / (z[over]! - z[end]!);
    const ye = y[end]!;
    const ze = z[end]!;
    b = ye + u * (y[over]! - ye);
    const zc = ze + u * (z[over]! - ze);
    const dz = zc - ze;
    a += ((ye + b) * dz) / 2;
    mz += ((2 * (ye * ze + b * zc) + ye * zc + b * ze) * dz) / 6;
    s += u * (shell[over]! - shell[end]!);
  } else if (height - z[last]! < SHEER_TOUCH) b = y[last]!;
  values[at + ROW.area] = 2 * a;
  values[at + ROW.momentZ] = 2 * mz;
  values[at + ROW.breadth] = 2 * b;
  values[at + ROW.breadthYy] = (2 * (b * b * b)) / 3;
  values[at + ROW.shell] = 2 * s;
}

/** The first place whose height is not under a limit, the places' heights rising; `to + 1` where all are under it. */
function firstNotUnder(
  z: Float64Array,
  { from, to, height }: { from: number; to: number; height: number },
): number {
  let low = from + 1;
  let high = to + 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (z[middle]! < height) low = middle + 1;
    else high = middle;
  }
  return low;
}

/**
 * Adds the half on one side (1 port, −1 starboard) to a row's values. It is long because hydrostatics spend most of their time
 * in this one loop along the shell: its sums stay in local numbers.
 */
function clipHalf(rows: SectionRows, water: WaterLine, values: Float64Array, side: 1 | -1): void {
  const { points, y, z, area, momentY, momentZ, shell } = rows;
  const { row, height } = water;
  const slope = water.slope * side;
  const first = row * points;
  const last = first + points - 1;
  let a = 0;
  let my = 0;
  let mz = 0;
  let s = 0;
  let b = 0;
  let bb = 0;
  let bbb = 0;
  let before = z[first]! + slope * y[first]!;
  let least = before;
  let most = before;
  let wet = before < height;
  let from = first;
  for (let j = first + 1; j <= last; j++) {
    const after = z[j]! + slope * y[j]!;
    if (after < least) least = after;
    if (after > most) most = after;
    // The shell crosses the water: close the edge at the crossing, and the wet run that ends there.
    if (after < height !== wet) {
      const u = (height - before) / (after - before);
      const yc = y[j - 1]! + u * (y[j]! - y[j - 1]!);
      const zc = z[j - 1]! + u * (z[j]! - z[j - 1]!);
      const end = wet ? j - 1 : j;
      const ye = y[end]!;
      const ze = z[end]!;
      const dz = wet ? zc - ze : ze - zc;
      a += ((ye + yc) * dz) / 2;
      my += ((ye * ye + ye * yc + yc * yc) * dz) / 6;
      mz += ((2 * (ye * ze + yc * zc) + ye * zc + yc * ze) * dz) / 6;
      s += (wet ? u : 1 - u) * (shell[j]! - shell[j - 1]!);
      if (wet) {
        a += area[end]! - area[from]!;
        my += momentY[end]! - momentY[from]!;
        mz += momentZ[end]! - momentZ[from]!;
        s += shell[end]! - shell[from]!;
      }
      const sign = wet ? 1 : -1;
      b += sign * yc;
      bb += sign * yc * yc;
      bbb += sign * yc * yc * yc;
      wet = !wet;
      from = j;
    }
    before = after;
  }
  if (wet) {
    a += area[last]! - area[from]!;
    my += momentY[last]! - momentY[from]!;
    mz += momentZ[last]! - momentZ[from]!;
    s += shell[last]! - shell[from]!;
  }
  if (wet && height - before < SHEER_TOUCH) {
    wet = false;
    b += y[last]!;
    bb += y[last]! ** 2;
    bbb += y[last]! ** 3;
  }
  // The deck from the sheer to the centreline, when the water crosses that too.
  if (slope !== 0 && z[last]! < height - SHEER_TOUCH !== wet) {
    const yc = Math.min(y[last]!, Math.max(0, (height - z[last]!) / slope));
    const sign = wet ? 1 : -1;
    b += sign * yc;
    bb += sign * yc * yc;
    bbb += sign * yc * yc * yc;
  }
  // The water line itself closes the area: ∮ y dz along z = height − slope·y from each crossing to the centreline.
  const at = row * VALUES_PER_ROW;
  values[at + ROW.area]! += a + (slope * bb) / 2;
  values[at + ROW.momentY]! += side * (my + (slope * bbb) / 6);
  values[at + ROW.momentZ]! += mz + slope * ((height * bb) / 2 - (slope * bbb) / 3);
  values[at + ROW.breadth]! += b;
  values[at + ROW.breadthY]! += (side * bb) / 2;
  values[at + ROW.breadthYy]! += bbb / 3;
  values[at + ROW.shell]! += s;
  values[at + ROW.least] = Math.min(values[at + ROW.least]!, least);
  values[at + ROW.most] = Math.max(values[at + ROW.most]!, most);
}

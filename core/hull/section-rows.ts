import type { HullScratch, LoftLines, SectionRows } from './hull.ts';
import { type Between, loftPoints, loftSlopes } from './loft.ts';

/** Numbers kept of each clipped row: see `ROW`. */
export const VALUES_PER_ROW = 9;

/** Places within a clipped row's values. Area, moments and waterline integrals of the whole section; metres. */
export const ROW = {
  area: 0,
  momentY: 1,
  momentZ: 2,
  /** Breadth of the waterline, ∫ dy; then ∫ y dy and ∫ y² dy across it. */
  breadth: 3,
  breadthY: 4,
  breadthYy: 5,
  shell: 6,
  /** Lowest and highest point of the section square to the heeled water plane, as a height at the centreline. */
  least: 7,
  most: 8,
} as const;

/** Results of one pass over a hull, as places within `HullScratch.sums`. Plain integrals; metres. */
export const SUM = {
  volume: 0,
  momentX: 1,
  momentY: 2,
  momentZ: 3,
  /** Waterplane as seen from above: ∫ dA, ∫ x, ∫ y, ∫ x², ∫ x·y, ∫ y². */
  plane: 4,
  planeX: 5,
  planeY: 6,
  planeXx: 7,
  planeXy: 8,
  planeYy: 9,
  shell: 10,
  /** x of the ends of the part under water. */
  wetAft: 11,
  wetFore: 12,
} as const;

/** One more than the last place above. */
const SUM_COUNT = 13;

/** Rows of a lofted hull: stations at even indices, the sections midway between them at odd ones, then the spare row. */
export function sectionRows(loft: LoftLines): { rows: SectionRows; scratch: HullScratch } {
  const { points } = loft;
  const count = 2 * loft.count - 1;
  const rows = { ...blankRows(count + 1, points), count };
  const scratch: HullScratch = {
    values: new Float64Array((count + 1) * VALUES_PER_ROW),
    weights: new Float64Array(count),
    sums: new Float64Array(SUM_COUNT),
    slopeY: new Float64Array(points),
    slopeZ: new Float64Array(points),
  };
  for (let row = 0; row < count; row++) {
    const interval = Math.min(loft.count - 2, row >> 1);
    const under = Number.POSITIVE_INFINITY;
    fillRow({ loft, rows, scratch }, row, { interval, share: (row - 2 * interval) / 2, under });
  }
  return { rows, scratch };
}

/** Rows to be lofted one by one, with their own arrays for clipped values; the rest is the hull's scratch. */
export function spareRows(
  { points }: LoftLines,
  count: number,
  scratch: HullScratch,
): { rows: SectionRows; scratch: HullScratch } {
  const values = new Float64Array(count * VALUES_PER_ROW);
  return { rows: blankRows(count, points), scratch: { ...scratch, values } };
}

/** Rows full of zeros, to be written. */
function blankRows(count: number, points: number): SectionRows {
  const size = count * points;
  return {
    count,
    points,
    x: new Float64Array(count),
    y: new Float64Array(size),
    z: new Float64Array(size),
    area: new Float64Array(size),
    momentY: new Float64Array(size),
    momentZ: new Float64Array(size),
    shell: new Float64Array(size),
    rising: new Uint8Array(count),
  };
}

/** A section to be lofted into a row. */
export interface RowPlace extends Between {
  /** Height of a level water plane, metres or infinite: above it the section needs no sums. */
  readonly under: number;
}

/**
 * Lofts the section at a share (0 to 1) of an interval between stations into a row and takes the running sums along it.
 * Used once for every row when a hull is made, and for the spare row while it is being cut.
 */
export function fillRow(
  { loft, rows, scratch }: { loft: LoftLines; rows: SectionRows; scratch: HullScratch },
  row: number,
  place: RowPlace,
): void {
  const { points, y, z, rising } = rows;
  const { slopeY, slopeZ } = scratch;
  const at = row * points;
  const x0 = loft.x[place.interval]!;
  rows.x[row] = x0 + place.share * (loft.x[place.interval + 1]! - x0);
  loftPoints(loft, place, { y, z, at, first: 0, end: points });
  rising[row] = risesAll(rows, at) ? 1 : 0;
  const end = rising[row] === 1 ? endUnder(rows, at, place.under) : points;
  loftSlopes(loft, place, { slopeY, slopeZ, first: 0, end });
  runningSums(rows, scratch, { at, end });
}

/** Whether no point of a section lies lower than the one before. */
function risesAll({ z, points }: SectionRows, at: number): boolean {
  for (let k = at + 1; k < at + points; k++) if (z[k]! < z[k - 1]!) return false;
  return true;
}

/** How many points of a rising section there are up to the first that is not under a height, that one counted. */
function endUnder({ z, points }: SectionRows, at: number, height: number): number {
  let end = 1;
  while (end < points && z[at + end - 1]! < height) end++;
  return end;
}

/** Exact integrals along each straight edge of a section's first points; `tilt` is the shell's slope along x across the edge. */
function runningSums(
  { y, z, area, momentY, momentZ, shell }: SectionRows,
  { slopeY, slopeZ }: HullScratch,
  { at, end }: { at: number; end: number },
): void {
  area[at] = 0;
  momentY[at] = 0;
  momentZ[at] = 0;
  shell[at] = 0;
  for (let j = 1; j < end; j++) {
    const k = at + j;
    const y0 = y[k - 1]!;
    const y1 = y[k]!;
    const z0 = z[k - 1]!;
    const z1 = z[k]!;
    const dz = z1 - z0;
    area[k] = area[k - 1]! + ((y0 + y1) * dz) / 2;
    momentY[k] = momentY[k - 1]! + ((y0 * y0 + y0 * y1 + y1 * y1) * dz) / 6;
    momentZ[k] = momentZ[k - 1]! + ((2 * (y0 * z0 + y1 * z1) + y0 * z1 + y1 * z0) * dz) / 6;
    const tilt = ((y1 - y0) * (slopeZ[j - 1]! + slopeZ[j]!) - dz * (slopeY[j - 1]! + slopeY[j]!)) / 2;
    shell[k] = shell[k - 1]! + Math.sqrt((y1 - y0) * (y1 - y0) + dz * dz + tilt * tilt);
  }
}

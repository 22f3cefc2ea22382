import type { Hull } from '../hull/hull.ts';
import type { Attitude } from './afloat.ts';
import { CLIPPED, CLIPPED_SIZE, clipSection } from './clip-section.ts';
import { stationWeights } from './integrate-stations.ts';

/** Raw integrals of the immersed hull and its waterplane, boat frame; SI. */
export interface ImmersedSums {
  readonly volume: number;
  readonly momentX: number;
  readonly momentY: number;
  readonly momentZ: number;
  /** Waterplane, projected on z = 0: ∫dA, ∫x, ∫y, ∫x², ∫y², ∫xy. */
  readonly area: number;
  readonly areaX: number;
  readonly areaY: number;
  readonly areaXX: number;
  readonly areaYY: number;
  readonly areaXY: number;
  readonly wettedSurface: number;
  readonly aftEnd: number;
  readonly foreEnd: number;
  readonly beam: number;
  readonly greatestSection: number;
}

/** A waterline end closer to a station than this share of the gap is taken to be at the station. */
const END_SHARE = 1e-6;

/**
 * Integrates the immersed hull: every section is clipped exactly by the water plane z = draft − x·tan(trim) −
 * y·tan(heel), then the sections are integrated along x from waterline end to waterline end; an end between two
 * stations is found where the keel line meets the water. Metres, boat frame.
 */
export function immersedSums(hull: Hull, { draft, trim, heel }: Attitude): ImmersedSums {
  const t = Math.tan(trim);
  const s = Math.tan(heel);
  const n = hull.stations.length;
  const xs = new Float64Array(n + 2);
  const rows: Float64Array[] = [];
  let count = 0;
  let depthBefore = 0;
  for (let i = 0; i < n; i++) {
    const { x, y, z } = hull.stations[i]!;
    const depth = draft - x * t - z[0]!;
    if (i > 0 && depth > 0 !== depthBefore > 0) {
      const before = hull.stations[i - 1]!.x;
      const share = depthBefore / (depthBefore - depth);
      if (share > END_SHARE && share < 1 - END_SHARE) {
        xs[count++] = before + share * (x - before);
        rows.push(new Float64Array(2 * CLIPPED_SIZE));
      }
    }
    depthBefore = depth;
    if (depth <= 0) continue;
    const row = new Float64Array(2 * CLIPPED_SIZE);
    clipSection(y, z, { level: draft - x * t, slope: s }, row.subarray(0, CLIPPED_SIZE));
    if (s === 0) row.copyWithin(CLIPPED_SIZE, 0, CLIPPED_SIZE);
    else clipSection(y, z, { level: draft - x * t, slope: -s }, row.subarray(CLIPPED_SIZE));
    xs[count++] = x;
    rows.push(row);
  }
  return summed(xs, rows, count);
}

function summed(xs: Float64Array, rows: readonly Float64Array[], count: number): ImmersedSums {
  const weights = new Float64Array(count);
  stationWeights(xs, count, weights);
  const sums = new Float64Array(12);
  let beam = 0;
  let greatestSection = 0;
  for (let i = 0; i < count; i++) {
    const row = rows[i]!;
    const w = weights[i]!;
    const x = xs[i]!;
    const both = (k: number) => row[k]! + row[CLIPPED_SIZE + k]!;
    const apart = (k: number) => row[k]! - row[CLIPPED_SIZE + k]!;
    const area = both(CLIPPED.area);
    const width = both(CLIPPED.width);
    const values = [
      area,
      x * area,
      apart(CLIPPED.momentY),
      both(CLIPPED.momentZ),
      width,
      x * width,
      apart(CLIPPED.widthY),
      x * x * width,
      both(CLIPPED.widthYY),
      x * apart(CLIPPED.widthY),
      both(CLIPPED.girth),
    ];
    for (let k = 0; k < values.length; k++) sums[k]! += w * values[k]!;
    beam = Math.max(beam, width);
    greatestSection = Math.max(greatestSection, area);
  }
  return {
    volume: sums[0]!,
    momentX: sums[1]!,
    momentY: sums[2]!,
    momentZ: sums[3]!,
    area: sums[4]!,
    areaX: sums[5]!,
    areaY: sums[6]!,
    areaXX: sums[7]!,
    areaYY: sums[8]!,
    areaXY: sums[9]!,
    wettedSurface: sums[10]!,
    aftEnd: count ? xs[0]! : 0,
    foreEnd: count ? xs[count - 1]! : 0,
    beam,
    greatestSection,
  };
}

import { addRow } from './add-row.ts';
import { clipRow } from './clip-row.ts';
import { GAUSS_PLACES, GAUSS_WEIGHTS } from './gauss-rule.ts';
import type { Hull, LoftLines } from './hull.ts';
import { fillRow, SUM, spareRows } from './section-rows.ts';
import type { WaterPlane } from './water-plane.ts';

/** The parts of a hull that are read and written here. */
type Sampled = Pick<Hull, 'rows' | 'scratch'>;

/** Samples of intervals from earlier calls: they depend on the hull alone, not on the water. */
const known = new WeakMap<LoftLines, Map<number, Sampled>>();

/**
 * Integrates by Gauss's rule an interval between stations that is in the water from end to end with the sheer over it. The
 * sampled sections are lofted once for each hull: a drag of a fitting trims the boat through the same ones. `row` is the
 * interval's first. Adds to `hull.scratch.sums`; metres.
 */
export function addWholeInterval(hull: Hull, plane: WaterPlane, row: number): void {
  const samples = samplesOf(hull, row >> 1);
  const { rows, scratch } = samples;
  const { sums } = hull.scratch;
  const x0 = hull.rows.x[row]!;
  const length = hull.rows.x[row + 2]! - x0;
  const water = { row: 0, height: 0, slope: plane.acrossSlope };
  for (let k = 0; k < GAUSS_PLACES.length; k++) {
    water.row = k;
    water.height = plane.draft - plane.alongSlope * (x0 + GAUSS_PLACES[k]! * length);
    clipRow(rows, water, scratch.values);
    addRow(samples, k, GAUSS_WEIGHTS[k]! * length);
  }
  sums[SUM.wetAft] = Math.min(sums[SUM.wetAft]!, x0);
  sums[SUM.wetFore] = Math.max(sums[SUM.wetFore]!, x0 + length);
}

/** The sections of an interval at the rule's places, with their own arrays for clipped values and the hull's own sums. */
function samplesOf({ loft, scratch }: Hull, interval: number): Sampled {
  const ofHull = known.get(loft) ?? new Map<number, Sampled>();
  known.set(loft, ofHull);
  const before = ofHull.get(interval);
  if (before) return before;
  const samples = spareRows(loft, GAUSS_PLACES.length, scratch);
  GAUSS_PLACES.forEach((share, k) => {
    fillRow({ loft, ...samples }, k, { interval, share, under: Number.POSITIVE_INFINITY });
  });
  ofHull.set(interval, samples);
  return samples;
}

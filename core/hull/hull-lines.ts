import { along, type BoatPoint } from '../frame/vec3.ts';
import { fineRows, type LineRows } from './fine-rows.ts';
import type { Hull } from './hull.ts';
import { monotoneCubic } from './monotone-cubic.ts';
import { breadthAtHeight } from './section-at.ts';

/** The lines of a hull, port side, metres, boat frame: what a lines plan shows in its three views. */
export interface HullLines {
  /** The stations, aftmost first, keel to sheer, as they are computed with. */
  readonly sections: readonly { readonly x: number; readonly points: readonly BoatPoint[] }[];
  /** Cuts at one height, in runs from aft forward: a high one may run out of a sagging sheer and in again. */
  readonly waterlines: readonly { readonly z: number; readonly runs: readonly BoatPoint[][] }[];
  /** Cuts at one half-breadth, in runs from aft forward. */
  readonly buttocks: readonly { readonly y: number; readonly runs: readonly BoatPoint[][] }[];
  /** From aft forward. */
  readonly sheer: readonly BoatPoint[];
  /** From aft forward. */
  readonly keel: readonly BoatPoint[];
}

/** Rows to an interval between two stations: a line's corners are then finer than its stroke. */
const PER_INTERVAL = 8;
/** The same for buttocks, which rise steeply where they run out over the sheer. */
const PER_INTERVAL_STEEP = 24;
/** A point must lie farther out than the one before by this, metres, to count as rising outward. */
const LEAST_RISE = 1e-6;
/** Waterlines and buttocks drawn unless others are asked for. */
const WATERLINES = 6;
/** Fewer than waterlines: half a beam has less room than a depth. */
const BUTTOCKS = 3;

/**
 * The lines of a hull for drawing. `heights` of waterlines and half-breadths of `buttocks` in metres; by default six
 * heights and three half-breadths, spaced evenly. A line has points at every station and seven or more between two, and ends
 * where it runs out of the hull; one that never meets the hull has no runs.
 */
export function hullLines(
  hull: Hull,
  cuts: { readonly heights?: readonly number[]; readonly halfBreadths?: readonly number[] } = {},
): HullLines {
  const { lowestZ, highestZ } = hull;
  const rows = fineRows(hull, PER_INTERVAL);
  const finer = fineRows(hull, PER_INTERVAL_STEEP);
  const broadest = rows.y.reduce((most, y) => Math.max(most, y), 0);
  const heights = cuts.heights ?? evenly(lowestZ, highestZ, WATERLINES);
  const breadths = cuts.halfBreadths ?? evenly(0, broadest, BUTTOCKS);
  const all = Array.from({ length: rows.count }, (_, row) => row);
  return {
    sections: hull.stations.map(({ x }, i) => ({ x, points: sectionPoints(hull.rows, 2 * i) })),
    waterlines: heights.map((z) => ({ z, runs: waterline(rows, z) })),
    buttocks: breadths.map((y) => ({ y, runs: buttock(finer, y) })),
    sheer: all.map((row) => rowPoint(rows, row, rows.points - 1)),
    keel: all.map((row) => rowPoint(rows, row, 0)),
  };
}

/** Places that divide a span into equal parts, its ends left out. */
function evenly(low: number, high: number, count: number): number[] {
  return Array.from({ length: count }, (_, i) => low + ((high - low) * (i + 1)) / (count + 1));
}

/** A row's points, keel to sheer. */
function sectionPoints(rows: LineRows, row: number): BoatPoint[] {
  return Array.from({ length: rows.points }, (_, j) => rowPoint(rows, row, j));
}

/** A point of the lofted sections, port side. */
function rowPoint(rows: LineRows, row: number, j: number): BoatPoint {
  const at = row * rows.points + j;
  return { x: rows.x[row]!, y: rows.y[at]!, z: rows.z[at]! };
}

/** A cut at one row: how far inside the hull it runs there (below 0 outside), and its point. */
interface Cut {
  /** Metres. */
  readonly inside: number;
  /** Boat frame, metres. */
  readonly point: BoatPoint;
}

/** Cut at a height; where it leaves the hull it ends on the centreline at the keel, or at the sheer. */
function waterline(rows: LineRows, z: number): BoatPoint[][] {
  const keelAndSheer = (row: number) =>
    [rowPoint(rows, row, 0), rowPoint(rows, row, rows.points - 1)] as const;
  const cutAt = (row: number): Cut => {
    const [keel, sheer] = keelAndSheer(row);
    const y = breadthAtHeight(sectionOf(rows, row), z) ?? 0;
    return { inside: Math.min(z - keel.z, sheer.z - z), point: { x: keel.x, y, z } };
  };
  return traced(rows, cutAt, (inside, outside, share) => {
    const end = along(keelAndSheer(inside)[1], keelAndSheer(outside)[1], share);
    return { x: end.x, y: z > keelAndSheer(outside)[1].z ? end.y : 0, z };
  });
}

/** Cut at a half-breadth; it leaves the hull over the sheer. */
function buttock(rows: LineRows, y: number): BoatPoint[][] {
  const sheer = (row: number) => rowPoint(rows, row, rows.points - 1);
  return traced(
    rows,
    (row) => buttockCut(rows, row, y),
    (inside, outside, share) => ({ ...along(sheer(inside), sheer(outside), share), y }),
  );
}

/**
 * Where the shell, followed up from the keel, first comes to a half-breadth. Between a section's points it runs on a fair curve: on
 * chords the cut would have a corner wherever it passes from one pair of points to the next.
 */
function buttockCut(rows: LineRows, row: number, y: number): Cut {
  const rising: BoatPoint[] = [rowPoint(rows, row, 0)];
  for (let j = 1; j < rows.points; j++) {
    const here = rowPoint(rows, row, j);
    if (here.y > rising.at(-1)!.y + LEAST_RISE) rising.push(here);
  }
  const last = rising.at(-1)!;
  if (last.y < y || rising.length < 2) return { inside: last.y - y, point: { ...last, y } };
  const height = monotoneCubic(
    rising.map((point) => point.y),
    rising.map((point) => point.z),
  );
  return { inside: last.y - y, point: { x: last.x, y, z: height(Math.max(y, rising[0]!.y)) } };
}

/** One row's half-section, without copying it. */
function sectionOf(rows: LineRows, row: number): { y: Float64Array; z: Float64Array } {
  const [from, to] = [row * rows.points, (row + 1) * rows.points];
  return { y: rows.y.subarray(from, to), z: rows.z.subarray(from, to) };
}

/** Follows a cut from aft forward and closes it where it runs out of the hull between two rows. */
function traced(
  rows: LineRows,
  cutAt: (row: number) => Cut,
  endBetween: (inside: number, outside: number, share: number) => BoatPoint,
): BoatPoint[][] {
  const runs: BoatPoint[][] = [];
  let run: BoatPoint[] = [];
  let before = cutAt(0);
  if (before.inside >= 0) run.push(before.point);
  for (let row = 1; row < rows.count; row++) {
    const here = cutAt(row);
    if (here.inside >= 0 !== before.inside >= 0) {
      const [inside, outside] = here.inside >= 0 ? [row, row - 1] : [row - 1, row];
      const depth = Math.max(here.inside, before.inside);
      run.push(endBetween(inside, outside, depth / Math.abs(here.inside - before.inside)));
    }
    if (here.inside >= 0) run.push(here.point);
    else if (run.length > 0) {
      runs.push(run);
      run = [];
    }
    before = here;
  }
  return run.length > 0 ? [...runs, run] : runs;
}

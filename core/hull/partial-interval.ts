import { addRow } from './add-row.ts';
import { clipRow } from './clip-row.ts';
import { GAUSS_PLACES, GAUSS_WEIGHTS } from './gauss-rule.ts';
import type { Hull } from './hull.ts';
import { loftPoints } from './loft.ts';
import { rootsInside } from './roots-inside.ts';
import { fillRow, SUM } from './section-rows.ts';
import type { WaterPlane } from './water-plane.ts';

/** A crossing is found to this share of an interval, in at most so many steps. */
const CROSSING = 1e-9;
/** Halving alone would reach 1e-9 in 30 steps. */
const MOST_STEPS = 30;

/** And to a height of this share of it, metres. */
const CROSSING_HEIGHT = 0.1;

/** The line whose height over the water is wanted: the lowest points, or the sheer on one side. */
type Of = 'lowest' | 'port' | 'starboard';

/** One interval while it is cut; its mutable fields are overwritten on the way. */
interface Cut {
  readonly hull: Hull;
  readonly plane: WaterPlane;
  /** Index of its first row. */
  readonly row: number;
  /** x of the first row, metres. */
  readonly x0: number;
  /** Distance to the next row, metres. */
  readonly length: number;
  /** A place on it, where a section is being lofted. */
  readonly place: { interval: number; share: number; under: number };
  /** Two places with a crossing between them, and the heights there. */
  readonly low: { at: number; height: number };
  /** As `low`, on the other side of the crossing. */
  readonly high: { at: number; height: number };
}

/**
 * Integrates an interval between stations that the waterline does not run through from end to end: the hull leaves the water
 * inside it, or the sheer goes under there. The crossings are found on the lofted surface itself; each part in the water is
 * integrated by Gauss's rule, its places crowded toward the crossings, where breadths grow like a square root. `row` is the
 * interval's first. Adds to `hull.scratch.sums`; metres.
 */
export function addPartialInterval(hull: Hull, plane: WaterPlane, row: number): void {
  const { x } = hull.rows;
  const place = { interval: row >> 1, share: 0, under: 0 };
  const [low, high] = [
    { at: 0, height: 0 },
    { at: 0, height: 0 },
  ];
  const cut = { hull, plane, row, x0: x[row]!, length: x[row + 2]! - x[row]!, place, low, high };
  const ends = [0, 1];
  addCrossings(ends, cut, 'lowest');
  addCrossings(ends, cut, 'port');
  if (plane.acrossSlope !== 0) addCrossings(ends, cut, 'starboard');
  for (let k = 1; k < ends.length; k++) {
    const from = ends[k - 1]!;
    const to = ends[k]!;
    if (to - from > CROSSING && heightAt(cut, 'lowest', (from + to) / 2) < 0) addPiece(cut, from, to);
  }
}

/** Height over the water at a share of the interval, measured along z. The sheer alone is lofted where it alone is asked for. */
function heightAt({ hull, plane, x0, length, place }: Cut, of: Of, share: number): number {
  const { loft, rows } = hull;
  const { y, z, points } = rows;
  const at = rows.count * points;
  const last = at + points - 1;
  place.share = share;
  loftPoints(loft, place, { y, z, at, first: of === 'lowest' ? 0 : points - 1, end: points });
  const water = plane.draft - plane.alongSlope * (x0 + share * length);
  if (of !== 'lowest') return -water + z[last]! + (of === 'port' ? 1 : -1) * plane.acrossSlope * y[last]!;
  const steep = Math.abs(plane.acrossSlope);
  let least = Number.POSITIVE_INFINITY;
  for (let k = at; k <= last; k++) least = Math.min(least, z[k]! - steep * y[k]!);
  return least - water;
}

/** Adds, in order, the shares of the interval strictly inside it where a height over the water changes sign. */
function addCrossings(ends: number[], cut: Cut, of: Of): void {
  const { low, high } = cut;
  const c0 = heightAt(cut, of, 0);
  const cm = heightAt(cut, of, 0.5);
  const c1 = heightAt(cut, of, 1);
  const found = ends.length;
  if (c0 > 0 !== cm > 0) {
    low.at = 0;
    low.height = c0;
    high.at = 0.5;
    high.height = cm;
    putInOrder(ends, crossing(cut, of));
  }
  if (cm > 0 !== c1 > 0) {
    low.at = 0.5;
    low.height = cm;
    high.at = 1;
    high.height = c1;
    putInOrder(ends, crossing(cut, of));
  }
  if (ends.length > found || c0 > 0 !== c1 > 0) return;
  // Ends and middle on one side: the parabola through them may still dip across between two of them.
  for (const root of rootsInside(2 * (c0 - 2 * cm + c1), 4 * cm - 3 * c0 - c1, c0)) putInOrder(ends, root);
}

/** Puts a value where it belongs among rising ones. */
function putInOrder(rising: number[], value: number): void {
  let at = rising.length;
  while (at > 0 && rising[at - 1]! > value) at--;
  rising.splice(at, 0, value);
}

/**
 * The place between `low` and `high`, of opposite sign, where a height is 0: false position, with bisection every third step.
 */
function crossing(cut: Cut, of: Of): number {
  let { at: a, height: ca } = cut.low;
  let { at: b, height: cb } = cut.high;
  for (let step = 0; step < MOST_STEPS && b - a > CROSSING; step++) {
    const drags = step % 3 === 2;
    const share = drags ? (a + b) / 2 : a + ((b - a) * ca) / (ca - cb);
    const c = heightAt(cut, of, share);
    if (c === 0) return share;
    if (c > 0 === ca > 0) {
      a = share;
      ca = c;
    } else {
      b = share;
      cb = c;
    }
    if (!drags && Math.abs(c) < CROSSING * CROSSING_HEIGHT) return share;
  }
  return (a + b) / 2;
}

/** Adds one part. With u = from + (to − from)·s², or the same at the other end or both, a square root becomes a polynomial. */
function addPiece({ hull, plane, x0, length, place }: Cut, from: number, to: number): void {
  const { rows, scratch } = hull;
  const ends = { aft: from > 0, fore: to < 1 };
  const water = { row: rows.count, height: 0, slope: plane.acrossSlope };
  for (let k = 0; k < GAUSS_PLACES.length; k++) {
    const s = GAUSS_PLACES[k]!;
    place.share = from + (to - from) * drawnTogether(s, ends);
    water.height = plane.draft - plane.alongSlope * (x0 + place.share * length);
    place.under = plane.acrossSlope === 0 ? water.height : Number.POSITIVE_INFINITY;
    fillRow(hull, rows.count, place);
    clipRow(rows, water, scratch.values);
    addRow(hull, rows.count, GAUSS_WEIGHTS[k]! * stretchAt(s, ends) * (to - from) * length);
  }
  scratch.sums[SUM.wetAft] = Math.min(scratch.sums[SUM.wetAft]!, x0 + from * length);
  scratch.sums[SUM.wetFore] = Math.max(scratch.sums[SUM.wetFore]!, x0 + to * length);
}

/** Which ends of a part are crossings. */
interface Crossings {
  readonly aft: boolean;
  readonly fore: boolean;
}

/** A place s from 0 to 1, moved toward the ends that are crossings. */
function drawnTogether(s: number, { aft, fore }: Crossings): number {
  if (aft && fore) return s * s * (3 - 2 * s);
  if (aft) return s * s;
  return fore ? 1 - (1 - s) * (1 - s) : s;
}

/** The derivative of that move. */
function stretchAt(s: number, { aft, fore }: Crossings): number {
  if (aft && fore) return 6 * s * (1 - s);
  if (aft) return 2 * s;
  return fore ? 2 * (1 - s) : 1;
}

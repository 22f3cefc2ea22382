import { addRow } from './add-row.ts';
import { clipRow } from './clip-row.ts';
import type { Hull } from './hull.ts';
import { loftSection } from './loft.ts';
import { rootsInside } from './roots-inside.ts';
import { fillRow, SUM } from './section-rows.ts';
import type { WaterPlane } from './water-plane.ts';

/** Gauss–Legendre's rule of five points on 0 to 1 (exact to the ninth power): places and weights. */
const PLACES = [0.046910077030668, 0.230765344947158, 0.5, 0.769234655052842, 0.953089922969332] as const;
const WEIGHTS = [
  0.118463442528095, 0.239314335249683, 0.284444444444444, 0.239314335249683, 0.118463442528095,
] as const;

/** Panels that the rule is applied to, one after another, in each part of an interval: corners of the sections pass by. */
const PANELS = 2;

/** A crossing is found to this share of an interval, in at most so many steps. */
const CROSSING = 1e-9;
const MOST_STEPS = 30;

/** And to a height of this share of it, metres. */
const CROSSING_HEIGHT = 0.1;

/** A height over the water that changes along the interval: of the lowest point, or of the sheer on one side. */
type Clearance = (share: number) => number;

/**
 * Integrates an interval between stations that the waterline does not run through from end to end: the hull leaves the
 * water inside it, or the sheer goes under there. The crossings are found on the lofted surface itself; each part in the water
 * is integrated by Gauss's rule, its places drawn together toward the crossings, where breadths grow like a root.
 * `row` is the interval's first. Adds to `hull.scratch.sums`; metres.
 */
export function addPartialInterval(hull: Hull, plane: WaterPlane, row: number): void {
  const [lowest, ...sheers] = clearances(hull, plane, row);
  const ends = [0, 1];
  for (const clearance of [lowest!, ...sheers]) ends.push(...crossings(clearance));
  ends.sort((a, b) => a - b);
  for (let k = 1; k < ends.length; k++) {
    const [from, to] = [ends[k - 1]!, ends[k]!];
    if (to - from > CROSSING && lowest!((from + to) / 2) < 0) addPiece(hull, plane, { row, from, to });
  }
}

/** Heights over the water, measured along z, of the lowest point and of both sides' sheer. */
function clearances(hull: Hull, { draft, alongSlope, acrossSlope }: WaterPlane, row: number): Clearance[] {
  const { rows, loft, scratch } = hull;
  const { y, z, points } = rows;
  const at = rows.count * points;
  const [x0, length] = [rows.x[row]!, rows.x[row + 2]! - rows.x[row]!];
  const steep = Math.abs(acrossSlope);
  const into = { y, z, slopeY: scratch.slopeY, slopeZ: scratch.slopeZ, at };
  const interval = row >> 1;
  const water = (share: number) => {
    loftSection(loft, { interval, share }, into);
    return draft - alongSlope * (x0 + share * length);
  };
  const last = at + points - 1;
  const sheer = (side: number) => (share: number) => -water(share) + z[last]! + side * acrossSlope * y[last]!;
  const lowest = (share: number) => {
    const height = water(share);
    let least = Number.POSITIVE_INFINITY;
    for (let k = at; k <= last; k++) least = Math.min(least, z[k]! - steep * y[k]!);
    return least - height;
  };
  return acrossSlope === 0 ? [lowest, sheer(1)] : [lowest, sheer(1), sheer(-1)];
}

/** Shares of the interval, strictly inside it, where a clearance changes sign. */
function crossings(of: Clearance): number[] {
  const c0 = of(0);
  const cm = of(0.5);
  const c1 = of(1);
  const found: number[] = [];
  if (c0 > 0 !== cm > 0) found.push(crossing(of, { at: 0, of: c0 }, { at: 0.5, of: cm }));
  if (cm > 0 !== c1 > 0) found.push(crossing(of, { at: 0.5, of: cm }, { at: 1, of: c1 }));
  if (found.length > 0 || c0 > 0 !== c1 > 0) return found;
  // Ends and middle on one side: the parabola through them may still dip across between two of them.
  return rootsInside(2 * (c0 - 2 * cm + c1), 4 * cm - 3 * c0 - c1, c0);
}

/** A clearance at a share of the interval. */
interface Reading {
  readonly at: number;
  readonly of: number;
}

/** The place between two points of opposite sign where a clearance is 0: false position, halving where it drags. */
function crossing(of: Clearance, low: Reading, high: Reading): number {
  let a = low.at;
  let ca = low.of;
  let b = high.at;
  let cb = high.of;
  for (let step = 0; step < MOST_STEPS && b - a > CROSSING; step++) {
    const drags = step % 3 === 2;
    const share = drags ? (a + b) / 2 : a + ((b - a) * ca) / (ca - cb);
    const c = of(share);
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

/** A part of the interval that begins at `row`, in shares of its length. */
interface Piece {
  readonly row: number;
  readonly from: number;
  readonly to: number;
}

/** Adds one part: with u = from + (to − from)·s², or its like at the other end or both, a root becomes a polynomial. */
function addPiece(hull: Hull, plane: WaterPlane, { row, from, to }: Piece): void {
  const { rows, scratch } = hull;
  const x0 = rows.x[row]!;
  const length = rows.x[row + 2]! - x0;
  const ends = { aft: from > 0, fore: to < 1 };
  const water = { row: rows.count, height: 0, slope: plane.acrossSlope };
  for (let panel = 0; panel < PANELS; panel++) {
    for (let k = 0; k < PLACES.length; k++) {
      const s = (panel + PLACES[k]!) / PANELS;
      fillRow(hull, rows.count, { interval: row >> 1, share: from + (to - from) * drawnTogether(s, ends) });
      water.height = plane.draft - plane.alongSlope * rows.x[rows.count]!;
      clipRow(rows, water, scratch.values);
      addRow(hull, rows.count, (WEIGHTS[k]! / PANELS) * stretchAt(s, ends) * (to - from) * length);
    }
  }
  scratch.sums[SUM.wetAft] = Math.min(scratch.sums[SUM.wetAft]!, x0 + from * length);
  scratch.sums[SUM.wetFore] = Math.max(scratch.sums[SUM.wetFore]!, x0 + to * length);
}

/** Which ends of a part are crossings. */
interface Crossings {
  readonly aft: boolean;
  readonly fore: boolean;
}

/** A place s from 0 to 1 moved toward the ends that are crossings. */
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

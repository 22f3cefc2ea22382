import { SIGMAS_95 } from '../evaluation/probability.ts';
import { norm, subtract } from '../frame/vec3.ts';
import { millimetres } from '../text/sheet-length.ts';
import type { SeatWork } from './seat-work.ts';
import type { MillimetrePoint } from './template-drawing.ts';

/**
 * Breadth of the bent knee across its condyles over its depth from front to back. Estimate: bone is about 9.9 cm across in men
 * and 9.0 in women (from memory) and the kneeling knee spreads; the survey used here has the depth but not the breadth.
 */
const BREADTH_OVER_DEPTH = 0.95;

/**
 * Standard deviation of that estimate, millimetres (this project's): about 5 for the spread of bone breadths among people of
 * one stature (from memory), about 5 for how far a knee spreads under load.
 */
const ESTIMATE_SD_MM = 7;
/** What callipers over a bent knee may be out by, millimetres (*common practice, no source*). */
const MEASURED_DOUBT_MM = 3;

/** The recess is wider than the knee by this on each side, millimetres (our estimate for "shaped to the knee"). */
const EASE_MM = 4;

/** Half-breadth and front-to-joint depth of the leg at the ankle as shares of the knee's (estimate, drawing of a shin). */
const ANKLE_BREADTH_SHARE = 0.62;
/** As the share above, for the depth. */
const ANKLE_DEPTH_SHARE = 0.7;

/** Points along each end of an outline, closer where it is rounder: a round of 60 mm radius is true to 0.05 mm. */
const POINTS = 40;

/**
 * The recess: the hollow that a knee and a shin leave when they are lowered into the pad until the knee bears at the
 * bearing point. All in millimetres, in the block's own frame: x along the recess's axis, forward positive, from the
 * bearing point; level up from the bottom of the finished recess.
 */
export interface KneeRecess {
  /** Knee joint above the bottom, and half the breadth of knee with its ease. */
  readonly kneeDepth: number;
  /** Half the breadth of the knee, its ease counted in. */
  readonly halfBreadth: number;
  /** From knee joint to ankle joint along the axis, and how much the shin rises on the way (negative: falls). */
  readonly shankRun: number;
  /** Negative where the shin falls toward the ankle. */
  readonly shankRise: number;
  /** Depth of the finished recess, bottom to the top of the block. */
  readonly depth: number;
  /** Ends of the block on the axis. */
  readonly foreEnd: number;
  /** Negative: behind the bearing point. */
  readonly aftEnd: number;
}

/** The knee's breadth across its condyles, with half of the band that holds 95 of 100 people. */
export interface KneeBreadth {
  /** The knee with its ease. */
  readonly breadthMm: number;
  /** One standard deviation. */
  readonly doubtMm: number;
  /** False where it is estimated from the body. */
  readonly measured: boolean;
}

/** Knee of a seat: as the builder measured it, else estimated from the body. A man of 1.8 m and 80 kg: about 107 ± 14 mm. */
export function kneeBreadth({ body, options }: SeatWork): KneeBreadth {
  if (options.kneeBreadthM !== null) {
    return { breadthMm: millimetres(options.kneeBreadthM), doubtMm: MEASURED_DOUBT_MM, measured: true };
  }
  const breadthMm = 2 * BREADTH_OVER_DEPTH * millimetres(body.lengths.kneeRadius.value);
  return { breadthMm, doubtMm: SIGMAS_95 * ESTIMATE_SD_MM, measured: false };
}

/** The recess of a seat's pad, from the knee's size and where the shank goes in the ready stance. */
export function kneeRecess(work: SeatWork, ends: { foreEnd: number; aftEnd: number }): KneeRecess {
  const { points } = work.solved.stances.ready;
  const shank = subtract(points.kneelingAnkle, points.kneelingKnee);
  return {
    kneeDepth: millimetres(work.body.lengths.kneeRadius.value),
    halfBreadth: kneeBreadth(work).breadthMm / 2 + EASE_MM,
    shankRun: millimetres(Math.hypot(shank.x, shank.y)) || millimetres(norm(shank)) || 1,
    shankRise: millimetres(shank.z),
    depth: millimetres(work.seat.kneePad.recessDepthM),
    ...ends,
  };
}

/** Cross-section of knee or shin at x of the recess's axis: semi-axes across and down, and height of its middle over the bottom, mm. */
export function legAt({ kneeDepth, halfBreadth, shankRun, shankRise }: KneeRecess, x: number) {
  if (x >= 0) return { across: halfBreadth, down: kneeDepth, middle: kneeDepth };
  const share = Math.min(1, -x / shankRun);
  return {
    across: halfBreadth * (1 + (ANKLE_BREADTH_SHARE - 1) * share),
    down: kneeDepth * (1 + (ANKLE_DEPTH_SHARE - 1) * share),
    middle: kneeDepth + shankRise * share,
  };
}

/**
 * Half-width of the hollow at x and a level, millimetres; null where the hollow does not reach down to that level.
 * `foam` widens it all round by the foam's thickness, which gives the wood's surface. At x = 0 and a level z under the
 * joint it is halfBreadth × √(1 − ((kneeDepth − z)/kneeDepth)²).
 */
export function halfWidthAt(
  recess: KneeRecess,
  x: number,
  { level, foam }: { level: number; foam: number },
): number | null {
  const leg = legAt(recess, x);
  const across = leg.across + foam;
  const down = leg.down + foam;
  const below = Math.max(0, leg.middle - level) / down;
  const ahead = x > 0 ? x / (recess.kneeDepth + foam) : 0;
  const rest = 1 - below ** 2 - ahead ** 2;
  return rest < 0 ? null : across * Math.sqrt(rest);
}

/** Level of the hollow's bottom under the axis at x, millimetres; null ahead of where it comes up out of the wood. */
export function floorLevel(recess: KneeRecess, x: number, foam: number): number | null {
  const leg = legAt(recess, x);
  const rest = 1 - (x > 0 ? x / (recess.kneeDepth + foam) : 0) ** 2;
  return rest < 0 ? null : leg.middle - (leg.down + foam) * Math.sqrt(rest);
}

/** x of the front end of the hollow at a level, millimetres: where its half-width comes to nothing. */
export function foreReach(recess: KneeRecess, { level, foam }: { level: number; foam: number }): number {
  const down = recess.kneeDepth + foam;
  const below = Math.max(0, recess.kneeDepth - level) / down;
  return below >= 1 ? 0 : down * Math.sqrt(1 - below ** 2);
}

/** x of the aft end of the hollow at a level: where the shin has come up to it, or the block's aft end (then it is open). */
export function aftReach(
  recess: KneeRecess,
  { level, foam }: { level: number; foam: number },
): { x: number; open: boolean } {
  const over = (x: number) => (floorLevel(recess, x, foam) ?? Infinity) - level;
  if (over(recess.aftEnd) <= 0) return { x: recess.aftEnd, open: true };
  if (over(0) > 0) return { x: 0, open: false };
  let [inside, outside] = [0, recess.aftEnd];
  for (let k = 0; k < 60; k++) {
    const middle = (inside + outside) / 2;
    if (over(middle) <= 0) inside = middle;
    else outside = middle;
  }
  return { x: inside, open: false };
}

/**
 * Outline of the hollow at a level, millimetres in the block's frame (x forward, y to port), from the aft end round the
 * front to the aft end again; `open` where it runs out through the block's aft end. Null where there is no hollow.
 */
export function recessOutline(
  recess: KneeRecess,
  at: { level: number; foam: number },
): { points: readonly MillimetrePoint[]; open: boolean } | null {
  const fore = Math.min(foreReach(recess, at), recess.foreEnd);
  const aft = aftReach(recess, at);
  if (fore - aft.x < 1) return null;
  const quarter = (k: number) => (Math.PI / 2) * (k / POINTS);
  const xs = Array.from({ length: 2 * POINTS + 1 }, (_, k) =>
    k < POINTS ? aft.x * Math.cos(quarter(k)) : fore * Math.sin(quarter(k - POINTS)),
  );
  const half = xs.map((x): MillimetrePoint => [x, halfWidthAt(recess, x, at) ?? 0]);
  const back = half.map(([x, y]): MillimetrePoint => [x, -y]).reverse();
  // A closed end comes to a point, which must not stand there twice.
  const points = aft.open ? [...half, ...back.slice(1)] : [...half, ...back.slice(1, -1)];
  return { points, open: aft.open };
}

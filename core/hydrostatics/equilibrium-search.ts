import type { Hull } from '../hull/hull.ts';
import { immersedSums } from '../hull/immersed-sums.ts';
import { SUM } from '../hull/section-rows.ts';
import type { WaterPlane } from '../hull/water-plane.ts';
import type { PointMass } from './afloat.ts';

/** The search ends with a step smaller than this, metres of draft: far below what anything else here is known to. */
export const DRAFT_TOLERANCE = 1e-9;

/** And smaller than this, radians of trim: the same at the ends of a boat. */
export const TRIM_TOLERANCE = 1e-10;

/** Far more steps than boats need (three to five, 13 at worst); a search that takes them all has found nothing. */
const MOST_STEPS = 40;

/** Corners of polygonal sections make the steps shrink more slowly, by at most about this factor (found by trial). */
const CORNERS = 1000;

/** One step may sink the boat by this share of its depth, and turn it by this slope: keeps far starts on the hull. */
const SINK_SHARE = 0.3;
/** A tangent, no unit. */
const MOST_TURN = 0.25;

/** A step is halved at most this often when it does not bring the boat nearer to rest. */
const MOST_HALVINGS = 8;

/** Slopes along the boat beyond this (80°) are no attitude of a boat at rest. */
const STEEPEST_SLOPE = Math.tan((80 * Math.PI) / 180);

/** A waterplane whose stiffness in trim is under this share of volume × length has no Newton step worth taking. */
const SINGULAR = 1e-12;

/** What is sought: a displaced volume with its buoyancy plumb under the centre of mass, at a fixed heel. */
export interface Sought {
  /** Cubic metres. */
  readonly volume: number;
  /** Mass and centre of all that floats, kilograms and metres. */
  readonly centre: PointMass;
  /** Tangent of the heel at which it is held. */
  readonly acrossSlope: number;
}

/** Where a search begins: metres, tangent. */
export interface Start {
  /** Height of the water amidships on the centreline. */
  readonly draft: number;
  /** Tangent of the trim. */
  readonly alongSlope: number;
}

/** Where a search ended, at rest or not, with the Newton steps taken. */
export interface Found {
  readonly settled: boolean;
  readonly plane: WaterPlane;
  /** Newton steps taken. */
  readonly steps: number;
}

/** A change of the water plane: metres, tangent. */
interface Step {
  /** Added to the draft. */
  readonly draft: number;
  /** Added to the tangent of the trim. */
  readonly alongSlope: number;
}

/** A plane tried: how far it is from rest (dimensionless) and the Newton step from it; null where there is none. */
interface Tried {
  readonly plane: WaterPlane;
  /** 0 at rest. */
  readonly miss: number;
  /** Null where the slopes give no direction. */
  readonly step: Step | null;
}

/**
 * Newton's method for draft and trim with the waterplane's own areas and moments as derivatives: exact ones, since
 * each section is clipped exactly, and every sum is continuous in the plane. Not settled: no step led nearer to rest.
 *
 * With k = tan(trim) and buoyancy along the plane's normal, the boat is at rest when V is the sought volume and
 * (x_B − x_G) − k·(z_B − z_G) = 0; the heel does not enter the second.
 */
export function searchEquilibrium(hull: Hull, sought: Sought, start: Start): Found {
  let now = tryPlane(hull, sought, { ...start, acrossSlope: sought.acrossSlope });
  let before = 0;
  for (let steps = 1; steps <= MOST_STEPS; steps++) {
    const { step, plane } = now;
    const size = step ? inTolerances(step) : Number.POSITIVE_INFINITY;
    // Newton's steps shrink ever faster. If the next one shrank only as this one did, it would bound what is left, apart from corners of the sections.
    const left = size < before ? (CORNERS * size * size) / before : size;
    if (step && left < 1) return { settled: true, plane: moved(plane, step, 1), steps };
    const next = step && nearer(hull, sought, { ...now, step });
    if (!next) return { settled: false, plane, steps };
    now = next;
    before = size;
  }
  return { settled: false, plane: now.plane, steps: MOST_STEPS };
}

/** How many times greater than its tolerance the greater part of a step is. */
function inTolerances({ draft, alongSlope }: Step): number {
  return Math.max(Math.abs(draft) / DRAFT_TOLERANCE, Math.abs(alongSlope) / TRIM_TOLERANCE);
}

/** The first of the whole step, its half, its quarter and so on that does not lead farther from rest. */
function nearer(hull: Hull, sought: Sought, from: Tried & { step: Step }): Tried | null {
  const limit = Math.max(
    1,
    Math.abs(from.step.draft) / (SINK_SHARE * (hull.highestZ - hull.lowestZ)),
    Math.abs(from.step.alongSlope) / MOST_TURN,
  );
  for (let halving = 0, share = 1 / limit; halving <= MOST_HALVINGS; halving++, share /= 2) {
    const plane = moved(from.plane, from.step, share);
    if (Math.abs(plane.alongSlope) > STEEPEST_SLOPE) continue;
    const tried = tryPlane(hull, sought, plane);
    if (tried.miss <= from.miss) return tried;
  }
  return null;
}

/** The plane after a share of a step; the heel is given and stays. */
function moved(plane: WaterPlane, step: Step, share: number): WaterPlane {
  return {
    draft: plane.draft + share * step.draft,
    alongSlope: plane.alongSlope + share * step.alongSlope,
    acrossSlope: plane.acrossSlope,
  };
}

/**
 * Cuts the hull at a plane and solves the two linear equations of Newton's step.
 *
 * With S for ∫ over the waterplane and h the plane's height, ∂V/∂draft = S(1), ∂V/∂k = −S(x), and the moments' derivatives
 * follow by the same rule from the value of their integrand on the plane: x, and z = h. The turning residual is
 * M_x − V·x_G − k·(M_z − V·z_G). Clear of the water or wholly under it there is no waterplane: the step is then a plain one
 * up or down.
 */
function tryPlane(hull: Hull, sought: Sought, plane: WaterPlane): Tried {
  const sums = immersedSums(hull, plane);
  const { draft, alongSlope: k, acrossSlope: t } = plane;
  const { x, z } = sought.centre;
  const volume = sums[SUM.volume]!;
  const [area, areaX, areaXx] = [sums[SUM.plane]!, sums[SUM.planeX]!, sums[SUM.planeXx]!];
  const heightArm = sums[SUM.momentZ]! - volume * z;
  const short = sought.volume - volume;
  const turn = sums[SUM.momentX]! - volume * x - k * heightArm;
  const planeZ = draft * area - k * areaX - t * sums[SUM.planeY]!;
  const planeXz = draft * areaX - k * areaXx - t * sums[SUM.planeXy]!;
  const turnByDraft = areaX - area * x - k * (planeZ - area * z);
  const turnBySlope = -areaXx + areaX * x - heightArm + k * (planeXz - areaX * z);
  const determinant = area * turnBySlope + areaX * turnByDraft;
  const scale = sought.volume * hull.length;
  const miss = Math.abs(short) / sought.volume + Math.abs(turn) / scale;
  if (Math.abs(determinant) < SINGULAR * area * scale || area <= 0) {
    const sink = Math.sign(short) * SINK_SHARE * (hull.highestZ - hull.lowestZ);
    return { plane, miss, step: sink === 0 ? null : { draft: sink, alongSlope: 0 } };
  }
  const step = {
    draft: (short * turnBySlope - turn * areaX) / determinant,
    alongSlope: (-turn * area - turnByDraft * short) / determinant,
  };
  return { plane, miss, step };
}

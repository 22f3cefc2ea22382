import type { DragLimits } from '../view/limits.ts';

/** How a dragged value snaps. */
export interface Snapping {
  /** Width of the magnetism around a soft edge, in the coordinate's unit: a few pixels' worth. */
  readonly magnet: number;
  /** Values are rounded to this. */
  readonly snapStep: number;
  /** Alt: leaves holes, magnetism and the hardware's travel. */
  readonly free: boolean;
  /** A value nearer than this to its start counts as not dragged: half a pixel, in the coordinate's unit. */
  readonly still: number;
  /** Where the drag started; a fitting that was outside its limits already is not forced back into them. */
  readonly start: number;
}

/** A bolt goes through a hole that is out by this, metres: so far aside a hole still holds. */
export const HOLE_PLAY_M = 0.0006;
/** With Ctrl held the snap step is this share of itself. */
export const FINE = 0.1;
/** Where no hole is within the limits, a value is rounded to a millimetre. */
const MILLIMETRE = 0.001;
/** A soft edge reaches no farther than this share of its band, so that the middle of a narrow one stays free. */
const MAGNET_SHARE = 0.2;

/** The value that a dragged coordinate snaps to: inside its limits, on a hole, or attracted by a soft edge. */
export function snapped(asked: number, limits: DragLimits, how: Snapping): number {
  if (!Number.isFinite(asked) || Math.abs(asked - how.start) < how.still) return how.start;
  const [low, high] = how.free ? limits.utmost : [limits.least, limits.most];
  const least = Math.min(low, how.start);
  const most = Math.max(high, how.start);
  const inside = Math.min(most, Math.max(least, asked));
  if (how.free) return rounded(inside, how.snapStep);
  if (limits.pitch) return nearestHole(inside, limits.pitch, { least, most });
  return rounded(attractedTo(inside, limits, how.magnet), how.snapStep);
}

/** Rounds to a step without binary rounding errors: 0.175, not 0.17500000000000002. */
export function rounded(value: number, step: number): number {
  return Number((Math.round(value / step) * step).toFixed(6));
}

/** The nearest hole inside two limits; holes are counted from the datum. */
export function nearestHole(
  value: number,
  pitch: number,
  { least, most }: { least: number; most: number },
): number {
  const first = Math.ceil(least / pitch - 1e-9);
  const last = Math.floor(most / pitch + 1e-9);
  if (last < first) return rounded(value, MILLIMETRE);
  const hole = Math.min(last, Math.max(first, Math.round(value / pitch)));
  return rounded(hole * pitch, 1e-6);
}

/**
 * Magnetism of the band's edges: within `magnet` of an edge the value lags toward it, resting on the edge itself over
 * the middle of the stretch. Continuous and never backward: the fitting follows the pointer more slowly there.
 */
export function attractedTo(
  value: number,
  limits: Pick<DragLimits, 'bandLeast' | 'bandMost'>,
  magnet: number,
): number {
  const { bandLeast, bandMost } = limits;
  const narrow = bandLeast !== null && bandMost !== null ? (bandMost - bandLeast) * MAGNET_SHARE : magnet;
  const reach = Math.min(magnet, narrow);
  for (const edge of [bandLeast, bandMost]) {
    if (edge === null || reach <= 0) continue;
    const away = value - edge;
    if (Math.abs(away) >= reach) continue;
    return edge + (away * Math.abs(away)) / reach;
  }
  return value;
}

import { type Side, sideSign } from '../frame/mirror.ts';
import { fairRows } from '../graphics/fair.ts';
import type { MillimetrePoint } from './template-drawing.ts';

/**
 * Outline of the sole of a right foot, drawn by this project for the purpose: x from heel to toes in foot lengths, y
 * to the inner side (the left) in foot breadths. Only its length and breadth are anybody's; the shape between is a sketch.
 */
const RIGHT_SOLE: readonly MillimetrePoint[] = [
  [0, 0],
  [0.015, -0.18],
  [0.06, -0.29],
  [0.13, -0.335],
  [0.22, -0.33],
  [0.33, -0.33],
  [0.45, -0.37],
  [0.57, -0.44],
  [0.66, -0.49],
  [0.73, -0.5],
  [0.79, -0.47],
  [0.84, -0.4],
  [0.885, -0.29],
  [0.925, -0.15],
  [0.955, 0],
  [0.98, 0.13],
  [0.995, 0.24],
  [1, 0.32],
  [0.99, 0.4],
  [0.965, 0.455],
  [0.92, 0.48],
  [0.86, 0.49],
  [0.79, 0.5],
  [0.73, 0.49],
  [0.66, 0.44],
  [0.58, 0.34],
  [0.5, 0.26],
  [0.41, 0.23],
  [0.31, 0.26],
  [0.21, 0.31],
  [0.13, 0.325],
  [0.06, 0.285],
  [0.015, 0.18],
];

/** Fair points put between each two of the sketch. */
const BETWEEN = 5;

/**
 * Outline of a sole, millimetres: x from the heel's back (0) to the tip of the longest toe (`length`), y to port between
 * ±breadth/2, the longest toe on the inner side. A smooth ring through the sketch's points (Catmull and Rom 1974), stretched to fit exactly.
 */
export function footPrint({
  foot,
  length,
  breadth,
}: {
  foot: Side;
  length: number;
  breadth: number;
}): MillimetrePoint[] {
  const smooth = fairRows<MillimetrePoint>(RIGHT_SOLE, BETWEEN, true);
  const xs = smooth.map(([x]) => x);
  const ys = smooth.map(([, y]) => y);
  const [lowX, lowY] = [Math.min(...xs), Math.min(...ys)];
  const [wideX, wideY] = [Math.max(...xs) - lowX, Math.max(...ys) - lowY];
  const hand = -sideSign(foot);
  return smooth.map(([x, y]) => [((x - lowX) / wideX) * length, hand * ((y - lowY) / wideY - 0.5) * breadth]);
}

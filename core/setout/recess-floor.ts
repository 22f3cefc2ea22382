import { floorLevel, halfWidthAt, type KneeRecess, legAt } from './knee-recess.ts';
import type { MillimetrePoint } from './template-drawing.ts';

/** Halvings that find a level: to a thousandth of a millimetre of any recess. */
const HALVINGS = 24;

/**
 * Level of the hollow's surface at a place of the block (x along the axis, y to port, millimetres), over the bottom of the finished
 * recess; `recess.depth`, the block's top, beside the hollow. `foam` gives the wood's surface under it. At K without foam 0.
 */
export function hollowLevel(recess: KneeRecess, [x, y]: MillimetrePoint, foam: number): number {
  const top = recess.depth;
  const lowest = floorLevel(recess, x, foam);
  if (lowest === null || lowest >= top) return top;
  const reaches = (level: number) => (halfWidthAt(recess, x, { level, foam }) ?? -1) >= Math.abs(y);
  if (!reaches(top)) return top;
  let [low, high] = [lowest, top];
  for (let k = 0; k < HALVINGS; k++) {
    const middle = (low + high) / 2;
    if (reaches(middle)) high = middle;
    else low = middle;
  }
  return high;
}

/** Distance between two stations along the axis, and between two lines across it, millimetres. */
const STATION_MM = 20;
const ACROSS_MM = [0, 20, 40] as const;

/** Depths of the hollow below the block's top at one station of its axis, millimetres. */
export interface RecessStation {
  /** Forward of K; negative aft of it. */
  readonly along: number;
  /** At each distance off the axis, either side alike: finished over the foam, and in the wood. */
  readonly depths: readonly { readonly across: number; readonly finished: number; readonly wood: number }[];
}

/** The recess's depths at stations every 20 mm from its fore end to its aft end, on the axis, 20 and 40 mm off it. */
export function recessStations(recess: KneeRecess, foam: number): RecessStation[] {
  const first = Math.floor(recess.foreEnd / STATION_MM);
  const last = Math.ceil(recess.aftEnd / STATION_MM);
  return Array.from({ length: first - last + 1 }, (_, k) => (first - k) * STATION_MM)
    .map((along) => ({
      along: along + 0,
      depths: ACROSS_MM.map((across) => ({
        across,
        finished: recess.depth - hollowLevel(recess, [along, across], 0),
        wood: recess.depth - hollowLevel(recess, [along, across], foam),
      })),
    }))
    .filter(({ depths }) => depths.some(({ wood }) => wood > 0));
}

/**
 * Smallest radius of the hollow's surface, millimetres, in the wood under so much foam: no ball-nosed cutter may be rounder. Across
 * its axis the hollow is an ellipse with semi-axes a and d, whose radii lie between a²/d and d²/a; the lesser is no more than d, with
 * which the front of the knee is round. Smallest at one of the hollow's ends. The hollow has no undercut.
 */
export function smallestRadius(recess: KneeRecess, foam: number): number {
  const across = [0, recess.aftEnd].flatMap((x) => {
    const leg = legAt(recess, x);
    const [a, d] = [leg.across + foam, leg.down + foam];
    return [(a * a) / d, (d * d) / a];
  });
  return Math.min(...across);
}

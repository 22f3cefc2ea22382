import { type SeatFrame, toBoatFrame } from '../frame/mirror.ts';
import type { BoatPoint } from '../frame/vec3.ts';
import { toRadians } from '../units/angle.ts';
import type { FrontFoot, KneePad, RearRest } from './seat-schema.ts';

/** Share of the pad's length that lies ahead of the knee's bearing point: the recess sits a little forward. */
export const PAD_AHEAD_OF_KNEE = 0.45;

/** Depth of a rear rest's block, fore and aft, metres (a common plank thickness; drawing and clearance only). */
export const REST_DEPTH = 0.04;

/** A foot's greatest breadth over its length (ANSUR II mean, both sexes: 0.376). */
export const FOOT_BREADTH_OVER_LENGTH = 0.376;

/** Corners of a rectangle in the paddler's plan turned by `turn` (aft end to the off side), to the boat frame. */
function turnedRectangle(
  at: { forward: number; out: number; height: number; turn: number },
  ends: { ahead: number; behind: number; half: number },
  frame: SeatFrame,
): BoatPoint[] {
  const cos = Math.cos(at.turn);
  const sin = Math.sin(at.turn);
  const corner = (along: number, across: number): BoatPoint =>
    toBoatFrame(
      { x: at.forward + along * cos - across * sin, y: at.out + along * sin + across * cos, z: at.height },
      frame,
    );
  return [
    corner(ends.ahead, ends.half),
    corner(ends.ahead, -ends.half),
    corner(-ends.behind, -ends.half),
    corner(-ends.behind, ends.half),
  ];
}

/**
 * Plan outline of the pad block, four corners in the boat frame (metres), counter-clockwise for a left-side paddler.
 * z is the recess's height. The block turns with its recess: the aft end to the off side.
 */
export function padOutline(pad: KneePad, frame: SeatFrame): BoatPoint[] {
  const turn = toRadians(pad.recessTurnDeg);
  return turnedRectangle(
    { forward: -pad.aftM, out: pad.outM, height: pad.heightM, turn },
    {
      ahead: pad.lengthM * PAD_AHEAD_OF_KNEE,
      behind: pad.lengthM * (1 - PAD_AHEAD_OF_KNEE),
      half: pad.widthM / 2,
    },
    frame,
  );
}

/** Plan outline of the rear rest: its bearing edge ahead, its block behind; turned to the off side. Boat frame, metres. */
export function restOutline(rest: RearRest, frame: SeatFrame): BoatPoint[] {
  const turn = toRadians(rest.turnDeg);
  return turnedRectangle(
    { forward: -rest.aftM, out: rest.outM, height: rest.heightM, turn },
    { ahead: 0, behind: REST_DEPTH, half: rest.widthM / 2 },
    frame,
  );
}

/** Bounding rectangle of the front foot's print from its heel, turned by the toe-out. Boat frame, metres. */
export function frontFootOutline(foot: FrontFoot, footLength: number, frame: SeatFrame): BoatPoint[] {
  return turnedRectangle(
    { forward: foot.forwardM, out: foot.outM, height: foot.heightM, turn: -toRadians(foot.toeOutDeg) },
    { ahead: footLength, behind: 0, half: (footLength * FOOT_BREADTH_OVER_LENGTH) / 2 },
    frame,
  );
}

/**
 * Least distance in plan between two convex outlines, metres; negative where they overlap, by the depth of the
 * overlap (the shortest push that would part them).
 */
export function planClearance(a: readonly BoatPoint[], b: readonly BoatPoint[]): number {
  const overlap = Math.max(separation(a, b), separation(b, a));
  return overlap < 0 ? overlap : Math.min(cornerDistance(a, b), cornerDistance(b, a));
}

/** Greatest signed gap along any of a's edge normals (separating-axis test; either winding). */
function separation(a: readonly BoatPoint[], b: readonly BoatPoint[]): number {
  let best = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < a.length; i++) {
    const p = a[i]!;
    const q = a[(i + 1) % a.length]!;
    const length = Math.hypot(q.x - p.x, q.y - p.y) || 1;
    const across = (o: BoatPoint) => ((o.x - p.x) * (q.y - p.y) - (o.y - p.y) * (q.x - p.x)) / length;
    const inward = Math.sign(a.reduce((sum, o) => sum + across(o), 0)) || 1;
    best = Math.max(best, Math.min(...b.map((o) => -inward * across(o))));
  }
  return best;
}

/** Least distance from any corner of `b` to any edge of `a`. */
function cornerDistance(a: readonly BoatPoint[], b: readonly BoatPoint[]): number {
  let best = Number.POSITIVE_INFINITY;
  for (let i = 0; i < a.length; i++) {
    for (const o of b) best = Math.min(best, edgeDistance(a[i]!, a[(i + 1) % a.length]!, o));
  }
  return best;
}

function edgeDistance(p: BoatPoint, q: BoatPoint, o: BoatPoint): number {
  const dx = q.x - p.x;
  const dy = q.y - p.y;
  const t = ((o.x - p.x) * dx + (o.y - p.y) * dy) / (dx * dx + dy * dy || 1);
  const clamped = Math.min(1, Math.max(0, t));
  return Math.hypot(o.x - p.x - clamped * dx, o.y - p.y - clamped * dy);
}

import type { Fit } from '../document/fit-schema.ts';
import { partsOf } from '../evaluation/parts-of.ts';
import { seatFrame } from '../evaluation/seat-state.ts';
import type { BoatPoint } from '../frame/vec3.ts';
import { hullOfBoat } from '../hull/hull-of-boat.ts';
import { sheerHalfBreadth, sheerHeight } from '../hull/section-at.ts';
import { boardTopAt } from '../parts/board.ts';
import { topOf } from '../parts/part.ts';

/** Points of a boat that can be told in a picture, in the order in which they are marked. */
export const BOAT_MARKS = [
  'bow',
  'stern',
  'seatMark',
  'boardFore',
  'boardAft',
  'sheerPort',
  'sheerStarboard',
  'sheerForePort',
  'sheerForeStarboard',
  'sheerAftPort',
  'sheerAftStarboard',
  'padForePort',
  'padForeStarboard',
  'padAftPort',
  'padAftStarboard',
  'restPort',
  'restStarboard',
] as const;
/** A point of the boat that can be marked in a picture. */
export type BoatMark = (typeof BOAT_MARKS)[number];

/** How far before and behind the seat's mark the sheer is marked, metres: two arm's lengths, laid off with a tape. */
export const SHEER_STEP_M = 1;

/**
 * Where the points of a boat lie that a coach can mark in a picture, metres, boat frame: ends at the sheer, the seat's mark and the
 * board's ends on the centreline, the sheer beside the seat and a metre before and behind it, the upper corners of the pad, and the
 * ends of the rest's upper fore edge. Null where the hull cannot be computed.
 */
export function boatMarks(fit: Fit, seat: number): Readonly<Record<BoatMark, BoatPoint>> | null {
  const at = fit.seats[seat];
  if (!at) return null;
  const hull = hullOfBoat(fit.boat);
  const { floorboard } = fit.boat;
  const { stationX } = seatFrame(fit.boat, at, seat);
  const sheer = (x: number, side: 1 | -1) => ({
    x,
    y: side * sheerHalfBreadth(hull, x),
    z: sheerHeight(hull, x),
  });
  const onBoard = (x: number) => ({ x, y: 0, z: boardTopAt(floorboard, x) });
  const parts = partsOf(fit).filter((part) => part.seat === seat);
  const cornersOf = (name: string) => topOf(parts.find(({ part }) => part === name)!);
  const [padForePort, padForeStarboard, padAftStarboard, padAftPort] = cornersOf('kneePad');
  const [restPort, restStarboard] = cornersOf('rearRest');
  return {
    bow: { x: hull.foreX, y: 0, z: sheerHeight(hull, hull.foreX) },
    stern: { x: hull.aftX, y: 0, z: sheerHeight(hull, hull.aftX) },
    seatMark: onBoard(stationX),
    boardFore: onBoard(floorboard.foreEndXM),
    boardAft: onBoard(floorboard.aftEndXM),
    sheerPort: sheer(stationX, 1),
    sheerStarboard: sheer(stationX, -1),
    sheerForePort: sheer(stationX + SHEER_STEP_M, 1),
    sheerForeStarboard: sheer(stationX + SHEER_STEP_M, -1),
    sheerAftPort: sheer(stationX - SHEER_STEP_M, 1),
    sheerAftStarboard: sheer(stationX - SHEER_STEP_M, -1),
    padForePort: padForePort!,
    padForeStarboard: padForeStarboard!,
    padAftPort: padAftPort!,
    padAftStarboard: padAftStarboard!,
    restPort: restPort!,
    restStarboard: restStarboard!,
  };
}

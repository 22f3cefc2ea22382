import type { BodyEstimate } from '../body/body.ts';
import type { SeatFrame } from '../frame/mirror.ts';
import type { Strays } from '../stance/objective.ts';
import { solveStance } from '../stance/solve-stance.ts';
import type { Phase, Stance } from '../stance/stance.ts';
import type { Support } from '../support/support.ts';
import { supportLoads } from '../support/support-loads.ts';
import type { Boat } from './boat-schema.ts';
import { floorHeightAt } from './floor-height.ts';
import type { Seat } from './seat-schema.ts';

/**
 * Mean blade force of the drive when none is set, newtons. Estimate: peak single-blade forces of 250–350 N are
 * reported (low confidence), and the mean over the drive is taken as about two thirds of the peak.
 */
export const DEFAULT_DRIVE_FORCE_N = 200;

/** An occupied seat as the core computes it: fittings, body, and where its frame stands. */
export interface SeatInput {
  readonly seat: Seat;
  readonly body: BodyEstimate;
  readonly frame: SeatFrame;
}

/** An occupied seat, solved: its three stances and how the weight rests. Boat frame, SI. */
export interface SeatState extends SeatInput {
  readonly stances: Readonly<Record<Phase, Stance>>;
  readonly support: Support;
}

/** Where the frame of seat `index` stands in the boat: metres, boat frame, y toward the kneeling side. */
export function seatFrame(
  boat: Pick<Boat, 'seats' | 'floorboard'>,
  seat: Pick<Seat, 'side' | 'kneels'>,
  index: number,
): SeatFrame {
  const stationX = boat.seats[index]?.stationM ?? 0;
  return {
    stationX,
    floorZ: floorHeightAt(boat.floorboard, stationX),
    side: seat.kneels ?? seat.side,
  };
}

/**
 * Solves one occupied seat. Always gives finite numbers; what cannot be reached stands in the stances' shortfalls. `strays` is one
 * person's own way of kneeling; without it, the usual one.
 */
export function solveSeat(input: SeatInput, strays?: Strays): SeatState {
  const solve = (phase: Phase) => solveStance(strays ? { ...input, phase, strays } : { ...input, phase });
  const ready = solve('ready');
  const support = supportLoads(ready, input.seat);
  return { ...input, stances: { ready, catch: solve('catch'), exit: solve('exit') }, support };
}

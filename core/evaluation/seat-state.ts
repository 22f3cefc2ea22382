import type { BodyEstimate } from '../body/body.ts';
import type { Boat } from '../document/boat-schema.ts';
import type { Seat } from '../document/seat-schema.ts';
import type { SeatFrame } from '../frame/mirror.ts';
import { floorHeightAt } from '../parts/floor-height.ts';
import { solvedStance } from '../posture/solve-stance.ts';
import type { Phase, Stance } from '../posture/stance.ts';
import { inPhase, type Strays, stanceProblem } from '../posture/stance-problem.ts';
import type { FreeForce } from '../support/blade-force.ts';
import { usualDriveForce } from '../support/blade-force.ts';
import type { Support } from '../support/support.ts';
import { supportLoads } from '../support/support-loads.ts';
import { lazyProperty } from '../units/lazy-property.ts';

/** An occupied seat as the core computes it: fittings, body, and where its frame stands. */
export interface SeatInput {
  readonly seat: Seat;
  readonly body: BodyEstimate;
  readonly frame: SeatFrame;
}

/** An occupied seat, solved: its three stances and how the weight rests. Boat frame, SI. */
export interface SeatState extends SeatInput {
  /** All three phases. */
  readonly stances: Readonly<Record<Phase, Stance>>;
  /** At ready. */
  readonly support: Support;
  /** Lift and part across of the blade's force, as shares of it. Left out: none. */
  readonly free?: FreeForce;
}

/** Mean blade force of a seat's drive, newtons: the athlete's own where it is set, else by body mass. */
export function driveForceOf({ seat, body }: Pick<SeatInput, 'seat' | 'body'>): number {
  return seat.stroke.driveForceN ?? usualDriveForce(body.mass);
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

const withCatch = lazyProperty<'catch', Stance>('catch');
const withExit = lazyProperty<'exit', Stance>('exit');

/**
 * Solves one occupied seat. Catch and exit are solved on request: a drag is drawn at ready. Always finite; the stances'
 * `shortfalls` have what cannot be reached. `strays` is one person's own way of kneeling; without it, the usual one.
 */
export function solveSeat(input: SeatInput, strays?: Strays): SeatState {
  const { body, seat, frame } = input;
  const problem = stanceProblem(body, seat, { phase: 'ready', strays });
  const inOther = (phase: Phase) => () => solvedStance(inPhase(problem, phase), { frame });
  const ready = solvedStance(problem, { frame });
  const stances = withExit(withCatch({ ready }, inOther('catch')), inOther('exit'));
  return { ...input, stances, support: supportLoads(ready, seat) };
}

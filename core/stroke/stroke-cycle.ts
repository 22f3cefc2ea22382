import { PEAK_OVER_MEAN } from '../document/stroke-defaults.ts';
import { type BoatState, floatCrew } from '../evaluation/boat-state.ts';
import { bladeForceOf } from '../evaluation/drive-quantities.ts';
import { driveForceOf, type SeatState } from '../evaluation/seat-state.ts';
import type { FloatResult } from '../hydrostatics/afloat.ts';
import type { Phase, Stance } from '../posture/stance.ts';
import { driveLoads } from '../support/drive-loads.ts';
import type { Contact } from '../support/support.ts';
import type { InPlan } from '../support/support-triangle.ts';
import { heldLoads } from '../support/support-triangle.ts';
import { STROKE_LEGS, strokeFigure } from './stroke-figure.ts';

/** One paddler at one instant of the stroke. Metres and newtons, boat frame. */
export interface StrokeSeatRow {
  readonly stance: Stance;
  /** Centre of mass of paddler and paddle forward of, out from and above its place in the ready stance. */
  readonly travel: { readonly x: number; readonly y: number; readonly z: number };
  /** Vertical loads on the three contacts, the blade's force of this instant counted in; null where the boat does not float. */
  readonly loadsN: Readonly<Record<Contact, number>> | null;
  /** Where the weight seems to act under that force, metres, boat frame; null where the boat does not float. */
  readonly seemsAt: InPlan | null;
  /** Along the boat; 0 while the blade is in the air. */
  readonly bladeForceN: number;
}

/** The whole boat at one instant: a row of the plots. */
export interface StrokeRow {
  /** Along the cycle in legs: 0 ready, 1 catch, 2 exit, 3 ready again. */
  readonly at: number;
  /** The instant this row is, null between them. */
  readonly phase: Phase | null;
  /** Null where a seat is empty. */
  readonly seats: readonly (StrokeSeatRow | null)[];
  /** Quasi-static: as if the boat came to rest at every instant. */
  readonly afloat: FloatResult;
}

/** What moves through a stroke: the boat and its solved crew, all in the same instant. */
export interface StrokeCrew {
  readonly boat: BoatState;
  /** Null where nobody sits. */
  readonly seats: readonly (SeatState | null)[];
  /** Where the boat lies with the crew ready, if known: saves iterations and changes nothing. */
  readonly afloat?: FloatResult;
}

/** Rows between two instants unless said otherwise. */
const SAMPLES = 8;

/**
 * The stroke from ready over catch and exit back to ready, `samples` rows a leg and both ends: the slider's and the plots'
 * rows. In the drive the blade's force rises and falls like half a sine wave whose mean is the seat's drive force.
 */
export function strokeCycle(crew: StrokeCrew, samples = SAMPLES): StrokeRow[] {
  const perLeg = Math.max(1, Math.floor(samples));
  return Array.from({ length: STROKE_LEGS.length * perLeg + 1 }, (_, i) => strokeRow(crew, i / perLeg));
}

/** The boat at one place of the cycle: `at` in legs from 0 to 3, as in `StrokeRow`. Outside it is brought inside. */
export function strokeRow({ boat, seats, afloat }: StrokeCrew, at: number): StrokeRow {
  const inside = Math.min(STROKE_LEGS.length, Math.max(0, at));
  const index = Math.min(STROKE_LEGS.length - 1, Math.floor(inside));
  const share = inside - index;
  const leg = STROKE_LEGS[index]!;
  const force = index === 1 ? PEAK_OVER_MEAN * Math.sin(Math.PI * share) : 0;
  const figures = seats.map((seat) => (seat ? strokeFigure(seat, leg, share) : null));
  const moved = seats.map((seat, i) =>
    seat ? { ...seat, stances: { ...seat.stances, ready: figures[i]! } } : null,
  );
  const water = floatCrew(boat, moved, { phase: 'ready', start: afloat });
  return {
    at: inside,
    phase: share === 0 ? leg.from : share === 1 ? leg.to : null,
    seats: seats.map((seat, i) => (seat ? seatRow(seat, figures[i]!, { forceShare: force, water }) : null)),
    afloat: water,
  };
}

/**
 * One paddler at one instant: the stance, how far the body has gone, and how contacts bear under the blade's force.
 */
function seatRow(
  { seat, body, stances }: SeatState,
  stance: Stance,
  { forceShare, water }: { forceShare: number; water: FloatResult },
): StrokeSeatRow {
  const bladeForceN = forceShare * driveForceOf({ seat, body });
  const blade = bladeForceOf(stance, seat.paddle, { forceN: bladeForceN, water });
  const drive = blade && driveLoads(stance, blade);
  const rest = stances.ready.centreOfMass;
  const { x, y, z } = stance.centreOfMass;
  return {
    stance,
    travel: { x: x - rest.x, y: y - rest.y, z: z - rest.z },
    loadsN: drive && heldLoads(drive.loadsN),
    seemsAt: drive?.seemsAt ?? null,
    bladeForceN,
  };
}

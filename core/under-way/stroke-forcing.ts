import { PEAK_OVER_MEAN } from '../document/stroke-defaults.ts';
import { massesAboard } from '../evaluation/boat-state.ts';
import { bladeForceOf } from '../evaluation/drive-quantities.ts';
import { driveForceOf } from '../evaluation/seat-state.ts';
import type { Afloat } from '../hydrostatics/afloat.ts';
import type { StrokeCrew } from '../stroke/stroke-cycle.ts';
import { STROKE_LEGS, strokeFigure } from '../stroke/stroke-figure.ts';

/** What differs between strokes that nobody has measured. */
export interface StrokeShape {
  /** Share of the stroke's time that the blade is in the water. */
  readonly driveShare: number;
  /** Lift over forward force; down on the boat is negative. */
  readonly lift: number;
  /** Force over the usual one. */
  readonly strength: number;
}

/** Our estimate: the blade is in the water for about half the stroke at racing rates. */
export const USUAL_STROKE: StrokeShape = { driveShare: 0.5, lift: 0, strength: 1 };

/** One instant. Moments are about mid-length at the water plane, bow up positive. SI. */
export interface Instant {
  /** Σ m·x and Σ m·z of everything aboard, z from the water plane; kg·m. */
  readonly momentX: number;
  /** As `momentX`, with z. */
  readonly momentZ: number;
  /** x and z of every mass, in the same order at every instant. */
  readonly places: readonly { readonly mass: number; readonly x: number; readonly z: number }[];
  /** Forces of all blades together, N. */
  readonly forward: number;
  /** Positive lifts the boat. */
  readonly up: number;
  /** Moment of the blades' forces. */
  readonly bladeMoment: number;
}

/**
 * The stroke of a whole crew at even instants of its time, from the catch on. In the drive the body goes from catch to exit,
 * in the rest of the time back over ready to the catch; both start and end at rest. The force rises and falls like half a sine.
 */
export function strokeInstants(
  crew: StrokeCrew,
  afloat: Afloat,
  { count, shape }: { count: number; shape: StrokeShape },
): Instant[] {
  return Array.from({ length: count }, (_, i) => instantAt(crew, afloat, { time: i / count, shape }));
}

/** Everybody aboard at one time of the stroke: masses, and what the blades push. */
function instantAt(
  crew: StrokeCrew,
  afloat: Afloat,
  { time, shape }: { time: number; shape: StrokeShape },
): Instant {
  const inDrive = time < shape.driveShare;
  const part = inDrive ? time / shape.driveShare : (time - shape.driveShare) / (1 - shape.driveShare);
  const eased = (1 - Math.cos(Math.PI * part)) / 2;
  const [leg, share] = inDrive ? [1, eased] : eased < 0.5 ? [2, 2 * eased] : [0, 2 * eased - 1];
  const force = inDrive ? PEAK_OVER_MEAN * Math.sin(Math.PI * part) * shape.strength : 0;
  const seats = crew.seats.map((seat) => {
    if (!seat) return null;
    const ready = strokeFigure(seat, STROKE_LEGS[leg]!, share);
    return { ...seat, stances: { ...seat.stances, ready } };
  });
  const places = massesAboard(crew.boat, seats, 'ready').map(({ mass, x, z }) => ({
    mass,
    x,
    z: z - afloat.draft,
  }));
  let [forward, up, bladeMoment] = [0, 0, 0];
  for (const seat of seats) {
    const blade =
      seat &&
      bladeForceOf(seat.stances.ready, seat.seat.paddle, {
        forceN: force * driveForceOf(seat),
        water: afloat,
        free: { lift: shape.lift, out: 0 },
      });
    if (!blade) continue;
    forward += blade.forceN;
    const { forceN, liftN = 0, atX = 0 } = blade;
    up += liftN;
    bladeMoment += atX * liftN - (blade.atZ - afloat.draft) * forceN;
  }
  return {
    momentX: places.reduce((sum, { mass, x }) => sum + mass * x, 0),
    momentZ: places.reduce((sum, { mass, z }) => sum + mass * z, 0),
    places,
    forward,
    up,
    bladeMoment,
  };
}

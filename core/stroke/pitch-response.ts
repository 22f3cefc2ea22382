import { ADDED_INERTIA_DOUBT, DAMPING_RATIOS, type Range } from '../document/stroke-defaults.ts';
import type { Hull } from '../hull/hull.ts';
import type { Afloat, PointMass } from '../hydrostatics/afloat.ts';
import { GRAVITY } from '../units/gravity.ts';
import { addedPitchInertia, rigidPitchInertia, shellPitchInertia } from './pitch-inertia.ts';

/** How a boat answers pitching at the stroke's rate: an estimate, to its order of magnitude. */
export interface PitchResponse {
  readonly kind: 'order of magnitude';
  /** kg·m² about the common centre. */
  readonly rigidInertia: number;
  readonly addedInertia: number;
  /** ρg∇·GM_L, N·m per radian. */
  readonly stiffness: number;
  /** Seconds: with the added inertia as computed, and with its doubt to either side. */
  readonly naturalPeriod: number;
  readonly naturalPeriods: Range;
  readonly strokePeriod: number;
  /** Pitching over the quasi-static trim change, over the ranges of damping and natural period. */
  readonly amplification: Range;
  readonly dampingRatios: Range;
}

/** What pitches: where the boat lies, everything aboard as points, and the bare hull's mass among them. */
export interface PitchingBoat {
  readonly hull: Hull;
  readonly afloat: Afloat;
  readonly masses: readonly PointMass[];
  readonly hullMassKg: number;
  readonly waterDensity: number;
  readonly ratePerMin: number;
}

/**
 * Natural pitch period 2π√((I + A)/K) and how much one harmonic at the stroke's rate is amplified. One degree of freedom:
 * heave, speed, waves and the harmonics above the first are left out. Null when the boat has no pitch stiffness.
 *
 * A slender single with an 80 kg paddler comes to about three quarters of a second, close to the stroke's own period:
 * the quasi-static trim under-states the true pitching.
 */
export function pitchResponse(boat: PitchingBoat): PitchResponse | null {
  const { hull, afloat, masses, hullMassKg, waterDensity, ratePerMin } = boat;
  const stiffness = waterDensity * GRAVITY * afloat.volume * afloat.longitudinalGm;
  if (!(stiffness > 0 && ratePerMin > 0)) return null;
  const rigidInertia = rigidPitchInertia(masses, shellPitchInertia(hull, hullMassKg));
  const addedInertia = addedPitchInertia(hull, afloat, { waterDensity, aboutX: afloat.centreOfMass.x });
  const periodWith = (share: number) =>
    2 * Math.PI * Math.sqrt((rigidInertia + share * addedInertia) / stiffness);
  const naturalPeriods = {
    least: periodWith(1 - ADDED_INERTIA_DOUBT),
    most: periodWith(1 + ADDED_INERTIA_DOUBT),
  };
  const strokePeriod = 60 / ratePerMin;
  return {
    kind: 'order of magnitude',
    rigidInertia,
    addedInertia,
    stiffness,
    naturalPeriod: periodWith(1),
    naturalPeriods,
    strokePeriod,
    amplification: amplificationRange(naturalPeriods, strokePeriod, DAMPING_RATIOS),
    dampingRatios: DAMPING_RATIOS,
  };
}

/**
 * Steady amplitude of a damped oscillator over its static deflection: 1/√((1 − r²)² + (2ζr)²) with r the natural period
 * over the period of the force. At r = 1 it is 1/(2ζ).
 */
export function amplification(periodRatio: number, dampingRatio: number): number {
  return 1 / Math.hypot(1 - periodRatio ** 2, 2 * dampingRatio * periodRatio);
}

/** Least and greatest amplification over the ranges; the peak at r² = 1 − 2ζ² counts where it falls inside. */
function amplificationRange(natural: Range, strokePeriod: number, damping: Range): Range {
  const ends = [natural.least, natural.most].map((period) => period / strokePeriod);
  const peak = Math.sqrt(Math.max(0, 1 - 2 * damping.least ** 2));
  const inside = peak > ends[0]! && peak < ends[1]!;
  const most = [...ends, ...(inside ? [peak] : [])].map((r) => amplification(r, damping.least));
  return {
    least: Math.min(...ends.map((r) => amplification(r, damping.most))),
    most: Math.max(...most),
  };
}

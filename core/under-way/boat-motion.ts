import type { Complex } from './exponential-integral.ts';
import { solveComplex } from './solve-complex.ts';
import type { StripSums } from './strips.ts';

/** What moves: masses, stiffness and the water's answer. About mid-length at the water plane; x forward, z up, bow up positive. SI. */
export interface MovingBoat {
  /** Boat, crew and paddles. */
  readonly massKg: number;
  /** Σ m·x, Σ m·z (kg·m) and Σ m·(x² + z²) (kg·m²) of everything aboard at rest. */
  readonly momentX: number;
  /** Σ m·z; positive where the centre lies above the water plane. */
  readonly momentZ: number;
  /** Σ m·(x² + z²) about mid-length at the water plane. */
  readonly inertia: number;
  /** Restoring force per metre of heave, per radian of pitch, and moment per radian: N/m, N, N·m. */
  readonly stiffness: { readonly heave: number; readonly coupled: number; readonly pitch: number };
  /** Added mass in surge, kg, and what drag gains per m/s, N·s/m. */
  readonly surgeAdded: number;
  /** Positive: it takes energy out. */
  readonly surgeDamping: number;
  /** Speed through the water, m/s. */
  readonly speed: number;
  /** The water's answer to heave and pitch at a circular frequency. */
  readonly water: (omega: number) => StripSums;
}

/** Amplitudes of the forces of one harmonic: surge and heave in N, pitch in N·m. */
export interface ForceAmplitudes {
  /** Along the course, N. */
  readonly surge: Complex;
  /** Up, N. */
  readonly heave: Complex;
  /** Bow up, N·m. */
  readonly pitch: Complex;
}

/**
 * Surge, heave (metres) and pitch (radians) at one circular frequency: (−ω²(M + A) + iωB + C)·q = F by strip theory with
 * forward speed (Salvesen, Tuck and Faltinsen, 1970; pitch here bow up). The strips' sums couple heave and pitch, the
 * masses' height couples surge and pitch.
 */
export function motionAt(boat: MovingBoat, omega: number, force: ForceAmplitudes): readonly Complex[] {
  const { added, damping } = boat.water(omega);
  const [U, w2] = [boat.speed, omega ** 2];
  const m = boat.massKg;
  const element = (mass: number, damp: number, stiff = 0): Complex => ({
    re: stiff - w2 * mass,
    im: omega * damp,
  });
  const { stiffness: c } = boat;
  const matrix = [
    element(m + boat.surgeAdded, boat.surgeDamping),
    element(0, 0),
    element(-boat.momentZ, 0),
    element(0, 0),
    element(m + added[0], damping[0], c.heave),
    element(boat.momentX + added[1] + (U / w2) * damping[0], damping[1] - U * added[0], c.coupled),
    element(-boat.momentZ, 0),
    element(boat.momentX + added[1] - (U / w2) * damping[0], damping[1] + U * added[0], c.coupled),
    element(
      boat.inertia + added[2] + (U ** 2 / w2) * added[0],
      damping[2] + (U ** 2 / w2) * damping[0],
      c.pitch,
    ),
  ];
  return solveComplex(matrix, [force.surge, force.heave, force.pitch]);
}

/** Heave and pitch at rest under steady forces: the limit of no frequency. */
export function restAt({ stiffness: c }: MovingBoat, { heave, pitch }: { heave: number; pitch: number }) {
  const determinant = c.heave * c.pitch - c.coupled ** 2;
  return {
    heave: (heave * c.pitch - pitch * c.coupled) / determinant,
    pitch: (pitch * c.heave - heave * c.coupled) / determinant,
  };
}

/** Where the search for natural periods starts, per second, and its steps: added mass changes little with frequency. */
const START_OMEGA = 10;
/** Each step takes the added mass at the frequency of the last. */
const SETTLING_STEPS = 4;

/** Natural periods of heave and pitch alone, seconds: ω² = C/(M + A(ω)), by repeated substitution. */
export function naturalPeriods(boat: MovingBoat): { readonly heave: number; readonly pitch: number } {
  const settle = (next: (omega: number) => number) => {
    let omega = START_OMEGA;
    for (let step = 0; step < SETTLING_STEPS; step++) omega = next(omega);
    return (2 * Math.PI) / omega;
  };
  const { heave, pitch } = boat.stiffness;
  return {
    heave: settle((omega) => Math.sqrt(heave / (boat.massKg + boat.water(omega).added[0]))),
    pitch: settle((omega) => Math.sqrt(pitch / (pitchInertia(boat) + boat.water(omega).added[2]))),
  };
}

/** Inertia about the pitch axis once surge may follow freely: without the part that the masses' height shares with surge. */
function pitchInertia({ inertia, momentZ, massKg }: MovingBoat): number {
  return inertia - momentZ ** 2 / massKg;
}

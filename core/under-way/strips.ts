import type { Hull } from '../hull/hull.ts';
import { loftedInto } from '../hull/section-at.ts';
import type { Attitude, ImmersedProperties } from '../hydrostatics/afloat.ts';
import { GRAVITY } from '../units/gravity.ts';
import { sectionHeave, type WetHalf } from './section-heave.ts';

/** Sections along the hull that its motion is summed over, and panels on each half. */
const STATIONS = 13;
/** From the keel to the waterline. */
const PANELS = 14;

/** One immersed section and the length of hull it stands for, metres. */
export interface Strip {
  /** Middle of the strip, metres, boat frame. */
  readonly x: number;
  /** Along the boat, metres. */
  readonly length: number;
  /** Half its section under water. */
  readonly half: WetHalf;
}

/** Sums over the strips of added mass a and damping b per metre: Σ c·xⁿ·dx for n = 0, 1, 2, with the water's density in. */
export interface StripSums {
  /** Σ over strips of added mass times 1, x and x². */
  readonly added: readonly [number, number, number];
  /** The same of damping. */
  readonly damping: readonly [number, number, number];
}

/** The immersed sections of a hull at an attitude, upright. Metres, boat frame along x, the water plane at z = 0. */
export function stripsOf(
  hull: Hull,
  attitude: Attitude,
  immersed: Pick<ImmersedProperties, 'waterplane'>,
): Strip[] {
  const { aftEnd, foreEnd } = immersed.waterplane;
  const length = (foreEnd - aftEnd) / STATIONS;
  const section = { y: new Float64Array(hull.loft.points), z: new Float64Array(hull.loft.points) };
  return Array.from({ length: STATIONS }, (_, i) => {
    const x = aftEnd + (i + 0.5) * length;
    const water = attitude.draft - Math.tan(attitude.trim) * x;
    return { x, length, half: wetHalf(loftedInto(hull, x, section), water) };
  });
}

/** Added mass and damping of a hull heaving and pitching at a circular frequency, by its strips. kg, kg·m, kg·m²; per second. */
export function stripSums(strips: readonly Strip[], omega: number, waterDensity: number): StripSums {
  const added: [number, number, number] = [0, 0, 0];
  const damping: [number, number, number] = [0, 0, 0];
  for (const { x, length, half } of strips) {
    const found = sectionHeave(half, { omega, gravity: GRAVITY });
    if (!found) continue;
    for (const power of [0, 1, 2] as const) {
      const weight = waterDensity * length * x ** power;
      added[power] += weight * found.addedMass;
      // The waves far away resolve the damping better than the pressure does, and it is never negative.
      damping[power] += weight * found.farDamping;
    }
  }
  return { added, damping };
}

/** The half-section under the water in `PANELS` pieces of equal length, heights from the water plane. */
function wetHalf({ y, z }: { y: Float64Array; z: Float64Array }, water: number): WetHalf {
  const [wetY, wetZ]: [number[], number[]] = [[], []];
  for (let j = 0; j < y.length; j++) {
    const height = z[j]! - water;
    if (height < 0) {
      wetY.push(y[j]!);
      wetZ.push(height);
      continue;
    }
    if (wetZ.length > 0) {
      const share = -wetZ.at(-1)! / (height - wetZ.at(-1)!);
      wetY.push(wetY.at(-1)! + share * (y[j]! - wetY.at(-1)!));
      wetZ.push(0);
    }
    break;
  }
  return evenly(wetY, wetZ);
}

/** A section's outline with points evenly along it. */
function evenly(y: readonly number[], z: readonly number[]): WetHalf {
  if (y.length < 2) return { y: [], z: [] };
  const along = [0];
  for (let i = 1; i < y.length; i++)
    along.push(along[i - 1]! + Math.hypot(y[i]! - y[i - 1]!, z[i]! - z[i - 1]!));
  const whole = along.at(-1)!;
  const points: [number[], number[]] = [[], []];
  let i = 1;
  for (let k = 0; k <= PANELS; k++) {
    const at = (whole * k) / PANELS;
    while (i < along.length - 1 && along[i]! < at) i++;
    const span = along[i]! - along[i - 1]!;
    const share = span > 0 ? (at - along[i - 1]!) / span : 0;
    points[0].push(y[i - 1]! + share * (y[i]! - y[i - 1]!));
    points[1].push(z[i - 1]! + share * (z[i]! - z[i - 1]!));
  }
  return { y: points[0], z: points[1] };
}

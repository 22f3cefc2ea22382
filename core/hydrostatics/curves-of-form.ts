import type { Hull } from '../hull/hull.ts';
import type { Radians } from '../units/angle.ts';
import { GRAVITY } from '../units/gravity.ts';
import type { ImmersedProperties } from './afloat.ts';
import { immersedProperties } from './immersed-properties.ts';

/** One line of the curves of form: the immersed properties at one draft and what follows from them. SI, boat frame. */
export interface FormAtDraft extends ImmersedProperties {
  /** Water over the lowest point of the keel line amidships. */
  readonly draft: number;
  /** Mass of the displaced water. */
  readonly displacementKg: number;
  /** Heights of the metacentres above the origin. */
  readonly transverseKm: number;
  /** As `transverseKm`, for trim. */
  readonly longitudinalKm: number;
  /** Kilograms that sink it one centimetre. */
  readonly massPerCentimetre: number;
  /**
   * Newton metres that change the trim by one centimetre, with BM in place of GM as curves of form do: the boat's weight
   * is not known here. A few per cent more than with a paddler aboard.
   */
  readonly momentPerCentimetreTrim: number;
}

/**
 * Curves of form: hydrostatics at each of a list of drafts (metres above the origin), at one trim and heel (radians, level
 * and upright unless given) in water of a density in kg/m³. A draft over the sheer has a negative `leastFreeboard`.
 */
export function curvesOfForm(
  hull: Hull,
  drafts: readonly number[],
  { waterDensity, trim = 0, heel = 0 }: { waterDensity: number; trim?: Radians; heel?: Radians },
): FormAtDraft[] {
  return drafts.map((draft) => {
    const properties = immersedProperties(hull, { draft, trim, heel });
    const { volume, centroid, waterplane } = properties;
    const displacementKg = volume * waterDensity;
    return {
      ...properties,
      draft,
      displacementKg,
      transverseKm: centroid.z + waterplane.transverseBm,
      longitudinalKm: centroid.z + waterplane.longitudinalBm,
      massPerCentimetre: waterDensity * waterplane.area * 0.01,
      momentPerCentimetreTrim: (displacementKg * GRAVITY * waterplane.longitudinalBm * 0.01) / hull.length,
    };
  });
}

import type { FormAtDraft } from './curves-of-form.ts';

/** How well a hull's data describe it at a draft: standard deviations. */
export interface FormSpread {
  /** Volume under a given draft, relative. */
  readonly volume: number;
  /** Beam at the water, relative. */
  readonly beam: number;
  /** Centre of buoyancy fore and aft, share of the length. */
  readonly centre: number;
  /** Height of keel or sheer at one place, metres. */
  readonly height: number;
}

/** Standard deviations of a line of the curves of form: kilograms, metres, newton metres. */
export interface FormDoubt {
  /** Kilograms. */
  readonly displacementKg: number;
  /** Kilograms per centimetre. */
  readonly massPerCentimetre: number;
  /** LCB, metres. */
  readonly centroidX: number;
  /** Centre of flotation, metres. */
  readonly lcf: number;
  /** Height of the metacentre, metres. */
  readonly transverseKm: number;
  /** Newton metres per centimetre. */
  readonly momentPerCentimetreTrim: number;
  /** Square metres. */
  readonly wettedSurface: number;
  /** Metres. */
  readonly leastFreeboard: number;
}

/** Share of a beam's relative doubt that enters the girth (estimate): the bottom and the sides' height do not grow with it. */
const GIRTH_SHARE = 0.6;

/**
 * Standard deviations of one line of the curves of form from the doubt of the hull's data, by first-order propagation: mass
 * follows the volume, mass per centimetre and moment to trim follow the beam, BM follows the beam cubed over the volume, both
 * centres follow the centre of buoyancy. An **estimate**. Metres, kilograms.
 */
export function formDoubt(
  { displacementKg, massPerCentimetre, momentPerCentimetreTrim, wettedSurface, waterplane }: FormAtDraft,
  { volume, beam, centre, height }: FormSpread,
  length: number,
): FormDoubt {
  const bm = waterplane.transverseBm;
  return {
    displacementKg: volume * displacementKg,
    massPerCentimetre: beam * massPerCentimetre,
    centroidX: centre * length,
    lcf: centre * length,
    transverseKm: Math.hypot(3 * beam * bm, volume * bm, height),
    momentPerCentimetreTrim: beam * momentPerCentimetreTrim,
    wettedSurface: GIRTH_SHARE * beam * wettedSurface,
    leastFreeboard: height,
  };
}

import type { Seat } from '../document/seat-schema.ts';
import type { StanceUnknown } from '../posture/stance.ts';

/**
 * Standard deviation of an angle measured on a photograph, degrees: estimates. Reading the photograph adds little (0.1° and 2
 * mm on a marked object: Ferreira et al. 2010, Clinics 65:675–681). What counts is feeling for the joints, 1 cm each over half
 * a metre of trunk (1.6°), the camera's level (0.5°) and the athlete's sway from one picture to the next (1°). From behind, the
 * trunk's marks lie on the spine, felt to half a centimetre (0.8°).
 */
export const PINNED_SD_DEG: Readonly<Record<StanceUnknown, number>> = {
  thighPitch: 2,
  thighRoll: 2,
  pelvisYaw: 2,
  trunkPitch: 2,
  trunkRoll: 1.4,
};

/**
 * Standard deviation of one held angle of a seat, degrees: that of its own reading where the pin has that value, otherwise as
 * above.
 */
export function pinnedSdDeg({ pins, pinReadings }: Seat, name: StanceUnknown): number {
  const reading = pinReadings?.[`${name}Deg`];
  return reading && reading.atDeg === pins[`${name}Deg`] ? reading.sdDeg : PINNED_SD_DEG[name];
}

/**
 * Standard deviation of the trunk's pitch in the stroke about the model's value, degrees. Between persons 6.3° at the catch
 * (pelvic inclination 37.6 ± 6.3°, López-Miñarro, Muyor, Alacid 2011, J Hum Kinet); at the exit the same is taken. An athlete's
 * own pitch, once set, has the doubt of a reading and of one stroke to the next (estimate).
 */
export const STROKE_PITCH_SD_DEG = { usual: 6.3, own: 3 } as const;

/**
 * Standard deviation of the drive's mean force, as a share of it (estimate): the peaks reported for single blades, 250 to 350 N
 * (from memory), as two standard deviations either side, and half as much again for the mean over the peak.
 */
export const DRIVE_FORCE_SD = 0.15;

/** Sources of doubt to leave out (false), to study the others. */
export interface SpreadSources {
  /** Differences between persons in how they kneel. */
  readonly posture?: boolean;
  /** The doubt of the boat's lines. */
  readonly hull?: boolean;
}

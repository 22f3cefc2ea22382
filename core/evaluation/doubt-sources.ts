import type { Seat } from '../document/seat-schema.ts';
import type { StanceUnknown } from '../posture/stance.ts';

/**
 * How truly an angle is held that was measured off a photograph, degrees: estimates. Reading a photograph costs next to
 * nothing (0.1° and 2 mm on a marked object: Ferreira et al. 2010, Clinics 65:675–681); what counts is where joints are felt for,
 * 1 cm each over half a metre of trunk (1.6°), the camera's level (0.5°) and the athlete's own sway from one look to the next
 * (1°). Seen from behind the trunk's marks lie on the spine, felt for to half a centimetre (0.8°).
 */
export const PINNED_SD_DEG: Readonly<Record<StanceUnknown, number>> = {
  thighPitch: 2,
  thighRoll: 2,
  pelvisYaw: 2,
  trunkPitch: 2,
  trunkRoll: 1.4,
};

/** How truly one angle of a seat is held, degrees: that of its own reading where the pin stands at it, else as above. */
export function pinnedSdDeg({ pins, pinReadings }: Seat, name: StanceUnknown): number {
  const reading = pinReadings?.[`${name}Deg`];
  return reading && reading.atDeg === pins[`${name}Deg`] ? reading.sdDeg : PINNED_SD_DEG[name];
}

/**
 * How far the trunk's pitch in the stroke strays from what the model takes, degrees. Between persons 6.3° at the catch (pelvic
 * inclination 37.6 ± 6.3°, López-Miñarro, Muyor, Alacid 2011, J Hum Kinet); at the exit the same is taken. An athlete's own
 * pitch, once set, has the doubt of a reading and of one stroke to the next (estimate).
 */
export const STROKE_PITCH_SD_DEG = { usual: 6.3, own: 3 } as const;

/** Scale of body mass between two weighings on the same day, kilograms (estimate). */
export const BODY_MASS_SD_KG = 0.7;

/**
 * How truly the drive's mean force is known, as a share of it: the peaks reported for single blades, 250 to 350 N (low
 * confidence), taken as two standard deviations either side and half as much again for the mean over the peak.
 */
export const DRIVE_FORCE_SD = 0.15;

/** Sources of doubt to leave out, for studies of the others; all are counted unless said otherwise. */
export interface SpreadSources {
  /** How somebody kneels. */
  readonly posture?: boolean;
  /** How truly the boat's lines are known. */
  readonly hull?: boolean;
}

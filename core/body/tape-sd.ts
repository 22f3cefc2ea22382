import type { TapeMeasure } from '../document/athlete-schema.ts';

/**
 * Standard deviation of one reading by a careful person with a tape or a rule, metres, where the reading brings none:
 * estimates. Part of it is where a point is felt for, which does not go away by measuring twice. No reading's error can be larger than what
 * the survey leaves of its measure unexplained by all the others, as no other shares it: 6 to 7 mm for tibial and popliteal
 * height, 5 for knee height sitting, 11 to 13 for crotch height, measurers' habits counted in. Kneeling height has 1 cm of posture in it: how
 * upright one kneels, and how deep the knee sinks.
 */
export const TAPE_SD: Readonly<Record<TapeMeasure, number>> = {
  kneeHeightSitting: 0.004,
  buttockKneeLength: 0.006,
  shoulderHeight: 0.007,
  armSpan: 0.01,
  footLength: 0.0025,
  kneelingHeight: 0.012,
  crotchHeight: 0.01,
  tibialHeight: 0.006,
  poplitealHeight: 0.004,
  sittingHeight: 0.007,
  biacromialBreadth: 0.006,
  kneeToHipLength: 0.008,
};

/** Standard deviation of a stature, metres: the reading, and the centimetre or so lost between morning and evening (estimate). */
export const STATURE_SD = 0.006;

/** Standard deviation of a body mass, kilograms: one day and the next (estimate). */
export const MASS_SD = 0.7;

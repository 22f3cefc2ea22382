import type { TapeMeasure } from '../fit/athlete-schema.ts';

/**
 * Standard deviation of one reading by a careful person with a tape or a rule, metres, where the reading brings none:
 * estimates. Part of it is where a point is felt for, which does not go away by measuring twice: at equal stature the means
 * of three groups of the survey's men, measured at two posts, lie within 2–5 mm for the sitting heights and the foot, within
 * 21 mm for crotch height and 29 mm for tibial height.
 */
export const TAPE_SD: Readonly<Record<TapeMeasure, number>> = {
  kneeHeightSitting: 0.004,
  buttockKneeLength: 0.006,
  shoulderHeight: 0.007,
  armSpan: 0.01,
  footLength: 0.0025,
  kneelingHeight: 0.007,
  crotchHeight: 0.01,
  tibialHeight: 0.012,
  poplitealHeight: 0.005,
  sittingHeight: 0.007,
  biacromialBreadth: 0.006,
  kneeToHipLength: 0.008,
};

/** Standard deviation of a stature, metres: the reading, and the centimetre or so lost between morning and evening (estimate). */
export const STATURE_SD = 0.006;

/** Standard deviation of a body mass, kilograms: one day and the next (estimate). */
export const MASS_SD = 0.7;

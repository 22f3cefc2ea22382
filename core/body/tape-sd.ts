import type { TapeMeasure } from '../document/athlete-schema.ts';

/**
 * Standard deviation of one reading by a careful person with a tape or a rule, metres, where the reading has none of its own:
 * estimates. Part of it is where the point is felt for; measuring twice does not remove that. An upper limit for it is the part
 * of a measure's spread in the survey that the other measures do not explain: 6 to 7 mm for tibial and popliteal height, 5 for
 * knee height sitting, 11 to 13 for crotch height, including the measurers' habits. Kneeling height has 1 cm of posture in it:
 * how upright the person kneels, and how deep the knee sinks.
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

/** Standard deviation of a stature, metres: the reading, and about a centimetre lost between morning and evening (estimate). */
export const STATURE_SD = 0.006;

/** Standard deviation of a body mass, kilograms, from one day to the next (estimate). */
export const MASS_SD = 0.7;

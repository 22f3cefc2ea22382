import { squareRootOf } from './covariance-root.ts';
import { PERSON_MEASURES, type PersonMeasure, type RegressionsBySex } from './person-measures.ts';
import type { Sex } from './sex.ts';
import { beyondSurvey } from './survey-estimate.ts';
import { SURVEY_REGRESSIONS } from './survey-regressions.ts';

/**
 * Body mass index between which the survey's persons lie, kg/m²; beyond it the mass has no further influence on the lengths.
 */
export const SURVEYED_MASS_INDEX = { low: 15, high: 43 } as const;

/** Millimetres in a metre: the survey's tables are in millimetres. */
const MM = 1000;

/** One measure of a person of known stature and mass: metres, metres per metre of stature, metres per kilogram. */
export interface PersonLine {
  /** Expected value for this stature and mass, metres. */
  readonly value: number;
  /** Standard deviation between persons of this stature and mass, metres. */
  readonly sd: number;
  /** Change with stature at the same mass, metres per metre. */
  readonly perMetre: number;
  /** Change with mass at the same stature, metres per kilogram. */
  readonly perKg: number;
}

/** The survey's regressions of one sex, ready for use. */
export interface SurveyModel {
  /** A measure as predicted from stature (metres) and mass (kilograms). */
  readonly line: (measure: PersonMeasure, stature: number, mass: number) => PersonLine;
  /** The mass that goes with a stature, kilograms: value, standard deviation, kilograms per metre. */
  readonly massFor: (stature: number) => { value: number; sd: number; perMetre: number };
  /** Correlation of what the lines leave, places as in `PERSON_MEASURES`. */
  readonly correlation: (a: PersonMeasure, b: PersonMeasure) => number;
  /** Columns of the root of these correlations: how independent unit doubts make up the departures. */
  readonly root: readonly (readonly number[])[];
}
/** A model for each sex. */
export type SurveyModels = Readonly<Record<Sex, SurveyModel>>;

/**
 * Regressions made ready for use. Beyond 1.30–2.15 m of stature the proportions of the nearer end are kept, the mass scales
 * with stature cubed, and the spread grows. Beyond `SURVEYED_MASS_INDEX` the mass is held at the nearer limit.
 */
export function surveyModels(regressions: RegressionsBySex): SurveyModels {
  return { female: modelOf(regressions, 'female'), male: modelOf(regressions, 'male') };
}

/** The models of the survey's persons. */
export const SURVEY_MODELS: SurveyModels = surveyModels(SURVEY_REGRESSIONS);

/** One sex's regressions as lines, with their joint spread. */
function modelOf(regressions: RegressionsBySex, sex: Sex): SurveyModel {
  const { rows, massOnStature, correlations } = regressions[sex];
  const correlation = (a: PersonMeasure, b: PersonMeasure): number => {
    const [i, j] = [PERSON_MEASURES.indexOf(a), PERSON_MEASURES.indexOf(b)];
    return i === j ? 1 : (correlations[Math.max(i, j)]?.[Math.min(i, j)] ?? 0);
  };
  return {
    line: (measure, stature, mass) => {
      const { nearest, scale, widening } = beyondSurvey(stature);
      const [constant, perMm, perKg, residualSd] = rows[measure];
      const counted = countedMass(stature, mass);
      const atNearest = constant / MM + perMm * nearest + (perKg / MM) * counted.value;
      const ownSlope = scale === 1 ? perMm : atNearest / nearest;
      return {
        value: atNearest * scale,
        sd: (residualSd / MM) * scale * widening,
        perMetre: ownSlope + (perKg / MM) * scale * counted.perMetre,
        perKg: (perKg / MM) * scale * counted.perKg,
      };
    },
    massFor: (stature) => {
      const { nearest, scale, widening } = beyondSurvey(stature);
      const [constant, perMm, residualSd] = massOnStature;
      const atNearest = constant + perMm * MM * nearest;
      return {
        value: atNearest * scale ** 3,
        sd: residualSd * scale ** 3 * widening,
        perMetre: scale === 1 ? perMm * MM : (3 * atNearest * scale ** 2) / nearest,
      };
    },
    correlation,
    root: squareRootOf(PERSON_MEASURES.map((a) => PERSON_MEASURES.map((b) => correlation(a, b)))),
  };
}

/** The mass that a line uses, kilograms, scaled to the nearest surveyed stature, and how it changes with stature and mass. */
function countedMass(stature: number, mass: number): { value: number; perMetre: number; perKg: number } {
  const { nearest, scale } = beyondSurvey(stature);
  const scaled = mass / scale ** 3;
  const index = scaled / nearest ** 2;
  const kept = Math.min(SURVEYED_MASS_INDEX.high, Math.max(SURVEYED_MASS_INDEX.low, index));
  if (kept !== index) {
    return { value: kept * nearest ** 2, perMetre: scale === 1 ? 2 * kept * nearest : 0, perKg: 0 };
  }
  return { value: scaled, perMetre: scale === 1 ? 0 : (-3 * scaled) / stature, perKg: 1 / scale ** 3 };
}

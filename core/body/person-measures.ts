import type { Sex } from './sex.ts';

/** Survey columns that a person of the model consists of. The trochanterion stands last: see `withoutPalpation`. */
export const PERSON_MEASURES = [
  'acromialHeight',
  'epicondyleHeight',
  'malleolusHeight',
  'acromionRadialeLength',
  'radialeStylionLength',
  'forearmGripLength',
  'footLength',
  'ballOfFootLength',
  'biacromialBreadth',
  'buttockKneeLength',
  'kneeDepth',
  'kneeHeightSitting',
  'tibialHeight',
  'poplitealHeight',
  'crotchHeight',
  'sittingHeight',
  'span',
  'trochanterionHeight',
] as const;
/** A measure of the survey. */
export type PersonMeasure = (typeof PERSON_MEASURES)[number];

/** *value = constant + perMm × stature + perKg × mass*, and the standard deviation of what it leaves: mm, mm/mm, mm/kg, mm. */
export type RegressionRow = readonly [constant: number, perMm: number, perKg: number, residualSd: number];

/** What the survey's persons of one sex say of every measure at a given stature and mass. */
export interface SurveyRegressions {
  /** How many persons it is computed from. */
  readonly persons: number;
  /** *mass = constant + perMm × stature* in kilograms, and the standard deviation of what it leaves. */
  readonly massOnStature: readonly [constant: number, perMm: number, residualSd: number];
  readonly rows: Readonly<Record<PersonMeasure, RegressionRow>>;
  /** Correlations of what the rows leave: for each measure, those with the earlier ones, in the order of `PERSON_MEASURES`. */
  readonly correlations: readonly (readonly number[])[];
}

/** The regressions of both sexes. */
export type RegressionsBySex = Readonly<Record<Sex, SurveyRegressions>>;

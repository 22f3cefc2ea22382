import type { Sex } from './sex.ts';
import { type SurveyMeasure, surveyRow } from './survey-table.ts';

/** Survey columns that a person of the model consists of. The trochanterion stands last: see `hipHeight`. */
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
] as const satisfies readonly SurveyMeasure[];
export type PersonMeasure = (typeof PERSON_MEASURES)[number];

/**
 * Pairs whose covariance the survey's own tables give, for each sex, through the spread of their difference or sum:
 * var(a − b) = var a + var b − 2 cov(a, b).
 */
const TIED_PAIRS: readonly {
  readonly pair: readonly [PersonMeasure, PersonMeasure];
  readonly row: SurveyMeasure;
  readonly by: 'difference' | 'sum';
}[] = [
  { pair: ['acromialHeight', 'trochanterionHeight'], row: 'acromionLessTrochanterion', by: 'difference' },
  { pair: ['trochanterionHeight', 'epicondyleHeight'], row: 'trochanterionLessEpicondyle', by: 'difference' },
  { pair: ['epicondyleHeight', 'malleolusHeight'], row: 'epicondyleLessMalleolus', by: 'difference' },
  { pair: ['acromialHeight', 'acromionRadialeLength'], row: 'acromionLessRadiale', by: 'difference' },
  { pair: ['acromionRadialeLength', 'radialeStylionLength'], row: 'radialePlusStylion', by: 'sum' },
  { pair: ['forearmGripLength', 'radialeStylionLength'], row: 'forearmGripLessStylion', by: 'difference' },
  { pair: ['footLength', 'ballOfFootLength'], row: 'toeLength', by: 'difference' },
  { pair: ['buttockKneeLength', 'kneeDepth'], row: 'buttockPoplitealLength', by: 'difference' },
  { pair: ['kneeHeightSitting', 'epicondyleHeight'], row: 'kneeTopLessEpicondyle', by: 'difference' },
  { pair: ['acromialHeight', 'tibialHeight'], row: 'acromionLessTibial', by: 'difference' },
];

// Correlations of the departures from the lines for the pairs above the tables say nothing of, each measure with the
// earlier ones. Derived from 61 men of the released survey (29 of one measuring post and 32 of another, posts' means taken out),
// then shrunk by a tenth, so that a small sample does not promise more than it can; the standard error of each is about
// 0.1. Women's pairs are taken to be alike. Reproduced from those men in tests/reference/body-correlations.test.ts.
const SAMPLED: readonly (readonly number[])[] = [
  [], // acromialHeight
  [0.25], // epicondyleHeight
  [0.05, 0.19], // malleolusHeight
  [0.4, 0.17, -0.16], // acromionRadialeLength
  [0.28, 0.28, -0.17, 0.35], // radialeStylionLength
  [0.33, 0.33, 0.04, 0.43, 0.61], // forearmGripLength
  [0.07, 0.29, 0, 0.25, 0.24, 0.36], // footLength
  [0.2, 0.21, -0.03, 0.29, 0.21, 0.33, 0.75], // ballOfFootLength
  [-0.23, -0.04, 0.1, -0.01, 0.05, 0.19, 0.11, 0.09], // biacromialBreadth
  [0.19, 0.18, -0.01, 0.28, 0.17, 0.29, 0.18, 0.21, 0.34], // buttockKneeLength
  [-0.05, -0.14, 0.16, -0.1, -0.03, 0.17, 0.12, 0.21, 0.37, 0.46], // kneeDepth
  [0.34, 0.73, 0.2, 0.25, 0.36, 0.44, 0.4, 0.37, 0.08, 0.32, 0], // kneeHeightSitting
  [0.27, 0.84, 0.17, 0.18, 0.33, 0.39, 0.38, 0.32, 0.02, 0.24, -0.08, 0.78], // tibialHeight
  [0.31, 0.7, 0.01, 0.29, 0.36, 0.4, 0.36, 0.32, -0.09, 0.08, -0.28, 0.75, 0.72], // poplitealHeight
  [0.33, 0.63, -0.07, 0.29, 0.37, 0.38, 0.21, 0.2, -0.13, 0.37, -0.15, 0.66, 0.63, 0.67], // crotchHeight
  [-0.31, -0.65, -0.02, -0.37, -0.4, -0.46, -0.28, -0.26, 0, -0.48, 0.05, -0.69, -0.68, -0.65, -0.8], // sittingHeight
  [0.08, 0.24, -0.16, 0.55, 0.52, 0.56, 0.39, 0.35, 0.41, 0.27, 0.02, 0.36, 0.32, 0.35, 0.29, -0.39], // span
  [0.25, 0.55, 0.01, 0.26, 0.22, 0.3, 0.23, 0.13, -0.08, 0.38, -0.03, 0.59, 0.58, 0.56, 0.66, -0.68, 0.24], // trochanterionHeight
];

/** Correlation of a pair of measures among persons of one stature as the sample has it, in either order; 1 with itself. */
export function sampledCorrelation(a: PersonMeasure, b: PersonMeasure): number {
  const [i, j] = [PERSON_MEASURES.indexOf(a), PERSON_MEASURES.indexOf(b)];
  return i === j ? 1 : (SAMPLED[Math.max(i, j)]?.[Math.min(i, j)] ?? 0);
}

/** The same as the survey's tables give it, for a pair that they tie; null for the others. */
export function tiedCorrelation(a: PersonMeasure, b: PersonMeasure, sex: Sex): number | null {
  const tie = TIED_PAIRS.find(({ pair }) => pair.includes(a) && pair.includes(b) && a !== b);
  if (!tie) return null;
  const sd = (measure: SurveyMeasure) => surveyRow(measure, sex).residualSd;
  const sign = tie.by === 'sum' ? 1 : -1;
  const [first, second] = tie.pair.map(sd) as [number, number];
  return (sign * (sd(tie.row) ** 2 - first ** 2 - second ** 2)) / (2 * first * second);
}

/**
 * Correlations among persons of one stature, in the order of `PERSON_MEASURES`: from the survey's tables where they tie a
 * pair, from the sample elsewhere. Positive definite for both sexes (smallest eigenvalue 0.07; tested).
 */
export function measureCorrelations(sex: Sex): number[][] {
  return PERSON_MEASURES.map((a) =>
    PERSON_MEASURES.map((b) => tiedCorrelation(a, b, sex) ?? sampledCorrelation(a, b)),
  );
}

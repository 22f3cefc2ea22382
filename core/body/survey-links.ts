import type { Sex } from './sex.ts';
import { type SurveyMeasure, surveyRow } from './survey-table.ts';

/** Survey columns that a person of the model consists of, each after those it hangs on. */
export const PERSON_MEASURES = [
  'trochanterionHeight',
  'acromialHeight',
  'epicondyleHeight',
  'malleolusHeight',
  'acromionRadialeLength',
  'radialeStylionLength',
  'forearmGripLength',
  'footLength',
  'ballOfFootLength',
  'biacromialBreadth',
  'kneeDepth',
  'buttockKneeLength',
  'kneeHeightSitting',
  'tibialHeight',
  'poplitealHeight',
  'crotchHeight',
  'sittingHeight',
  'span',
] as const satisfies readonly SurveyMeasure[];
export type PersonMeasure = (typeof PERSON_MEASURES)[number];

/**
 * How a measure's departure from its line is tied to that of an earlier measure. *difference* and *sum*: the survey's own
 * row of the difference or sum gives the covariance. *like*: the correlation of a neighbouring pair is taken over.
 * *assumed*: a correlation that the kept rows cannot give. *part*: the earlier measure is a part of this one, so many times.
 */
export type Link = { readonly to: PersonMeasure } & (
  | { readonly by: 'difference' | 'sum'; readonly row: SurveyMeasure }
  | {
      readonly by: 'like';
      readonly pair: readonly [SurveyMeasure, SurveyMeasure];
      readonly row: SurveyMeasure;
    }
  | { readonly by: 'assumed'; readonly correlation: number }
  | { readonly by: 'part'; readonly weight: number }
);

/**
 * What each measure hangs on. Pairs not linked are independent once their links are given, which is the widest normal
 * spread that agrees with what is known (covariance selection, Dempster 1972).
 */
export const LINKS: Readonly<Record<PersonMeasure, readonly Link[]>> = {
  trochanterionHeight: [],
  acromialHeight: [{ to: 'trochanterionHeight', by: 'difference', row: 'acromionLessTrochanterion' }],
  epicondyleHeight: [
    { to: 'trochanterionHeight', by: 'difference', row: 'trochanterionLessEpicondyle' },
    { to: 'acromialHeight', by: 'like', pair: ['acromialHeight', 'tibialHeight'], row: 'acromionLessTibial' },
  ],
  malleolusHeight: [{ to: 'epicondyleHeight', by: 'difference', row: 'epicondyleLessMalleolus' }],
  acromionRadialeLength: [{ to: 'acromialHeight', by: 'difference', row: 'acromionLessRadiale' }],
  radialeStylionLength: [{ to: 'acromionRadialeLength', by: 'sum', row: 'radialePlusStylion' }],
  forearmGripLength: [{ to: 'radialeStylionLength', by: 'difference', row: 'forearmGripLessStylion' }],
  footLength: [],
  ballOfFootLength: [{ to: 'footLength', by: 'difference', row: 'toeLength' }],
  biacromialBreadth: [],
  kneeDepth: [],
  buttockKneeLength: [
    { to: 'kneeDepth', by: 'difference', row: 'buttockPoplitealLength' },
    { to: 'trochanterionHeight', by: 'assumed', correlation: 0.45 },
  ],
  kneeHeightSitting: [{ to: 'epicondyleHeight', by: 'difference', row: 'kneeTopLessEpicondyle' }],
  tibialHeight: [
    { to: 'epicondyleHeight', by: 'assumed', correlation: 0.7 },
    { to: 'acromialHeight', by: 'difference', row: 'acromionLessTibial' },
  ],
  poplitealHeight: [{ to: 'epicondyleHeight', by: 'assumed', correlation: 0.65 }],
  crotchHeight: [{ to: 'trochanterionHeight', by: 'assumed', correlation: 0.6 }],
  sittingHeight: [{ to: 'trochanterionHeight', by: 'assumed', correlation: -0.55 }],
  span: [
    { to: 'acromionRadialeLength', by: 'part', weight: 2 },
    { to: 'radialeStylionLength', by: 'part', weight: 2 },
    { to: 'biacromialBreadth', by: 'part', weight: 1 },
  ],
};

/** A link of which a correlation is known. */
export type TiedLink = Exclude<Link, { readonly by: 'part' }>;

/** Correlation, given stature, of a measure with the one that it is linked to. */
export function linkCorrelation(measure: PersonMeasure, link: TiedLink, sex: Sex): number {
  const sd = (name: SurveyMeasure) => surveyRow(name, sex).residualSd;
  if (link.by === 'assumed') return link.correlation;
  const [a, b] = link.by === 'like' ? link.pair : [measure, link.to];
  const sign = link.by === 'sum' ? 1 : -1;
  return (sign * (sd(link.row) ** 2 - sd(a) ** 2 - sd(b) ** 2)) / (2 * sd(a) * sd(b));
}

import type { Sex } from './sex.ts';
import { surveyLine } from './survey-estimate.ts';
import { LINKS, linkCorrelation, PERSON_MEASURES, type PersonMeasure } from './survey-links.ts';
import { combine, covarianceOf, exactly, type Uncertain, uncertain, varianceOf } from './uncertain.ts';

/** A person of whom the stature is known: it and what the survey then says of every measure, with shared doubts, metres. */
export type SurveyPerson = Readonly<Record<PersonMeasure | 'stature', Uncertain>>;

/** Name of the doubt in the stature itself. */
const STATURE_SOURCE = 'stature';

/**
 * The survey's person of a stature, by one table: every measure is its line at that stature, plus a share of the
 * departures of the measures it hangs on, plus a departure of its own, so that variances and linked covariances are
 * the survey's. `spread` multiplies all departures (1 for an adult).
 */
export function surveyPerson(
  stature: { readonly value: number; readonly sd: number },
  sex: Sex,
  spread: number,
): SurveyPerson {
  const departures: Partial<Record<PersonMeasure, Uncertain>> = {};
  const statureError = uncertain(0, stature.sd, STATURE_SOURCE);
  const measures: Partial<Record<PersonMeasure, Uncertain>> = {};
  for (const measure of PERSON_MEASURES) {
    const line = surveyLine(measure, stature.value, sex);
    const departure = departureOf(measure, { sd: line.sd * spread, sex, earlier: departures });
    departures[measure] = departure;
    measures[measure] = combine([
      [1, exactly(line.value)],
      [line.slope, statureError],
      [1, departure],
    ]);
  }
  return {
    ...(measures as Record<PersonMeasure, Uncertain>),
    stature: combine([
      [1, exactly(stature.value)],
      [1, statureError],
    ]),
  };
}

interface DepartureContext {
  readonly sd: number;
  readonly sex: Sex;
  readonly earlier: Readonly<Partial<Record<PersonMeasure, Uncertain>>>;
}

/** A measure's departure: its share of the departures it hangs on, and the rest as a source of its own. */
function departureOf(measure: PersonMeasure, context: DepartureContext): Uncertain {
  const links = LINKS[measure];
  const parents = links.map((link) => context.earlier[link.to]!);
  const weights = weightsOf(measure, parents, context);
  const explained = combine(parents.map((parent, i) => [weights[i]!, parent] as const));
  const rest = Math.max(0, context.sd ** 2 - varianceOf(explained));
  return combine([
    [1, explained],
    [1, uncertain(0, Math.sqrt(rest), measure)],
  ]);
}

function weightsOf(
  measure: PersonMeasure,
  parents: readonly Uncertain[],
  context: DepartureContext,
): number[] {
  const links = LINKS[measure];
  const tied = links.filter((link) => link.by !== 'part');
  if (tied.length < links.length) return links.map((link) => (link.by === 'part' ? link.weight : 0));
  const covariances = tied.map(
    (link, i) =>
      linkCorrelation(measure, link, context.sex) * context.sd * Math.sqrt(varianceOf(parents[i]!)),
  );
  return solveSmall(parents, covariances);
}

/** Weights w with Σⱼ cov(parentᵢ, parentⱼ) wⱼ = covarianceᵢ, for none, one or two parents. */
function solveSmall(parents: readonly Uncertain[], covariances: readonly number[]): number[] {
  const [a, b] = parents;
  const [ca, cb] = covariances;
  if (a === undefined || ca === undefined) return [];
  if (b === undefined || cb === undefined) return [ca / varianceOf(a)];
  const [aa, bb, ab] = [varianceOf(a), varianceOf(b), covarianceOf(a, b)];
  const det = aa * bb - ab * ab;
  return [(ca * bb - cb * ab) / det, (cb * aa - ca * ab) / det];
}

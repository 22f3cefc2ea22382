import { juniorShift } from './growth-proportion.ts';
import { PERSON_MEASURES, type PersonMeasure } from './person-measures.ts';
import type { Sex } from './sex.ts';
import { SURVEY_MODELS, type SurveyModel, type SurveyModels } from './survey-model.ts';
import { combine, exactly, type Uncertain, uncertain } from './uncertain.ts';

/** A person's stature and every measure that the survey expects at it, with shared doubts, metres. */
export type SurveyPerson = Readonly<Record<PersonMeasure | 'stature', Uncertain>>;

/** What a survey's person is known by. */
export interface KnownPerson {
  /** Metres. */
  readonly stature: number;
  /** One standard deviation of the stature, metres. */
  readonly statureSd: number;
  /** Kilograms. Null: not known, the usual mass for the stature is taken, with its spread. */
  readonly mass: number | null;
  /** One standard deviation of the mass, kilograms. */
  readonly massSd: number;
  /** Factor on all departures from the survey's lines: 1 for an adult. */
  readonly spread: number;
  /** Whole years. Null: not known, an adult is assumed. */
  readonly ageYears: number | null;
}

/**
 * A person by one of the survey's tables. Every measure is its line at that stature and mass, plus the errors of both and a
 * departure from the line. Departures have the survey's spread and correlations. A junior's legs and sitting height are shifted
 * for age, see `juniorShift`.
 */
export function surveyPerson(
  known: KnownPerson,
  sex: Sex,
  models: SurveyModels = SURVEY_MODELS,
): SurveyPerson {
  const model = models[sex];
  const stature = uncertain(known.stature, known.statureSd, 'stature');
  const mass = massOf(known, model);
  const shift = juniorShift(known, sex, model, mass.mean);
  const measures = PERSON_MEASURES.map((measure): [PersonMeasure, Uncertain] => {
    const line = model.line(measure, known.stature, mass.mean);
    return [
      measure,
      combine([
        [1, exactly(line.value + (shift[measure] ?? 0))],
        [line.perMetre, withoutMean(stature)],
        [line.perKg, withoutMean(mass)],
        [line.sd * known.spread, departure(measure, model)],
      ]),
    ];
  });
  return { ...(Object.fromEntries(measures) as Record<PersonMeasure, Uncertain>), stature };
}

/** The mass with its doubt, kilograms: as given, or the usual one for the stature. */
function massOf({ stature, statureSd, mass, massSd, spread }: KnownPerson, model: SurveyModel): Uncertain {
  if (mass !== null) return uncertain(mass, massSd, 'mass');
  const usual = model.massFor(stature);
  return { mean: usual.value, sources: { stature: usual.perMetre * statureSd, mass: usual.sd * spread } };
}

/** The doubt of a value alone. */
const withoutMean = ({ sources }: Uncertain): Uncertain => ({ mean: 0, sources });

/** A unit departure from the line of a measure, correlated with the departures of all others. */
function departure(measure: PersonMeasure, { root }: SurveyModel): Uncertain {
  const i = PERSON_MEASURES.indexOf(measure);
  const sources = PERSON_MEASURES.map((source, k) => [source, root[k]?.[i] ?? 0] as const);
  return { mean: 0, sources: Object.fromEntries(sources.filter(([, reach]) => reach)) };
}

import {
  type Athlete,
  athleteSchema,
  CONSENTS,
  type Consent,
  type TapeMeasure,
} from '../../../core/document/athlete-schema.ts';
import { ageOn } from '../../../core/units/age.ts';
import { today } from '../../language/dates.ts';
import { say } from '../../language/messages.ts';
import { bandProblem } from '../../ui/fields/band-edges.ts';
import type { FormRules } from '../../ui/form/form-rules.ts';

/** What the athlete's form holds while it is being filled in. Metres, kilograms, degrees. */
export interface AthleteValues {
  readonly name: string;
  readonly sex: Athlete['sex'];
  readonly bornOn: string;
  readonly side: Athlete['side'] | null;
  readonly statureM: number | null;
  readonly massKg: number | null;
  readonly measuredOn: string;
  /** Knee breadth across the bone, metres; null if not measured. */
  readonly kneeBreadthM: number | null;
  readonly tape: Athlete['tape'];
  readonly limits: readonly {
    joint: Athlete['limits'][number]['joint'];
    maxDeg: number | null;
    reason: string;
  }[];
  readonly bands: readonly NonNullable<Athlete['bands']>[number][];
  /** Empty texts where a consent is not noted. */
  readonly consent: Readonly<Record<Consent, { readonly by: string; readonly on: string }>>;
}

/** Values to begin with: those of an athlete, or blank ones. */
export function athleteValues(athlete: Athlete | null): AthleteValues {
  return {
    name: athlete?.name ?? '',
    sex: athlete?.sex ?? 'unspecified',
    bornOn: athlete?.bornOn ?? '',
    side: athlete?.side ?? null,
    statureM: athlete?.statureM ?? null,
    massKg: athlete?.massKg ?? null,
    measuredOn: athlete ? (athlete.measuredOn ?? '') : today(),
    kneeBreadthM: athlete?.kneeBreadthM ?? null,
    tape: athlete?.tape ?? {},
    limits: athlete?.limits ?? [],
    bands: athlete?.bands ?? [],
    consent: {
      bodyData: athlete?.consent?.bodyData ?? NOT_NOTED,
      photographs: athlete?.consent?.photographs ?? NOT_NOTED,
    },
  };
}

const NOT_NOTED = { by: '', on: '' };

/** What an athlete has that the form does not ask for: saving the form must not remove it. */
export function unasked(athlete: Athlete | undefined): Pick<Athlete, 'neutral'> {
  return athlete?.neutral ? { neutral: athlete.neutral } : {};
}

/**
 * The values that change with a change. A changed body is one measured today, unless the day is changed too: the figures of the
 * earlier day stay what they were.
 */
export function valuesWithChange(
  values: AthleteValues,
  part: Partial<AthleteValues>,
  kept: Athlete | null,
): Partial<AthleteValues> {
  const body = part.statureM !== undefined || part.massKg !== undefined;
  const untouched = kept !== null && values.measuredOn === (kept.measuredOn ?? '');
  return body && untouched && part.measuredOn === undefined ? { ...part, measuredOn: today() } : part;
}

/** The tape measures with one of them set, on the day of measuring, or taken away. */
export function withTape(
  values: AthleteValues,
  measure: TapeMeasure,
  valueM: number | null,
): Athlete['tape'] {
  const { [measure]: before, ...rest } = values.tape;
  if (valueM === null) return rest;
  if (before?.valueM === valueM) return values.tape;
  const takenOn = values.measuredOn || undefined;
  return { ...rest, [measure]: takenOn ? { valueM, takenOn } : { valueM } };
}

/** What an athlete's form asks: the document's schema, days that have come, whole consents, bands with edges. */
export const ATHLETE_RULES: FormRules<AthleteValues, Athlete> = {
  schema: athleteSchema,
  documentOf: ({ bornOn, measuredOn, bands, consent, kneeBreadthM, ...rest }) => ({
    ...rest,
    ...(kneeBreadthM === null ? {} : { kneeBreadthM }),
    ...(bornOn ? { bornOn } : {}),
    ...(measuredOn ? { measuredOn } : {}),
    ...(bands.length > 0 ? { bands } : {}),
    ...(CONSENTS.some((one) => consent[one].by) ? { consent: notedConsents(consent) } : {}),
  }),
  check: ({ consent, bands, bornOn, measuredOn }) => ({
    ...halfConsents(consent),
    ...wrongBands(bands),
    ...daysAhead({ bornOn, measuredOn }),
    ...(bornOn !== '' && ageOn(bornOn, today()) > OLDEST ? { bornOn: say('field.date-past') } : {}),
  }),
  wordsFor: (path) => (DATES.test(path) ? say('field.date-wrong') : null),
};

/** Nobody is older, years: a year was mistyped. */
const OLDEST = 120;

const DATES = /^(bornOn|measuredOn|consent\.\w+\.on)$/;

function notedConsents(consent: AthleteValues['consent']): Athlete['consent'] {
  return Object.fromEntries(CONSENTS.filter((one) => consent[one].by).map((one) => [one, consent[one]]));
}

/** Days that have not come yet. */
function daysAhead(days: Readonly<Record<string, string>>): Record<string, string> {
  const ahead = Object.keys(days).filter((field) => (days[field] ?? '') > today());
  return Object.fromEntries(ahead.map((field) => [field, say('field.date-ahead')]));
}

/** A consent needs both who gave it and on which day. */
function halfConsents(consent: AthleteValues['consent']): Record<string, string> {
  const half = CONSENTS.filter((one) => (consent[one].by.trim() === '') !== (consent[one].on === ''));
  return Object.fromEntries(
    half.map((one) => [`consent.${one}.${consent[one].on === '' ? 'on' : 'by'}`, say('consent.half')]),
  );
}

function wrongBands(bands: AthleteValues['bands']): Record<string, string> {
  const problems: Record<string, string> = {};
  for (const [i, band] of bands.entries()) {
    const problem = bandProblem(band);
    if (problem) problems[`bands.${i}`] = problem;
  }
  return problems;
}

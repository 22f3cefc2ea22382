import {
  type Athlete,
  athleteSchema,
  CONSENTS,
  type Consent,
  type TapeMeasure,
} from '../../../core/fit/athlete-schema.ts';
import { today } from '../../language/dates.ts';
import { say } from '../../language/messages.ts';

/** What the athlete's form holds while it is being filled in. Metres, kilograms, degrees. */
export interface AthleteEntries {
  readonly name: string;
  readonly sex: Athlete['sex'];
  readonly bornOn: string;
  readonly side: Athlete['side'] | null;
  readonly statureM: number | null;
  readonly massKg: number | null;
  readonly measuredOn: string;
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

/** Entries to begin with: those of an athlete, or blank ones. */
export function entriesOf(athlete: Athlete | null): AthleteEntries {
  return {
    name: athlete?.name ?? '',
    sex: athlete?.sex ?? 'unspecified',
    bornOn: athlete?.bornOn ?? '',
    side: athlete?.side ?? null,
    statureM: athlete?.statureM ?? null,
    massKg: athlete?.massKg ?? null,
    measuredOn: athlete ? (athlete.measuredOn ?? '') : today(),
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

/**
 * The entries after a change. A changed body is one measured today, unless the day is changed too: the figures of the
 * earlier day stay what they were.
 */
export function withChange(
  entries: AthleteEntries,
  part: Partial<AthleteEntries>,
  kept: Athlete | null,
): Partial<AthleteEntries> {
  const body = part.statureM !== undefined || part.massKg !== undefined;
  const untouched = kept !== null && entries.measuredOn === (kept.measuredOn ?? '');
  return body && untouched && part.measuredOn === undefined ? { ...part, measuredOn: today() } : part;
}

/** The tape measures with one of them set, on the day of measuring, or taken away. */
export function withTape(
  entries: AthleteEntries,
  measure: TapeMeasure,
  valueM: number | null,
): Athlete['tape'] {
  const { [measure]: before, ...rest } = entries.tape;
  if (valueM === null) return rest;
  if (before?.valueM === valueM) return entries.tape;
  const takenOn = entries.measuredOn || undefined;
  return { ...rest, [measure]: takenOn ? { valueM, takenOn } : { valueM } };
}

/** The athlete that the entries describe, or what is still wrong, by field. */
export function athleteOf(
  entries: AthleteEntries,
  id: string | undefined,
): { athlete: Athlete } | { problems: Readonly<Record<string, string>> } {
  const { bornOn, measuredOn, bands, consent, ...rest } = entries;
  const problems: Record<string, string> = {
    ...halfConsents(consent),
    ...wrongBands(bands),
    ...daysAhead({ bornOn, measuredOn }),
  };
  const parsed = athleteSchema.safeParse({
    ...rest,
    ...(id ? { id } : {}),
    ...(bornOn ? { bornOn } : {}),
    ...(measuredOn ? { measuredOn } : {}),
    ...(bands.length > 0 ? { bands } : {}),
    ...(CONSENTS.some((one) => consent[one].by) ? { consent: notedConsents(consent) } : {}),
  });
  if (parsed.success && Object.keys(problems).length === 0) return { athlete: parsed.data };
  for (const { path } of parsed.error?.issues ?? []) {
    const field = path.join('.');
    problems[field] ??= say(DATES.test(field) ? 'field.date-wrong' : 'field.needed');
  }
  return { problems };
}

const DATES = /^(bornOn|measuredOn|consent\.\w+\.on)$/;

function notedConsents(consent: AthleteEntries['consent']): Athlete['consent'] {
  return Object.fromEntries(CONSENTS.filter((one) => consent[one].by).map((one) => [one, consent[one]]));
}

/** Days that have not come yet. */
function daysAhead(days: Readonly<Record<string, string>>): Record<string, string> {
  const ahead = Object.keys(days).filter((field) => (days[field] ?? '') > today());
  return Object.fromEntries(ahead.map((field) => [field, say('field.date-ahead')]));
}

/** A consent needs both who gave it and on which day. */
function halfConsents(consent: AthleteEntries['consent']): Record<string, string> {
  const half = CONSENTS.filter((one) => (consent[one].by.trim() === '') !== (consent[one].on === ''));
  return Object.fromEntries(
    half.map((one) => [`consent.${one}.${consent[one].on === '' ? 'on' : 'by'}`, say('consent.half')]),
  );
}

/** A band needs an edge, and two edges their order. */
function wrongBands(bands: AthleteEntries['bands']): Record<string, string> {
  const problems: Record<string, string> = {};
  for (const [i, { min, max }] of bands.entries()) {
    if (min === null && max === null) problems[`bands.${i}`] = say('athlete-bands.empty');
    else if (min !== null && max !== null && min >= max) problems[`bands.${i}`] = say('athlete-bands.turned');
  }
  return problems;
}

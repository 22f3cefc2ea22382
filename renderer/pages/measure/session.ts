import { FIRST_TAPES } from '../../../core/body/measuring.ts';
import { type RepeatedReading, repeatedReading } from '../../../core/body/repeated-reading.ts';
import { type TapePerson, type TapePlace, tapePercentile } from '../../../core/body/tape-percentile.ts';
import { type Athlete, TAPE_MEASURES, type TapeMeasure } from '../../../core/document/athlete-schema.ts';
import { type BodySlip, bodySlips } from '../../../core/growth/body-change.ts';
import { grownAthlete } from '../../../core/growth/grown-athlete.ts';
import { ageOn } from '../../../core/units/age.ts';

/** What a measuring session holds while it goes on. Metres, kilograms. */
export interface MeasuringSession {
  readonly takenOn: string;
  readonly statureM: number | null;
  readonly massKg: number | null;
  readonly readings: Readonly<Partial<Record<TapeMeasure, readonly (number | null)[]>>>;
  /** Unusual values that somebody said to keep anyway, by what they are of. */
  readonly keptAnyway: readonly string[];
}

/** The steps of a session: the body, the tapes, and the review. */
export type Step = 'body' | TapeMeasure | 'end';

/** The six that say most, and the others. */
export const OTHER_TAPES: readonly TapeMeasure[] = TAPE_MEASURES.filter(
  (measure) => !FIRST_TAPES.includes(measure),
);
export const STEPS: readonly Step[] = ['body', ...FIRST_TAPES, ...OTHER_TAPES, 'end'];

/** After the six only the review is necessary. */
export function stepAfter(step: Step): Step {
  if (step === FIRST_TAPES.at(-1)) return 'end';
  return STEPS[STEPS.indexOf(step) + 1] ?? 'end';
}

/** A session that begins: nothing measured yet, but for stature and mass of somebody put in on the same day. */
export function beginSession(today: string, athlete?: Athlete): MeasuringSession {
  const known = athlete?.measuredOn === today ? athlete : null;
  const body = { statureM: known?.statureM ?? null, massKg: known?.massKg ?? null };
  return { takenOn: today, ...body, readings: {}, keptAnyway: [] };
}

/** How an unusual value is remembered once it is kept anyway: another value asks again. */
export function oddName(of: TapeMeasure | 'statureM' | 'massKg', value: number): string {
  return `${of} ${value.toFixed(4)}`;
}

/** Stature and mass as far as they count: unusual ones only once kept anyway. */
export function countedBody(session: MeasuringSession, athlete: Athlete) {
  const slips = slipsOf(session, athlete);
  const counts = (of: 'statureM' | 'massKg', odd: boolean) => {
    const value = session[of];
    return value !== null && odd && !session.keptAnyway.includes(oddName(of, value)) ? null : value;
  };
  return {
    statureM: counts('statureM', slips.includes('shrunk') || slips.includes('shot-up')),
    massKg: counts('massKg', slips.includes('mass-jumped')),
  };
}

/** What is odd about the session's stature and mass beside the athlete's last ones; nothing beside later ones. */
export function slipsOf({ takenOn, statureM, massKg }: MeasuringSession, athlete: Athlete): BodySlip[] {
  const { measuredOn } = athlete;
  if (!measuredOn || takenOn < measuredOn) return [];
  return bodySlips({ ...athlete, takenOn: measuredOn }, { takenOn, statureM, massKg });
}

/** Whom the tapes are read of: the session's own stature and mass if they count, else the athlete's. */
export function tapePerson(session: MeasuringSession, athlete: Athlete): TapePerson {
  const { statureM, massKg } = countedBody(session, athlete);
  return {
    stature: statureM ?? athlete.statureM,
    mass: massKg ?? athlete.massKg,
    sex: athlete.sex,
    ageYears: athlete.bornOn ? ageOn(athlete.bornOn, session.takenOn) : null,
  };
}

/** One measure in a session. */
export interface SessionTape {
  readonly read: RepeatedReading | null;
  readonly counted: readonly number[];
  /** Unusual readings that do not count yet, and what would be usual. */
  readonly odd: readonly { readonly value: number; readonly place: TapePlace }[];
}

/** What the readings of one measure come to. */
export function tapeTaken(session: MeasuringSession, measure: TapeMeasure, person: TapePerson): SessionTape {
  const values = (session.readings[measure] ?? []).filter((value) => value !== null);
  const judged = values.map((value) => ({ value, place: tapePercentile(measure, value, person) }));
  const odd = judged.filter(
    ({ value, place }) => !place.usual && !session.keptAnyway.includes(oddName(measure, value)),
  );
  const counted = values.filter((value) => !odd.some((one) => one.value === value));
  return { read: repeatedReading(measure, counted), counted, odd };
}

/** Whether the readings of a measure are too far apart, so that one more is wanted. One reading alone will do. */
export const isFarApart = ({ read, counted }: SessionTape): boolean =>
  read !== null && counted.length > 1 && read.another;

/**
 * Everything that a session comes to: what counts of stature, mass and tapes, which tapes were left odd, and which have
 * readings too far apart.
 */
export function sessionResult(session: MeasuringSession, athlete: Athlete) {
  const person = tapePerson(session, athlete);
  const taken = TAPE_MEASURES.map((measure) => ({ measure, ...tapeTaken(session, measure, person) }));
  const tape: Athlete['tape'] = {};
  for (const { measure, read } of taken) {
    if (read) tape[measure] = { valueM: tidy(read.valueM), sdM: tidy(read.sdM), takenOn: session.takenOn };
  }
  return {
    ...countedBody(session, athlete),
    tape,
    left: taken.filter(({ odd }) => odd.length > 0),
    apart: taken.filter(isFarApart),
  };
}

/** A tenth of a millimetre: a mean of readings has no truer digits. */
const tidy = (valueM: number) => Number(valueM.toFixed(4));

/** Growth below this leaves the earlier tape measures as they are, metres: the doubt of a stature. */
const GROWN_M = 0.006;

/**
 * The athlete as measured in the session. Tape measures that were not taken are kept, and carried along where the body has
 * grown since.
 */
export function athleteAfter(session: MeasuringSession, athlete: Athlete): Athlete {
  const { statureM, massKg, tape } = sessionResult(session, athlete);
  const now = {
    statureM: statureM ?? athlete.statureM,
    massKg: massKg ?? athlete.massKg,
    measuredOn: session.takenOn,
  };
  const grown = hasGrown(session, athlete) ? grownAthlete(athlete, now) : { ...athlete, ...now };
  return { ...grown, tape: { ...grown.tape, ...tape } };
}

/** Whether earlier tape measures are carried along with growth. */
export function hasGrown(session: MeasuringSession, athlete: Athlete): boolean {
  const { statureM } = countedBody(session, athlete);
  return statureM !== null && Math.abs(statureM - athlete.statureM) > GROWN_M;
}

/** Whether the session lies before the athlete's last measuring: it then belongs to the history only. */
export function isEarlier({ takenOn }: MeasuringSession, { measuredOn }: Athlete): boolean {
  return measuredOn !== undefined && takenOn < measuredOn;
}

import { type Athlete, athleteSchema, type TapeMeasure } from '../../../core/fit/athlete-schema.ts';
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
    measuredOn: athlete?.measuredOn ?? today(),
    tape: athlete?.tape ?? {},
    limits: athlete?.limits ?? [],
  };
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
  const { bornOn, measuredOn, ...rest } = entries;
  const parsed = athleteSchema.safeParse({
    ...rest,
    ...(id ? { id } : {}),
    ...(bornOn ? { bornOn } : {}),
    ...(measuredOn ? { measuredOn } : {}),
  });
  if (parsed.success) return { athlete: parsed.data };
  const problems: Record<string, string> = {};
  for (const { path } of parsed.error.issues) {
    const field = path.join('.');
    problems[field] ??= say(
      field === 'bornOn' || field === 'measuredOn' ? 'field.date-wrong' : 'field.needed',
    );
  }
  return { problems };
}

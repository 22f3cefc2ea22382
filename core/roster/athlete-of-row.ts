import { type Athlete, athleteSchema, TAPE_MEASURES } from '../document/athlete-schema.ts';
import type { AthleteField } from './athlete-columns.ts';
import type { RowValues } from './row-values.ts';

/**
 * The athlete that a sound row describes: `before` with what the row says, or somebody new. A new figure without a date is of
 * `today`, `YYYY-MM-DD`; metres and kilograms.
 */
export function athleteOfRow(values: RowValues, before: Athlete | null, today: string): Athlete {
  const text = (of: AthleteField['of']) => (values.get(of) as string | null) ?? undefined;
  const kept = (of: 'stature' | 'mass', was: number | undefined) => {
    const value = values.get(of) as number | null;
    return value === null || isSame(value, was) ? was : value;
  };
  const statureM = kept('stature', before?.statureM);
  const massKg = kept('mass', before?.massKg);
  const said = text('measuredOn');
  const tape = tapeOfRow(values, before?.tape ?? {}, said ?? today);
  const sameBody = before !== null && statureM === before.statureM && massKg === before.massKg && tape.same;
  const measuredOn = said ?? (sameBody ? before.measuredOn : today);
  return athleteSchema.parse({
    ...before,
    // A row found by its name does not spell it again; only the identifier can say that a name has changed.
    name: before && values.get('id') === null ? before.name : (text('name') ?? before?.name),
    side: text('side') ?? before?.side,
    sex: text('sex') ?? before?.sex ?? 'unspecified',
    bornOn: text('bornOn') ?? before?.bornOn,
    statureM,
    massKg,
    ...(measuredOn ? { measuredOn } : {}),
    tape: tape.tape,
  });
}

/** The tape measures after a row: a value that is new is of `day`, and what was known of the old one's spread goes. */
function tapeOfRow(values: RowValues, before: Athlete['tape'], day: string) {
  const tape: Athlete['tape'] = { ...before };
  let same = true;
  for (const measure of TAPE_MEASURES) {
    const value = values.get('tape', measure) as number | null;
    if (value === null) continue;
    const was = before[measure];
    const unchanged = isSame(value, was?.valueM);
    const sdM = (values.get('spread', measure) as number | null) ?? (unchanged ? was?.sdM : undefined);
    const takenOn = (values.get('takenOn', measure) as string | null) ?? (unchanged ? was?.takenOn : day);
    tape[measure] = {
      valueM: unchanged ? was!.valueM : value,
      ...(sdM === undefined ? {} : { sdM: isSame(sdM, was?.sdM) ? was!.sdM! : sdM }),
      ...(takenOn ? { takenOn } : {}),
    };
    same &&= unchanged;
  }
  return { tape, same };
}

/** Values nearer than this are one: a micrometre, a milligram. */
const SAME = 1e-6;

/** Whether two values of a column are one, numbers up to what a way through a file may add. */
export function isSame(a: string | number | undefined, b: string | number | undefined): boolean {
  return typeof a === 'number' && typeof b === 'number' ? Math.abs(a - b) < SAME : a === b;
}

import { type Athlete, athleteSchema, TAPE_MEASURES, type TapeMeasure } from '../fit/athlete-schema.ts';
import { type AthleteColumn, type AthleteField, type ReadHeading, readHeadings } from './athlete-columns.ts';
import { type CellProblem, readAthleteCell } from './read-athlete-cell.ts';

/** A cell that cannot be taken as it stands. */
export interface BadCell {
  /** Number of the row in the table, the headings being row 1. */
  readonly row: number;
  /** Place of its column, from 0; null where the column is not in the table at all. */
  readonly index: number | null;
  readonly column: AthleteColumn;
  readonly text: string;
  readonly problem: CellProblem;
}

/** What one row of the table would do. */
export interface AthleteRow {
  readonly row: number;
  /** As the row says it; empty where it does not. */
  readonly name: string;
  readonly bad: readonly BadCell[];
  /** Null where a cell is bad: nothing of such a row is taken. */
  readonly outcome: RowOutcome | null;
}

export type RowOutcome =
  | { readonly kind: 'new'; readonly athlete: Athlete }
  | { readonly kind: 'changed'; readonly athlete: Athlete; readonly changed: readonly AthleteColumn[] }
  | { readonly kind: 'same'; readonly athlete: Athlete };

/** A table of athletes as read; nothing has been changed yet. */
export type AthletesTable =
  /** No row can be read: the table has no column of names. */
  | { readonly kind: 'no-names'; readonly headings: readonly (ReadHeading | null)[] }
  | {
      readonly kind: 'read';
      /** Headings that are not known: their columns are left out. */
      readonly leftOut: readonly Extract<ReadHeading, { ok: false }>[];
      readonly rows: readonly AthleteRow[];
    };

/** What the table is read against. */
export interface Known {
  readonly athletes: readonly (Athlete & { readonly id: string })[];
  /** Stands as the day of measuring where a row brings new figures and no date, `YYYY-MM-DD`. */
  readonly today: string;
}

/**
 * Reads rows of text cells, headings first, as athletes. A row is one that is known when its identifier or else its name
 * says so; then empty cells leave what is known, and so does everything that has no column (limits, bands, consents). Else it
 * is somebody new, who needs name, side, stature and mass. Rows without any text are passed over.
 */
export function athletesFromTable(cells: readonly (readonly string[])[], known: Known): AthletesTable {
  const headings = readHeadings(cells[0] ?? []);
  const columns = headings.map((heading) => (heading?.ok ? heading.column : null));
  if (!columns.some((column) => column?.field.of === 'name')) return { kind: 'no-names', headings };
  const seen = new Map<string, number>();
  const rows = cells.slice(1).flatMap((texts, i): AthleteRow[] => {
    if (texts.every((text) => text.trim() === '')) return [];
    return [readRow({ row: i + 2, columns, texts }, known, seen)];
  });
  return { kind: 'read', leftOut: headings.filter((heading) => heading?.ok === false), rows };
}

interface RowCells {
  readonly row: number;
  readonly columns: readonly (AthleteColumn | null)[];
  readonly texts: readonly string[];
}

/** A row's cells by field: what was read, and where it stood. */
interface Values {
  get(of: AthleteField['of'], measure?: TapeMeasure): string | number | null;
  readonly bad: BadCell[];
  /** Calls one of a row's cells bad after all, or one that the table does not have. */
  blame(of: AthleteField['of'], problem: CellProblem): void;
}

const keyOf = (of: AthleteField['of'], measure?: TapeMeasure) => (measure ? `${of} ${measure}` : of);
const keyOfField = (field: AthleteField) => keyOf(field.of, 'measure' in field ? field.measure : undefined);

function readValues({ row, columns, texts }: RowCells): Values {
  const values = new Map<string, string | number | null>();
  const bad: BadCell[] = [];
  columns.forEach((column, index) => {
    if (!column) return;
    const text = texts[index] ?? '';
    const read = readAthleteCell(text, column);
    if (read.ok) values.set(keyOfField(column.field), read.value);
    else bad.push({ row, index, column, text, problem: read.problem });
  });
  return {
    get: (of, measure) => values.get(keyOf(of, measure)) ?? null,
    bad,
    blame(of, problem) {
      const at = columns.findIndex((column) => column?.field.of === of);
      const index = at < 0 ? null : at;
      if (bad.some((cell) => cell.column.field.of === of)) return;
      const column = columns[at] ?? { field: { of } as AthleteField, name: NAMES[of] ?? of, unit: null };
      bad.push({ row, index, column, text: (index === null ? undefined : texts[index]) ?? '', problem });
    },
  };
}

/** Names of columns that a table may lack though a new athlete needs them. */
const NAMES: Partial<Record<AthleteField['of'], string>> = {
  name: 'Name',
  side: 'Side',
  stature: 'Stature',
  mass: 'Mass',
};

/** With these it cannot be told whose row it is, so that nothing else can be called missing. */
const WHO_IS_UNCLEAR: readonly CellProblem['code'][] = ['unknown-identifier', 'several-of-this-name'];

function readRow(cells: RowCells, known: Known, seen: Map<string, number>): AthleteRow {
  const values = readValues(cells);
  const before = whoIsMeant(values, known);
  const name = String(values.get('name') ?? before?.name ?? '');
  noteTwice({ values, who: before?.id ?? plainName(name), row: cells.row, seen });
  if (!before && values.bad.every(({ problem }) => !WHO_IS_UNCLEAR.includes(problem.code))) needAll(values);
  const done = (outcome: RowOutcome | null) => ({ row: cells.row, name, bad: values.bad, outcome });
  if (values.bad.length > 0) return done(null);
  const athlete = athleteOfRow(values, before, known.today);
  if (!before) return done({ kind: 'new', athlete });
  const changed = cells.columns.filter(
    (column) => column !== null && !isSame(shownIn(before, column.field), shownIn(athlete, column.field)),
  ) as AthleteColumn[];
  return done(changed.length > 0 ? { kind: 'changed', athlete, changed } : { kind: 'same', athlete });
}

/** The known athlete that a row speaks of; null for somebody new, or where that cannot be told (the row is then bad). */
function whoIsMeant(values: Values, { athletes }: Known): (Athlete & { readonly id: string }) | null {
  const id = values.get('id');
  if (id !== null) {
    const found = athletes.find((athlete) => athlete.id === id);
    if (!found) values.blame('id', { code: 'unknown-identifier' });
    return found ?? null;
  }
  const name = plainName(String(values.get('name') ?? ''));
  const ofName = name === '' ? [] : athletes.filter((athlete) => plainName(athlete.name) === name);
  if (ofName.length > 1) values.blame('name', { code: 'several-of-this-name' });
  return ofName[0] ?? null;
}

/** Names are one when they differ only in letter case and spacing. */
function plainName(name: string): string {
  return name.normalize('NFC').toLowerCase().replace(/\s+/g, ' ').trim();
}

function noteTwice({
  values,
  who,
  row,
  seen,
}: {
  values: Values;
  who: string;
  row: number;
  seen: Map<string, number>;
}) {
  if (who === '') return;
  const first = seen.get(who);
  if (first !== undefined) values.blame('name', { code: 'same-as-row', row: first });
  else seen.set(who, row);
}

function needAll(values: Values): void {
  for (const of of ['name', 'side', 'stature', 'mass'] as const) {
    if (values.get(of) === null) values.blame(of, { code: 'needed' });
  }
}

function athleteOfRow(values: Values, before: Athlete | null, today: string): Athlete {
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
    // A row found by its name does not spell it anew; only the identifier can say that a name has changed.
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
function tapeOfRow(values: Values, before: Athlete['tape'], day: string) {
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

/** What a column shows of an athlete. */
function shownIn(athlete: Athlete, field: AthleteField): string | number | undefined {
  switch (field.of) {
    case 'stature':
      return athlete.statureM;
    case 'mass':
      return athlete.massKg;
    case 'tape':
      return athlete.tape[field.measure]?.valueM;
    case 'spread':
      return athlete.tape[field.measure]?.sdM;
    case 'takenOn':
      return athlete.tape[field.measure]?.takenOn;
    default:
      return athlete[field.of];
  }
}

/** Values nearer than this are one: a micrometre, a milligram. */
const SAME = 1e-6;

function isSame(a: string | number | undefined, b: string | number | undefined): boolean {
  return typeof a === 'number' && typeof b === 'number' ? Math.abs(a - b) < SAME : a === b;
}

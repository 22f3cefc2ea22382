import type { Athlete } from '../document/athlete-schema.ts';
import { type AthleteColumn, type AthleteField, type ReadHeading, readHeadings } from './athlete-columns.ts';
import { athleteOfRow, isSame } from './athlete-of-row.ts';
import type { CellProblem } from './read-athlete-cell.ts';
import { type BadCell, type RowCells, type RowValues, readValues } from './row-values.ts';

/** What one row of the table would do. */
export interface AthleteRow {
  /** Counted as a spreadsheet does: the headings are row 1. */
  readonly row: number;
  /** As the row says it; empty where it does not. */
  readonly name: string;
  /** Every cell that cannot be taken, with why. */
  readonly bad: readonly BadCell[];
  /** Null where a cell is bad: nothing of such a row is taken. */
  readonly outcome: RowOutcome | null;
}

/** What taking the row would do: somebody new, columns changed of somebody known, or nothing. */
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
  /** Everybody there is now, by identifier. */
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

/** With these it cannot be told whose row it is, so that nothing else can be called missing. */
const WHO_IS_UNCLEAR: readonly CellProblem['code'][] = ['unknown-identifier', 'several-of-this-name'];

/** Reads one row against who is known. All that is wrong with it is reported at once. */
function readRow(cells: RowCells, known: Known, seen: Map<string, number>): AthleteRow {
  const values = readValues(cells, known.today);
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
function whoIsMeant(values: RowValues, { athletes }: Known): (Athlete & { readonly id: string }) | null {
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

/** Calls a row bad that speaks of somebody whom an earlier row spoke of. */
function noteTwice({
  values,
  who,
  row,
  seen,
}: {
  values: RowValues;
  who: string;
  row: number;
  seen: Map<string, number>;
}) {
  if (who === '') return;
  const first = seen.get(who);
  if (first !== undefined) values.blame('name', { code: 'same-as-row', row: first });
  else seen.set(who, row);
}

/** Somebody new needs a name, a side, stature and mass. */
function needAll(values: RowValues): void {
  for (const field of ['name', 'side', 'stature', 'mass'] as const) {
    if (values.get(field) === null) values.blame(field, { code: 'needed' });
  }
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

import type { TapeMeasure } from '../document/athlete-schema.ts';
import type { AthleteColumn, AthleteField } from './athlete-columns.ts';
import { type CellProblem, type ReadCell, readAthleteCell } from './read-athlete-cell.ts';

/** A cell that cannot be taken as it stands. */
export interface BadCell {
  /** Number of the row in the table, the headings being row 1. */
  readonly row: number;
  /** Place of its column, from 0; null where the column is not in the table at all. */
  readonly index: number | null;
  readonly column: AthleteColumn;
  /** The cell as it stands. */
  readonly text: string;
  /** Why it cannot be taken. */
  readonly problem: CellProblem;
}

/** A row as it stands in the table, under the columns that its headings name. */
export interface RowCells {
  /** As the table's own rows are numbered. */
  readonly row: number;
  /** Null where a heading is not known: the cell is passed over. */
  readonly columns: readonly (AthleteColumn | null)[];
  /** As many as the table has columns; short rows are filled with nothing. */
  readonly texts: readonly string[];
}

/** A row's cells by field: what was read, and where it stood. */
export interface RowValues {
  /** The cell of a field, SI or plain text; null where it is empty, bad or missing. */
  get(of: AthleteField['of'], measure?: TapeMeasure): string | number | null;
  readonly bad: BadCell[];
  /** Calls one of a row's cells bad after all, or one that the table does not have. */
  blame(of: AthleteField['of'], problem: CellProblem): void;
}

/** A field's key in the map. */
const keyOf = (of: AthleteField['of'], measure?: TapeMeasure) => (measure ? `${of} ${measure}` : of);
const keyOfField = (field: AthleteField) => keyOf(field.of, 'measure' in field ? field.measure : undefined);

/** Reads a row's cells. A date that has not come yet by `today` is bad. */
export function readValues({ row, columns, texts }: RowCells, today: string): RowValues {
  const values = new Map<string, string | number | null>();
  const bad: BadCell[] = [];
  columns.forEach((column, index) => {
    if (!column) return;
    const text = texts[index] ?? '';
    const read = notAhead(readAthleteCell(text, column), column, today);
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

/** Fields that are days. */
const DATES: readonly AthleteField['of'][] = ['bornOn', 'measuredOn', 'takenOn'];

/** A date that has not come yet is a slip of the keyboard. */
function notAhead(read: ReadCell, { field }: AthleteColumn, today: string): ReadCell {
  const ahead = read.ok && DATES.includes(field.of) && String(read.value ?? '') > today;
  return ahead ? { ok: false, problem: { code: 'date-ahead' } } : read;
}

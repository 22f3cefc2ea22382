import type { Message } from '../document/message.ts';
import { entriesOf, keysOf } from '../units/entries.ts';
import { LENGTH_UNITS } from '../units/length-text.ts';

/** The columns of a table of offsets. */
export type OffsetsColumn = 'station' | 'half-breadth' | 'height';

/** One column found in a header: its place and its unit in metres. */
export interface FoundColumn {
  /** Place of the column, from 0. */
  readonly index: number;
  /** Metres in one unit. */
  readonly unitM: number;
}

/** Names that a header may use, spaces and letter case aside. */
const NAMES: Readonly<Record<OffsetsColumn, readonly string[]>> = {
  station: ['station', 'x'],
  'half-breadth': ['half-breadth', 'halfbreadth', 'y'],
  height: ['height', 'z'],
};

/** Metres in each unit that a heading may name. */
const UNITS_M: ReadonlyMap<string, number> = new Map(entriesOf(LENGTH_UNITS));

/** The columns in the order in which problems speak of them. */
export const OFFSETS_COLUMNS = keysOf(NAMES);

/** What is wrong with a column's heading. */
type HeaderProblem = Message & { readonly column: OffsetsColumn };

/** A header read: either all three columns, or what is wrong with it, one line a column. */
export type OffsetsHeader =
  | { readonly ok: true; readonly columns: Readonly<Record<OffsetsColumn, FoundColumn>> }
  | { readonly ok: false; readonly problems: readonly HeaderProblem[] };

/**
 * Reads a header such as `station [mm]`, `half-breadth (cm)`, `height m`: the columns may stand in any order, among
 * others, and each says its own unit: m, cm, mm, in or ft.
 */
export function readOffsetsHeader(cells: readonly string[]): OffsetsHeader {
  const heads = cells.map(plainHead);
  const problems: HeaderProblem[] = [];
  const find = (column: OffsetsColumn): FoundColumn => {
    const name = (head: string) => NAMES[column].find((n) => head === n || head.startsWith(`${n}-`));
    const index = heads.findIndex((head) => name(head) !== undefined);
    if (index < 0) {
      problems.push({ column, key: 'table.no-column', values: { name: column } });
      return { index, unitM: 0 };
    }
    const unitM = UNITS_M.get(heads[index]!.slice(name(heads[index]!)!.length + 1));
    if (unitM === undefined) {
      const said = cells[index]!.trim().slice(0, 40);
      problems.push({ column, key: 'table.no-unit', values: { name: said } });
    }
    return { index, unitM: unitM ?? 0 };
  };
  const columns = { station: find('station'), 'half-breadth': find('half-breadth'), height: find('height') };
  return problems.length > 0 ? { ok: false, problems } : { ok: true, columns };
}

/** `Half breadth [mm]` as `half-breadth-mm`. */
function plainHead(cell: string): string {
  return cell
    .toLowerCase()
    .split(/[\s_()[\]\-,:]+/)
    .filter((word) => word !== '')
    .join('-');
}

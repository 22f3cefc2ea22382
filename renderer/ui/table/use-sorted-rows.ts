import { useState } from 'react';
import type { Column } from './data-table.tsx';

/** By which column a table is sorted. */
export interface Sorting {
  readonly column: number;
  readonly direction: 1 | -1;
}

const collator = new Intl.Collator(undefined, { sensitivity: 'base', numeric: true });

/** Rows sorted by the heading that was pressed; a second press reverses the order. */
export function useSortedRows<T>(rows: readonly T[], columns: readonly Column<T>[]) {
  const [sorting, setSorting] = useState<Sorting | null>(null);
  const key = sorting && columns[sorting.column]?.sortBy;
  const sortBy = (column: number) =>
    setSorting((now) => ({ column, direction: now?.column === column && now.direction === 1 ? -1 : 1 }));
  return { rows: key ? sorted(rows, key, sorting.direction) : rows, sorting, sortBy };
}

/** Equal rows stay in the order they came in. */
function sorted<T>(rows: readonly T[], key: (row: T) => string | number, direction: 1 | -1): readonly T[] {
  return rows
    .map((row) => ({ row, by: key(row) }))
    .sort(({ by: first }, { by: second }) => {
      const bothNumbers = typeof first === 'number' && typeof second === 'number';
      return direction * (bothNumbers ? first - second : collator.compare(String(first), String(second)));
    })
    .map(({ row }) => row);
}

import { useState } from 'react';
import { say } from '../language/messages.ts';

/** One column after the name: its heading, and what stands in a row. */
export interface Column<T> {
  readonly title: string;
  readonly cell: (record: T) => React.ReactNode;
  readonly numeric?: boolean;
  /** What rows are sorted by under this heading; left out, it does not sort. */
  readonly sortBy?: (record: T) => string | number;
}

/** By which column a list is sorted; -1 is the name's. */
interface Sorting {
  readonly column: number;
  readonly direction: 1 | -1;
}

const collator = new Intl.Collator(undefined, { sensitivity: 'base', numeric: true });

/** A list's records in the order that a click on a heading asked for, and those headings. */
export function useSorted<T>(list: {
  readonly records: readonly T[];
  readonly nameOf: (record: T) => string;
  readonly columns: readonly Column<T>[];
}) {
  const [sorting, setSorting] = useState<Sorting | null>(null);
  const sortKey = (column: number) => (column < 0 ? list.nameOf : list.columns[column]?.sortBy);
  const heading = (title: string, column: number, numeric = false) => {
    const here = sorting?.column === column ? sorting.direction : null;
    return (
      <th
        key={title}
        scope="col"
        className={numeric ? 'numeric' : undefined}
        aria-sort={here === null ? undefined : here > 0 ? 'ascending' : 'descending'}
      >
        {sortKey(column) ? (
          <button
            type="button"
            className="sort-heading"
            title={say('list.sort', { column: title })}
            onClick={() => setSorting({ column, direction: here === 1 ? -1 : 1 })}
          >
            {title}
            <span aria-hidden="true">{here === null ? '' : here > 0 ? ' ↑' : ' ↓'}</span>
          </button>
        ) : (
          title
        )}
      </th>
    );
  };
  const key = sorting && sortKey(sorting.column);
  return { records: key ? sorted(list.records, key, sorting.direction) : list.records, heading };
}

/** Equal records stay in the order they came in. */
function sorted<T>(
  records: readonly T[],
  key: (record: T) => string | number,
  direction: 1 | -1,
): readonly T[] {
  return records.toSorted((a, b) => {
    const [first, second] = [key(a), key(b)];
    const bothNumbers = typeof first === 'number' && typeof second === 'number';
    return direction * (bothNumbers ? first - second : collator.compare(String(first), String(second)));
  });
}

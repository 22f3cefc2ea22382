import { useState } from 'react';
import { saidIn } from '../../../app/language/spoken.ts';
import { Explained } from '../../language/explained.tsx';
import { say, sayCount } from '../../language/messages.ts';
import { Name } from '../../language/name.tsx';
import { useShownWords } from '../../language/shown-words.tsx';
import { type Sorting, useSortedRows } from './use-sorted-rows.ts';

/** What is written on a row or cell for the style sheet and for tests. */
type RowMarks = Readonly<Record<`data-${string}`, string | number | boolean | undefined>>;
type CellMarks = RowMarks & { readonly title?: string };

/** One column: its heading, and what stands in a row. */
export interface Column<T> {
  /** Empty for a column of tools, which needs no heading. */
  readonly title: string;
  readonly titleHidden?: boolean;
  /** What stands in the heading in place of its title. */
  readonly head?: React.ReactNode;
  /** What stands in a second line of the head: what can be done with the whole column. */
  readonly tool?: React.ReactNode;
  readonly cell: (row: T, index: number) => React.ReactNode;
  readonly numeric?: boolean;
  /** Names the row: the cell is its heading. */
  readonly isName?: boolean;
  /** Class of its cells beside `numeric`. */
  readonly className?: string;
  /** What is written on a cell for the style sheet. */
  readonly cellMarks?: (row: T) => CellMarks;
  /** What rows are sorted by under this heading; left out, it does not sort. */
  readonly sortBy?: (row: T) => string | number;
  /** Tells columns of the same title apart. */
  readonly id?: string | number;
}

/** Rows that belong together, and what they have in common. */
export interface RowGroup<T> {
  readonly key: string | number;
  readonly title: string;
  /** What stands in the heading in place of its title. */
  readonly head?: React.ReactNode;
  readonly rows: readonly T[];
}

export interface DataTableProps<T> {
  readonly columns: readonly Column<T>[];
  readonly rows: readonly T[];
  readonly rowKey: (row: T, index: number) => string | number;
  readonly caption?: string;
  readonly captionHidden?: boolean;
  readonly className?: string;
  readonly marks?: (row: T) => RowMarks;
  /** Rows below a rule: sums. */
  readonly foot?: readonly T[];
  /** Further rows, each group under a heading of its own. */
  readonly groups?: readonly RowGroup<T>[];
  /** What stands in place of a table without rows. */
  readonly empty?: React.ReactNode;
  /** False where the rows name themselves and no column needs a heading. */
  readonly hasHead?: boolean;
}

/** So many rows are drawn at first, and so many more each time: thousands at once would hold up the page. */
const ROWS_AT_ONCE = 500;

/** A table of like rows: headings that sort, a name for each row, figures set to the right. */
export function DataTable<T>(props: DataTableProps<T>) {
  const { columns, caption, foot = [], groups = [] } = props;
  const { rows, sorting, sortBy } = useSortedRows(props.rows, columns);
  const [most, setMost] = useState(ROWS_AT_ONCE);
  if (props.rows.length === 0 && props.empty !== undefined) return props.empty;
  const body = (some: readonly T[]) =>
    some.map((row, index) => <Row key={props.rowKey(row, index)} {...props} row={row} index={index} />);
  return (
    <table className={props.className ?? 'ruled'}>
      {caption && <caption className={props.captionHidden ? 'only-spoken' : undefined}>{caption}</caption>}
      {props.hasHead !== false && <Head columns={columns} sorting={sorting} onSort={sortBy} />}
      {rows.length > 0 && <tbody>{body(rows.slice(0, most))}</tbody>}
      {rows.length > most && (
        <tbody>
          <tr>
            <td colSpan={columns.length}>
              <button type="button" className="button words" onClick={() => setMost(most + ROWS_AT_ONCE)}>
                {sayCount('list.more', rows.length - most)}
              </button>
            </td>
          </tr>
        </tbody>
      )}
      {groups.map((group) => (
        <tbody key={group.key}>
          <tr>
            <th scope="rowgroup" colSpan={columns.length} className="lettering">
              {group.head ?? group.title}
            </th>
          </tr>
          {body(group.rows)}
        </tbody>
      ))}
      {foot.length > 0 && <tfoot>{body(foot)}</tfoot>}
    </table>
  );
}

const keyOf = <T,>({ id, title }: Column<T>) => id ?? title;

interface HeadProps {
  readonly sorting: Sorting | null;
  readonly onSort: (column: number) => void;
}

/** The headings, and below them the tools of columns that have any. */
function Head<T>({ columns, ...props }: HeadProps & { columns: readonly Column<T>[] }) {
  return (
    <thead>
      <tr>
        {columns.map((column, at) => (
          <Heading key={keyOf(column)} {...column} {...props} at={at} />
        ))}
      </tr>
      {columns.some(({ tool }) => tool) && (
        <tr>
          {columns.map((column) => (
            <td key={keyOf(column)} className={column.numeric ? 'numeric' : undefined}>
              {column.tool}
            </td>
          ))}
        </tr>
      )}
    </thead>
  );
}

function Heading<T>(props: Column<T> & HeadProps & { at: number }) {
  const { title, head, numeric, sortBy, at, sorting, onSort } = props;
  if (head) return <td>{head}</td>;
  if (title === '') return <td />;
  const here = sorting?.column === at ? sorting.direction : null;
  const name = props.titleHidden ? <span className="only-spoken">{title}</span> : <Explained text={title} />;
  return (
    <th
      scope="col"
      className={numeric ? 'numeric' : undefined}
      aria-sort={here === null ? undefined : here > 0 ? 'ascending' : 'descending'}
    >
      {sortBy ? (
        <button
          type="button"
          className="sort-heading"
          title={say('list.sort', { column: title })}
          onClick={() => onSort(at)}
        >
          {name}
          <span aria-hidden="true">{here === null ? '' : here > 0 ? ' ↑' : ' ↓'}</span>
        </button>
      ) : (
        name
      )}
    </th>
  );
}

/** A plain text's names in other scripts are marked with their language. */
const marked = (cell: React.ReactNode) => (typeof cell === 'string' ? <Name text={cell} /> : cell);

function Row<T>({ columns, row, index, marks }: DataTableProps<T> & { row: T; index: number }) {
  const words = useShownWords();
  return (
    <tr {...marks?.(row)}>
      {columns.map((column) => {
        const { isName, numeric, className, cellMarks } = column;
        const Cell = isName ? 'th' : 'td';
        return (
          <Cell
            key={keyOf(column)}
            scope={isName ? 'row' : undefined}
            className={[numeric && 'numeric', className].filter(Boolean).join(' ') || undefined}
            {...cellMarks?.(row)}
          >
            {marked(saidIn(words, () => column.cell(row, index)))}
          </Cell>
        );
      })}
    </tr>
  );
}

import { columnName, headingOf } from '../../../core/roster/athlete-columns.ts';
import type { BadCell } from '../../../core/roster/row-values.ts';
import { useFormat } from '../../display/use-display.ts';
import { say, sayCount, words } from '../../language/messages.ts';
import { EnteredText } from '../../ui/fields/entered-text.tsx';
import { DataTable } from '../../ui/table/data-table.tsx';
import { cellProblemText } from './cell-problem-text.ts';
import { withCell } from './read-table-file.ts';

/** More bad cells than this are not shown at once. */
const MOST_SHOWN = 200;

/** Every invalid cell: its place, its text, the problem, and an entry to correct it. */
export function BadCells(props: {
  bad: readonly BadCell[];
  cells: readonly (readonly string[])[];
  onChange: (cells: string[][]) => void;
}) {
  const { bad, cells, onChange } = props;
  const format = useFormat();
  return (
    <section>
      <h3 className="lettering">{sayCount('table.bad.title', bad.length)}</h3>
      <p className="soft">{say('table.bad.about')}</p>
      <DataTable
        className="ruled table-bad"
        rows={bad.slice(0, MOST_SHOWN)}
        rowKey={({ row, column }) => `${row} ${column.name}`}
        columns={[
          { title: say('table.bad.row'), numeric: true, cell: ({ row }) => row },
          {
            title: say('table.bad.column'),
            isName: true,
            cell: ({ index, column }) =>
              index === null
                ? say('table.bad.no-column', { column: columnName(column, words()) })
                : columnName(column, words()),
          },
          {
            title: say('table.bad.cell'),
            cell: ({ row, index, column, text }) => (
              <EnteredText
                label={say('table.bad.entry', { row, column: columnName(column, words()) })}
                labelHidden
                isInvalid
                value={text}
                onEnter={(entered) =>
                  onChange(withCell(cells, { row, index, heading: headingOf(column) }, entered))
                }
              />
            ),
          },
          { title: say('table.bad.wrong'), cell: (cell) => cellProblemText(cell, format) },
        ]}
      />
    </section>
  );
}

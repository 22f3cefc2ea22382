import { useId, useState } from 'react';
import { columnName, headingOf } from '../../../core/roster/athlete-columns.ts';
import type { BadCell } from '../../../core/roster/row-values.ts';
import { useFormat } from '../../display/use-display.ts';
import { say, sayCount, words } from '../../language/messages.ts';
import { DataTable } from '../../ui/table/data-table.tsx';
import { cellProblemText } from './cell-problem-text.ts';
import { withCell } from './read-table-file.ts';

/** More bad cells than this are not shown at once. */
const MOST_SHOWN = 200;

/** Every cell that cannot be taken: where it stands, what it says, what is wrong, and a place to put it right. */
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
              <CellEntry
                key={text}
                label={say('table.bad.entry', { row, column: columnName(column, words()) })}
                text={text}
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

/** A cell's text; what is typed is read once the entry is left, so that the row does not move under the hand. */
function CellEntry(props: { label: string; text: string; onEnter: (text: string) => void }) {
  const [typed, setTyped] = useState(props.text);
  const id = useId();
  const enter = () => typed !== props.text && props.onEnter(typed);
  return (
    <div className="field">
      <label className="only-spoken" htmlFor={id}>
        {props.label}
      </label>
      <input
        id={id}
        className="entry"
        value={typed}
        aria-invalid
        onChange={(event) => setTyped(event.target.value)}
        onBlur={enter}
        onKeyDown={(event) => event.key === 'Enter' && enter()}
      />
    </div>
  );
}

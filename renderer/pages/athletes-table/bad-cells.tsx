import { useId, useState } from 'react';
import { headingOf } from '../../../core/roster/athlete-columns.ts';
import type { BadCell } from '../../../core/roster/row-values.ts';
import { useFormat } from '../../display/use-display.ts';
import { say, sayCount } from '../../language/messages.ts';
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
      <table className="ruled table-bad">
        <thead>
          <tr>
            <th scope="col" className="numeric">
              {say('table.bad.row')}
            </th>
            <th scope="col">{say('table.bad.column')}</th>
            <th scope="col">{say('table.bad.cell')}</th>
            <th scope="col">{say('table.bad.wrong')}</th>
          </tr>
        </thead>
        <tbody>
          {bad.slice(0, MOST_SHOWN).map((cell) => {
            const { row, index, column, text } = cell;
            const at = { row, index, heading: headingOf(column) };
            return (
              <tr key={`${row} ${column.name}`}>
                <td className="numeric">{row}</td>
                <th scope="row">
                  {index === null ? say('table.bad.no-column', { column: column.name }) : column.name}
                </th>
                <td>
                  <CellEntry
                    key={text}
                    label={say('table.bad.entry', { row, column: column.name })}
                    text={text}
                    onEnter={(entered) => onChange(withCell(cells, at, entered))}
                  />
                </td>
                <td>{cellProblemText(cell, format)}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
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

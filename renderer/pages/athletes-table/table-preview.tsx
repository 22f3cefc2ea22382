import { unusualTapes } from '../../../core/body/unusual-tapes.ts';
import { columnName } from '../../../core/roster/athlete-columns.ts';
import type { AthleteRow, AthletesTable } from '../../../core/roster/athletes-from-table.ts';
import { useTableExport } from '../../client/use-table-export.ts';
import { useFormat } from '../../display/use-display.ts';
import { say, sayCount, words } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { DataTable } from '../../ui/table/data-table.tsx';
import { BadCells } from './bad-cells.tsx';
import { cellProblemText } from './cell-problem-text.ts';
import { HeadingChoices } from './heading-choices.tsx';
import './athletes-table.css';

type ReadTable = Extract<AthletesTable, { kind: 'read' }>;
type Cells = readonly (readonly string[])[];

/** What a table would do, row by row, and the cells that must be put right first. */
export function TablePreview(props: {
  file: string;
  cells: Cells;
  table: ReadTable;
  onChange: (cells: string[][]) => void;
  onImport: () => void;
  onForget: () => void;
}) {
  const { file, cells, table, onChange, onImport, onForget } = props;
  const bad = table.rows.flatMap((row) => row.bad);
  const takes = table.rows.filter(({ outcome }) => outcome && outcome.kind !== 'same').length;
  const leftOut = table.leftOut.map(({ text, problem }) => say(`table.heading.${problem}`, { text }));
  return (
    <div className="stack">
      <p>
        <strong>{file}</strong> {sayCount('table.in.read', table.rows.length)}
      </p>
      {leftOut.length > 0 && <p>{say('table.in.left-out', { headings: words().row(leftOut) })}</p>}
      <HeadingChoices cells={cells} onChange={onChange} />
      {bad.length > 0 && <BadCells bad={bad} cells={cells} onChange={onChange} />}
      <RowList rows={table.rows} />
      {takes === 0 && <p>{say(bad.length === 0 ? 'table.take.same' : 'table.take.nothing')}</p>}
      <p className="row">
        {takes > 0 && (
          <Button look="chief" onClick={onImport}>
            {sayCount('table.take', takes)}
          </Button>
        )}
        <Button onClick={onForget}>{say('table.forget')}</Button>
      </p>
      {bad.length > 0 && <RowsLeftOut rows={table.rows} cells={cells} />}
    </div>
  );
}

function RowList({ rows }: { rows: readonly AthleteRow[] }) {
  return (
    <section>
      <h3 className="lettering">{say('table.rows')}</h3>
      <DataTable
        className="ruled table-rows"
        rows={rows}
        rowKey={({ row }) => row}
        columns={[
          { title: say('table.bad.row'), numeric: true, cell: ({ row }) => row },
          {
            title: say('conflicts.kind.athlete'),
            isName: true,
            cell: ({ name }) => name || say('table.no-name'),
          },
          {
            title: say('transfer.what'),
            cell: ({ outcome }) => (
              <>
                {outcomeText(outcome)}
                <Unusual outcome={outcome} />
              </>
            ),
          },
        ]}
      />
    </section>
  );
}

function outcomeText(outcome: AthleteRow['outcome']): string {
  if (!outcome) return say('table.row.bad');
  if (outcome.kind !== 'changed') return say(`table.row.${outcome.kind}`);
  return say('table.row.changed', {
    columns: words().row(outcome.changed.map((column) => columnName(column, words()))),
  });
}

/** Measures of a row that are more likely slips than a body; they are taken all the same. */
function Unusual({ outcome }: Pick<AthleteRow, 'outcome'>) {
  const format = useFormat();
  if (!outcome || outcome.kind === 'same') return null;
  return unusualTapes(outcome.athlete).map(({ measure, valueM, place }) => (
    <p key={measure} className="odd-mark">
      {say('table.row.unusual', {
        what: say(`tape.${measure}.name`),
        value: format.length(valueM),
        low: format.length(place.low),
        high: format.length(place.high),
      })}
    </p>
  ));
}

/** The rows that are not taken, exported with what is wrong beside each. */
function RowsLeftOut({ rows, cells }: { rows: readonly AthleteRow[]; cells: Cells }) {
  const format = useFormat();
  const { exportTable, refusal, told } = useTableExport();
  const width = Math.max(...cells.map((row) => row.length));
  const full = (row: readonly string[], last: string) => [
    ...Array.from({ length: width }, (_, i) => row[i] ?? ''),
    last,
  ];
  const give = () =>
    exportTable(say('table.rest.file'), [
      full(cells[0] ?? [], say('table.bad.wrong')),
      ...rows
        .filter(({ outcome }) => !outcome)
        .map(({ row, bad }) => {
          const wrong = bad.map((cell) =>
            say('sheet.labelled', {
              label: columnName(cell.column, words()),
              text: cellProblemText(cell, format),
            }),
          );
          return full(cells[row - 1] ?? [], words().sentences(wrong));
        }),
    ]);
  return (
    <div className="stack">
      <p className="row">
        <Button onClick={give}>{say('table.rest')}</Button>
      </p>
      {refusal && <ErrorMessage error={refusal} />}
      {told && <p role="status">{told}</p>}
    </div>
  );
}

import type { Fit } from '../../../core/document/fit-schema.ts';
import type { QuantityId } from '../../../core/evaluation/quantities.ts';
import type { Report } from '../../../core/evaluation/report.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';
import { SeverityMark } from '../../ui/severity-mark.tsx';
import { SEAT_GROUPS, type TransferCell, transferRows } from './transfer-rows.ts';

/** One column of the table: a setting in a boat. */
export interface TransferColumn {
  readonly title: string;
  readonly fit: Fit;
  readonly report: Report;
}

interface TableProps {
  readonly columns: readonly TransferColumn[];
  readonly onMake: (column: TransferColumn) => void;
}

/** The present boat and the new one side by side; a value that is not as in the present boat stands out. */
export function TransferTable(props: TableProps) {
  const { columns, onMake } = props;
  const occupied = columns[0]!.fit.seats.flatMap(({ athlete }, seat) => (athlete ? [{ seat, athlete }] : []));
  const setting = (name: string) =>
    occupied.length > 1 ? say('transfer.setting', { name }) : say('transfer.setting.only');
  return (
    <div className="table-scroll">
      <table className="ruled transfer-table">
        <caption className="only-spoken">{say('transfer.caption')}</caption>
        <Head columns={columns} onMake={onMake} />
        <Rows columns={columns} title={say('crew.sheet.afloat')} seat={null} />
        {occupied.map(({ seat, athlete }) => (
          <Rows
            key={seat}
            columns={columns}
            title={setting(athlete.name)}
            seat={seat}
            ids={SEAT_GROUPS.setting}
          />
        ))}
        {(['room', 'paddle', 'stance'] as const).flatMap((group) =>
          occupied.map(({ seat, athlete }) => (
            <Rows
              key={`${group} ${seat}`}
              columns={columns}
              title={
                occupied.length > 1
                  ? `${say(`transfer.${group}`)}: ${athlete.name}`
                  : say(`transfer.${group}`)
              }
              seat={seat}
              ids={SEAT_GROUPS[group]}
            />
          )),
        )}
      </table>
    </div>
  );
}

/** The boats' names, and under each new one the way to make it a fit. */
function Head({ columns, onMake }: TableProps) {
  const [, ...others] = columns;
  return (
    <thead>
      <tr>
        <td />
        {columns.map(({ title }) => (
          <th key={title} scope="col" className="numeric">
            {title}
          </th>
        ))}
      </tr>
      <tr className="transfer-make">
        <td />
        <td />
        {others.map((column) => (
          <td key={column.title} className="numeric">
            <button
              type="button"
              className="button"
              aria-label={say('transfer.make.of', { what: column.title })}
              onClick={() => onMake(column)}
            >
              {say('transfer.make')}
            </button>
          </td>
        ))}
      </tr>
    </thead>
  );
}

function Rows(props: {
  columns: readonly TransferColumn[];
  title: string;
  seat: number | null;
  ids?: readonly QuantityId[];
}) {
  const { columns, title, seat, ids } = props;
  const format = useFormat();
  const rows = transferRows(
    columns.map(({ report }) => report),
    { ids, seat, format },
  );
  return (
    <tbody>
      <tr className="transfer-group">
        <th scope="rowgroup" colSpan={columns.length + 1} className="lettering">
          {title}
        </th>
      </tr>
      {rows.map(({ id, name, cells }) => (
        <tr key={id}>
          <th scope="row">{name}</th>
          {columns.map(({ title: column }, i) => (
            <Cell key={column} cell={cells[i]!} present={cells[0]!} />
          ))}
        </tr>
      ))}
    </tbody>
  );
}

/** A mark stands only where the finding says otherwise than it does of the present boat. */
function Cell({ cell, present }: { cell: TransferCell; present: TransferCell }) {
  const turned = cell.severity !== null && cell.severity !== present.severity;
  return (
    <td
      className="numeric"
      data-severity={cell.severity ?? undefined}
      data-other={cell.text !== present.text || undefined}
    >
      {turned && (
        <span className="transfer-mark">
          <SeverityMark />
          <span className="note-word">{say(`severity.${cell.severity!}`)}</span>
        </span>
      )}
      {cell.text}
    </td>
  );
}

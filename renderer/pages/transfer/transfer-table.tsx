import type { Fit } from '../../../core/document/fit-schema.ts';
import type { Report } from '../../../core/evaluation/report.ts';
import { keysOf } from '../../../core/units/entries.ts';
import { useFormat } from '../../display/use-display.ts';
import { Explained } from '../../language/explained.tsx';
import { say } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { SeverityMark } from '../../ui/severity-mark.tsx';
import { DataTable, type RowGroup } from '../../ui/table/data-table.tsx';
import { SEAT_GROUPS, type TransferCell, type TransferRow, transferRows } from './transfer-rows.ts';

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
  const groups = useGroups(columns);
  return (
    <div className="table-scroll">
      <DataTable
        className="ruled transfer-table"
        caption={say('transfer.caption')}
        captionHidden
        rows={[]}
        rowKey={({ id }) => id}
        groups={groups}
        columns={[
          { title: '', isName: true, cell: ({ name }: TransferRow) => <Explained text={name} /> },
          ...columns.map((column, i) => ({
            title: column.title,
            tool: i > 0 && <MakeFit column={column} onMake={onMake} />,
            numeric: true,
            cell: ({ cells }: TransferRow) => <CellText cell={cells[i]!} present={cells[0]!} />,
            cellMarks: ({ cells }: TransferRow) => ({
              'data-severity': cells[i]!.severity ?? undefined,
              'data-other': cells[i]!.text !== cells[0]!.text || undefined,
            }),
          })),
        ]}
      />
    </div>
  );
}

/** The button that makes a setting a fit of its own. */
function MakeFit({ column, onMake }: { column: TransferColumn; onMake: TableProps['onMake'] }) {
  return (
    <Button aria-label={say('transfer.make.of', { what: column.title })} onClick={() => onMake(column)}>
      {say('transfer.make')}
    </Button>
  );
}

/** What is compared: the boat afloat, then by subject each seat with somebody in it. */
function useGroups(columns: readonly TransferColumn[]): readonly RowGroup<TransferRow>[] {
  const format = useFormat();
  const reports = columns.map(({ report }) => report);
  const seats = columns[0]!.fit.seats.flatMap(({ athlete }, seat) => (athlete ? [{ seat, athlete }] : []));
  const isCrew = seats.length > 1;
  const titleOf = (subject: keyof typeof SEAT_GROUPS, name: string) => {
    if (subject === 'setting')
      return isCrew ? say('transfer.setting', { name }) : say('transfer.setting.only');
    const title = say(`transfer.${subject}`);
    return isCrew ? say('sheet.labelled', { label: title, text: name }) : title;
  };
  const ofSeats = SUBJECTS.flatMap((subject) =>
    seats.map(({ seat, athlete }) => ({
      key: `${subject} ${seat}`,
      title: titleOf(subject, athlete.name),
      head: isCrew ? undefined : <Explained text={titleOf(subject, '')} />,
      rows: transferRows(reports, { ids: SEAT_GROUPS[subject], seat, format }),
    })),
  );
  const afloat = {
    key: 'afloat',
    title: say('crew.sheet.afloat'),
    head: <Explained text={say('crew.sheet.afloat')} />,
  };
  return [{ ...afloat, rows: transferRows(reports, { seat: null, format }) }, ...ofSeats];
}

const SUBJECTS = keysOf(SEAT_GROUPS);

/** A mark stands only where the finding says otherwise than it does of the present boat. */
function CellText({ cell, present }: { cell: TransferCell; present: TransferCell }) {
  const turned = cell.severity !== null && cell.severity !== present.severity;
  return (
    <>
      {turned && (
        <span className="transfer-mark">
          <SeverityMark />
          <span>{say(`severity.${cell.severity!}`)}</span>
        </span>
      )}
      {cell.text}
    </>
  );
}

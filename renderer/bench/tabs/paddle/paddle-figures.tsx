import type { Report } from '../../../../core/evaluation/report.ts';
import type { PaddleFit } from '../../../../core/paddle/paddle-fit.ts';
import { DataTable } from '../../../ui/table/data-table.tsx';
import { LiveText } from '../values/live-text.tsx';
import type { PaddleReader } from './use-paddle.ts';

/** What a row says of a state of the paddle. */
export type PaddleText = (paddle: PaddleFit, report: Report) => string;

/** One value of the paddle: its name, its number, and what is said beside it. */
export interface PaddleRow {
  readonly name: string;
  readonly value: PaddleText;
  readonly beside?: PaddleText;
}

/** Values of the paddle, following the hand. */
export function PaddleFigures({ read, rows }: { read: PaddleReader; rows: readonly PaddleRow[] }) {
  const live = (text: PaddleText) => (
    <LiveText
      write={(fit, report) => {
        const paddle = read(fit, report);
        return paddle ? text(paddle, report) : '–';
      }}
    />
  );
  return (
    <DataTable
      className="figures"
      hasHead={false}
      rows={rows}
      rowKey={({ name }) => name}
      columns={[
        { title: '', id: 'name', isName: true, cell: ({ name }) => name },
        { title: '', id: 'value', numeric: true, cell: ({ value }) => live(value) },
        { title: '', id: 'beside', className: 'soft', cell: ({ beside }) => beside && live(beside) },
      ]}
    />
  );
}

import { useFormat } from '../../../display/use-display.ts';
import { say } from '../../../language/messages.ts';
import { DataTable } from '../../../ui/table/data-table.tsx';
import type { StrokePlot } from './stroke-plots.ts';
import { COLUMNS, strokeTableRows, type TableRow } from './stroke-table-rows.ts';

/** The plots' numbers at the instants, for those who do not read plots. */
export function StrokeTable({ plots, perLeg }: { plots: readonly StrokePlot[]; perLeg: number }) {
  const format = useFormat();
  return (
    <details className="stroke-numbers">
      <summary>{say('stroke.table')}</summary>
      <DataTable
        className="figures"
        caption={say('stroke.table.caption')}
        captionHidden
        rows={strokeTableRows(plots, { perLeg, format })}
        rowKey={({ id }) => id}
        marks={({ id }) => ({ 'data-row': id })}
        columns={[
          { title: say('transfer.what'), isName: true, cell: ({ what }) => what },
          ...COLUMNS.map(([name], i) => ({
            title: say(name),
            numeric: true,
            cell: ({ at }: TableRow) => at[i],
          })),
          { title: say('stroke.table.swing'), numeric: true, cell: ({ swing }) => swing },
        ]}
      />
    </details>
  );
}

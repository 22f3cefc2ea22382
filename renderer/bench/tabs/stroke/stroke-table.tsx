import type { Format } from '../../../../app/language/format.ts';
import { useFormat } from '../../../display/use-display.ts';
import { say } from '../../../language/messages.ts';
import { DataTable } from '../../../ui/table/data-table.tsx';
import type { StrokePlot } from './stroke-plots.ts';

/** Instants that the table tells, in legs of the cycle. */
const COLUMNS = [
  ['stroke.ready', 0],
  ['stroke.catch', 1],
  ['stroke.table.middle', 1.5],
  ['stroke.exit', 2],
] as const;

/** One line of a plot as written numbers: at each of the table's instants, and how far it swings. */
export interface TableRow {
  readonly id: string;
  readonly what: string;
  readonly at: readonly string[];
  readonly swing: string;
}

/** The plots as rows of a table. `perLeg` is how many rows the cycle has in a leg. */
export function tableRows(
  plots: readonly StrokePlot[],
  { perLeg, format }: { perLeg: number; format: Format },
): TableRow[] {
  return plots.flatMap(({ id: plot, title, decimals, lines }) =>
    lines.map(({ id, name, values }) => ({
      id: `${plot}.${id}`,
      what: lines.length === 1 ? title : say('sheet.labelled', { label: title, text: name }),
      at: COLUMNS.map(([, leg]) => format.number(values[Math.round(leg * perLeg)]!, { decimals })),
      swing: format.number(Math.max(...values) - Math.min(...values), { decimals }),
    })),
  );
}

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
        rows={tableRows(plots, { perLeg, format })}
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

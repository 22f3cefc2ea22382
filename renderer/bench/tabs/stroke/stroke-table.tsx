import { useFormat } from '../../../display/use-display.ts';
import type { Format } from '../../../language/format.ts';
import { say } from '../../../language/messages.ts';
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
      what: lines.length === 1 ? title : `${title}: ${name}`,
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
      <table className="figures">
        <caption className="only-spoken">{say('stroke.table.caption')}</caption>
        <thead>
          <tr>
            <th scope="col">{say('stroke.table.what')}</th>
            {COLUMNS.map(([name]) => (
              <th key={name} scope="col" className="numeric">
                {say(name)}
              </th>
            ))}
            <th scope="col" className="numeric">
              {say('stroke.table.swing')}
            </th>
          </tr>
        </thead>
        <tbody>
          {tableRows(plots, { perLeg, format }).map(({ id, what, at, swing }) => (
            <tr key={id} data-row={id}>
              <th scope="row">{what}</th>
              {at.map((text, i) => (
                <td key={COLUMNS[i]![0]} className="numeric">
                  {text}
                </td>
              ))}
              <td className="numeric">{swing}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}

import type { Format } from '../../../../app/language/format.ts';
import { say } from '../../../language/messages.ts';
import type { StrokePlot } from './stroke-plots.ts';

/** Instants that the table tells, in legs of the cycle. */
export const COLUMNS = [
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
export function strokeTableRows(
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

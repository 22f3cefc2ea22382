import { ATHLETE_COLUMNS, headingOf, readHeadings } from '../../../core/roster/athlete-columns.ts';
import { say, words } from '../../language/messages.ts';
import { SelectField } from '../../ui/fields/select-field.tsx';

type Cells = readonly (readonly string[])[];

/** Stands for leaving a column out. */
const LEFT_OUT = 'left-out';

/** The cells with another heading above one column. */
function withHeading(cells: Cells, at: number, heading: string): string[][] {
  return cells.map((row, i) => row.map((cell, k) => (i === 0 && k === at ? heading : cell)));
}

/** A choice for each heading that is not understood: what its column holds. Nothing where all are. */
export function HeadingChoices({ cells, onChange }: { cells: Cells; onChange: (cells: string[][]) => void }) {
  const headings = readHeadings(cells[0] ?? []);
  const taken = new Set(headings.flatMap((heading) => (heading?.ok ? [heading.column.name] : [])));
  const unknown = headings.flatMap((heading, at) =>
    heading && !heading.ok && heading.problem !== 'twice' ? [{ at, text: heading.text }] : [],
  );
  if (unknown.length === 0) return null;
  const free = ATHLETE_COLUMNS.filter(({ name }) => !taken.has(name));
  return (
    <section className="stack">
      <h3 className="lettering">{say('table.columns.choose')}</h3>
      <div className="entry-grid">
        {unknown.map(({ at, text }) => (
          <SelectField
            key={at}
            label={say('table.columns.of', { heading: text })}
            hint={say('table.columns.example', { example: exampleOf(cells, at) })}
            value={LEFT_OUT}
            options={[
              { value: LEFT_OUT, name: say('table.columns.left-out') },
              ...free.map((column) => ({ value: headingOf(column), name: headingOf(column, words()) })),
            ]}
            onChange={(heading) => onChange(withHeading(cells, at, heading))}
          />
        ))}
      </div>
    </section>
  );
}

/** The first cell with something in it below a heading. */
function exampleOf(cells: Cells, at: number): string {
  return (
    cells
      .slice(1)
      .find((row) => row[at]?.trim())
      ?.[at]?.trim() ?? '–'
  );
}

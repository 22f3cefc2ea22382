import type { Format } from '../../../../app/language/format.ts';
import type { Cost, CostOf } from '../../../../core/under-way/under-way-of-fit.ts';
import { CHANGES } from '../../../../core/under-way/under-way-of-fit.ts';
import { useFormat } from '../../../display/use-display.ts';
import { say } from '../../../language/messages.ts';
import { DataTable } from '../../../ui/table/data-table.tsx';

/** What each change costs, at the same power: newtons, per cent, seconds over the course. */
export function CostsTable({
  costs,
  comparedNumber,
  course,
}: {
  costs: readonly Cost[];
  comparedNumber: number | null;
  /** Its place in the seconds, and how it is called. */
  course: { readonly index: number; readonly name: string };
}) {
  const format = useFormat();
  return (
    <DataTable
      className="figures"
      caption={say('under-way.costs')}
      rows={costs}
      rowKey={({ of }) => of}
      columns={[
        {
          title: say('under-way.costs.what'),
          isName: true,
          cell: ({ of }) => changeName(of, comparedNumber, format),
        },
        {
          title: say('under-way.costs.newtons'),
          numeric: true,
          cell: ({ newtons, sd }) => withDoubt(newtons, sd, format),
        },
        {
          title: say('under-way.costs.share'),
          numeric: true,
          cell: ({ share }) => format.number(share * 100, { decimals: 1, signed: true }),
        },
        {
          title: say('under-way.costs.seconds', { course: course.name }),
          numeric: true,
          cell: ({ seconds, secondsSd }) =>
            withDoubt(seconds[course.index]!, secondsSd[course.index]!, format),
        },
      ]}
    />
  );
}

/** A difference and twice its standard deviation, to a tenth; of a doubt under that the difference alone. */
function withDoubt(value: number, sd: number, format: Format): string {
  const shown = format.number(value, { decimals: 1, signed: true, half: 2 * sd });
  if (2 * sd < 0.05) return shown;
  return say('under-way.with-doubt', {
    value: shown,
    doubt: format.number(2 * sd, { decimals: 1, half: 2 * sd }),
  });
}

function changeName(of: CostOf, comparedNumber: number | null, format: Format): string {
  switch (of) {
    case 'bowUp':
    case 'bowDown':
      return say(`under-way.change.${of}`, { by: format.length(CHANGES.bow, { unit: 'mm' }) });
    case 'mass':
      return say('under-way.change.mass', { by: format.mass(CHANGES.massKg) });
    case 'heel':
      return say('under-way.change.heel', { by: format.degrees((CHANGES.heel * 180) / Math.PI) });
    case 'shallow':
      return say('under-way.change.shallow', { depth: format.number(CHANGES.depthM, { decimals: 0 }) });
    case 'other':
      return say('under-way.change.other', { number: comparedNumber });
  }
}

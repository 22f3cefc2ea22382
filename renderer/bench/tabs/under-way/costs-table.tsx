import type { Format } from '../../../../app/language/format.ts';
import { SIGMAS_95 } from '../../../../core/evaluation/probability.ts';
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
          cell: ({ share, newtons, sd }) => {
            const half = newtons === 0 ? 0 : 100 * SIGMAS_95 * Math.abs((share * sd) / newtons);
            return format.number(share * 100, { decimals: 1, signed: true, half });
          },
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

/** A doubt under this is told to a hundredth, else it would be 0.0; under a tenth of it there is none worth telling. */
const FINE_DOUBT = 0.05;

/** A difference with half of its 95 % interval, to a tenth or, where that is all its doubt, to a hundredth. */
export function withDoubt(value: number, sd: number, format: Format): string {
  const half = SIGMAS_95 * sd;
  const decimals = half < FINE_DOUBT && half > FINE_DOUBT / 10 ? 2 : 1;
  const shown = format.number(value, { decimals, signed: true, half });
  if (half <= FINE_DOUBT / 10) return shown;
  return say('under-way.with-doubt', { value: shown, doubt: format.number(half, { decimals, half }) });
}

function changeName(of: CostOf, comparedNumber: number | null, format: Format): string {
  switch (of) {
    case 'bowUp':
    case 'bowDown':
      return say(`under-way.change.${of}`, { by: format.length(CHANGES.bow, { fine: true }) });
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

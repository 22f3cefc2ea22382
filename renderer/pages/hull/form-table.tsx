import { useMemo } from 'react';
import type { Format } from '../../../app/language/format.ts';
import { waterSchema } from '../../../core/document/water-schema.ts';
import type { Hull } from '../../../core/hull/hull.ts';
import { curvesOfForm } from '../../../core/hydrostatics/curves-of-form.ts';
import { waterDensity } from '../../../core/hydrostatics/water-density.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';
import { type Column, DataTable } from '../../ui/table/data-table.tsx';

/** Drafts tabled, metres above the lowest point of the keel. */
const STEP = 0.02;
const DEEPEST = 0.24;

/** Curves of form as a table: what the hull is at each draft, level and upright, in fresh water. */
export function FormTable({ hull, corrected }: { hull: Hull; corrected: boolean }) {
  const format = useFormat();
  const density = waterDensity(waterSchema.parse({}));
  const rows = useMemo(() => {
    const drafts = Array.from({ length: Math.round(DEEPEST / STEP) }, (_, i) => (i + 1) * STEP);
    return curvesOfForm(hull, drafts, { waterDensity: density }).filter((r) => r.leastFreeboard.value > 0);
  }, [hull, density]);
  return (
    <section>
      <h2>{say('hull.form')}</h2>
      <p className="soft">
        {say('hull.form.about', {
          density: format.number(density, { decimals: 1 }),
          corrected: corrected ? say('hull.form.corrected') : '',
        })}
      </p>
      <div className="table-scroll">
        <DataTable rows={rows} rowKey={({ draft }) => draft} columns={formColumns(hull, format)} />
      </div>
    </section>
  );
}

type FormRow = ReturnType<typeof curvesOfForm>[number];

function formColumns(hull: Hull, format: Format): readonly Column<FormRow>[] {
  const middle = (hull.aftX + hull.foreX) / 2;
  const fromMid = (x: number) => {
    const by = format.length(Math.abs(x - middle));
    return say(x < middle ? 'hull.form.aft' : 'hull.form.fore', { by });
  };
  const plain = (value: number, decimals: number) => format.number(value, { decimals });
  const figures: readonly (readonly [title: string, cell: (row: FormRow) => string])[] = [
    [say('hull.form.mass'), (row) => format.mass(row.displacementKg)],
    [say('hull.form.per-cm'), (row) => format.mass(row.massPerCentimetre)],
    [say('hull.form.lcb'), (row) => fromMid(row.centroid.x)],
    [say('hull.form.lcf'), (row) => fromMid(row.waterplane.lcf)],
    [say('hull.form.km'), (row) => format.length(row.transverseKm)],
    [say('hull.form.moment'), (row) => `${plain(row.momentPerCentimetreTrim, 1)} N·m`],
    [say('hull.form.wetted'), (row) => `${plain(row.wettedSurface, 2)} m²`],
    [say('hull.form.freeboard'), (row) => format.length(row.leastFreeboard.value)],
  ];
  return [
    { title: say('hull.form.draft'), isName: true, cell: ({ draft }) => format.length(draft) },
    ...figures.map(([title, cell]) => ({ title, numeric: true, cell })),
  ];
}

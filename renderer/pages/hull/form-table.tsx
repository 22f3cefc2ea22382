import { useMemo } from 'react';
import type { Format } from '../../../app/language/format.ts';
import type { Boat } from '../../../core/document/boat-schema.ts';
import { waterSchema } from '../../../core/document/water-schema.ts';
import { hullDataSpread } from '../../../core/evaluation/hull-spread.ts';
import { SIGMAS_95 } from '../../../core/evaluation/probability.ts';
import type { Hull } from '../../../core/hull/hull.ts';
import { curvesOfForm } from '../../../core/hydrostatics/curves-of-form.ts';
import { type FormDoubt, type FormSpread, formDoubt } from '../../../core/hydrostatics/form-doubt.ts';
import { waterDensity } from '../../../core/hydrostatics/water-density.ts';
import { withUnit } from '../../../core/text/with-unit.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';
import { type Column, DataTable } from '../../ui/table/data-table.tsx';

/** Drafts tabled, metres above the lowest point of the keel. */
const STEP = 0.02;
const DEEPEST = 0.24;

/** Curves of form as a table: what the hull is at each draft, level and upright, in fresh water. */
export function FormTable({ boat, hull }: { boat: Boat; hull: Hull }) {
  const format = useFormat();
  const density = waterDensity(waterSchema.parse({}));
  const rows = useMemo(() => {
    const drafts = Array.from({ length: Math.round(DEEPEST / STEP) }, (_, i) => (i + 1) * STEP);
    return curvesOfForm(hull, drafts, { waterDensity: density }).filter((r) => r.leastFreeboard.value > 0);
  }, [hull, density]);
  const spread = useMemo(() => hullDataSpread(boat, hull), [boat, hull]);
  return (
    <section>
      <h2>{say('hull.form')}</h2>
      <p className="soft">{say('hull.form.about', { density: format.number(density, { decimals: 1 }) })}</p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: the keyboard scrolls what is wider than the window */}
      <section className="table-scroll" aria-label={say('hull.form')} tabIndex={0}>
        <DataTable rows={rows} rowKey={({ draft }) => draft} columns={formColumns(hull, spread, format)} />
      </section>
    </section>
  );
}

/** How a figure is written, its doubt if otherwise, and both with the end of the boat that a place lies towards. */
interface Writing {
  readonly write: (value: number) => string;
  readonly by?: (value: number) => string;
  readonly placed?: (value: number, text: string) => string;
}

type FormRow = ReturnType<typeof curvesOfForm>[number];

/** Each value with what 19 of 20 such hulls lie within. */
function formColumns(hull: Hull, spread: FormSpread, format: Format): readonly Column<FormRow>[] {
  const middle = (hull.aftX + hull.foreX) / 2;
  const fromMid = (x: number) => format.length(Math.abs(x - middle));
  const endward = (x: number, by: string) => say(x < middle ? 'hull.form.aft' : 'hull.form.fore', { by });
  const plain = (value: number, decimals: number) => format.number(value, { decimals });
  const give =
    (
      doubt: keyof FormDoubt,
      value: (row: FormRow) => number,
      { write, by = write, placed = (_, text) => text }: Writing,
    ) =>
    (row: FormRow) =>
      placed(
        value(row),
        // In a small window the doubt stands under its value: the table is wider than that.
        say('hull.form.give', {
          value: write(value(row)),
          by: by(SIGMAS_95 * formDoubt(row, spread, hull.length)[doubt]),
        }).replace('\u{a0}±', ' ±'),
      );
  const kilos = { write: format.mass };
  const lengths = { write: (value: number) => format.length(value) };
  const places = { write: fromMid, by: lengths.write, placed: endward };
  const moments = { write: (value: number) => withUnit(plain(value, 1), 'N·m') };
  const areas = { write: (value: number) => withUnit(plain(value, 2), 'm²') };
  const figures: readonly (readonly [title: string, cell: (row: FormRow) => string])[] = [
    [say('hull.form.mass'), give('displacementKg', (row) => row.displacementKg, kilos)],
    [say('hull.form.per-cm'), give('massPerCentimetre', (row) => row.massPerCentimetre, kilos)],
    [say('hull.form.lcb'), give('centroidX', (row) => row.centroid.x, places)],
    [say('hull.form.lcf'), give('lcf', (row) => row.waterplane.lcf, places)],
    [say('hull.form.km'), give('transverseKm', (row) => row.transverseKm, lengths)],
    [say('hull.form.moment'), give('momentPerCentimetreTrim', (row) => row.momentPerCentimetreTrim, moments)],
    [say('hull.form.wetted'), give('wettedSurface', (row) => row.wettedSurface, areas)],
    [say('quantity.leastFreeboard.name'), give('leastFreeboard', (row) => row.leastFreeboard.value, lengths)],
  ];
  return [
    { title: say('boat.known.draft'), isName: true, cell: ({ draft }) => format.length(draft) },
    ...figures.map(([title, cell]) => ({ title, numeric: true, cell })),
  ];
}

import { useMemo } from 'react';
import { waterSchema } from '../../../core/document/boat-schema.ts';
import type { Hull } from '../../../core/hull/hull.ts';
import { curvesOfForm } from '../../../core/hydrostatics/curves-of-form.ts';
import { waterDensity } from '../../../core/hydrostatics/water-density.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';

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
  const middle = (hull.aftX + hull.foreX) / 2;
  const plain = (value: number, decimals: number) => format.number(value, { decimals });
  return (
    <section>
      <h2>{say('hull.form')}</h2>
      <p className="soft">
        {say('hull.form.about', {
          density: plain(density, 1),
          corrected: corrected ? say('hull.form.corrected') : '',
        })}
      </p>
      <div className="table-scroll">
        <table className="ruled">
          <thead>
            <tr>
              <th scope="col">{say('hull.form.draft')}</th>
              <th scope="col" className="numeric">
                {say('hull.form.mass')}
              </th>
              <th scope="col" className="numeric">
                {say('hull.form.per-cm')}
              </th>
              <th scope="col" className="numeric">
                {say('hull.form.lcb')}
              </th>
              <th scope="col" className="numeric">
                {say('hull.form.lcf')}
              </th>
              <th scope="col" className="numeric">
                {say('hull.form.km')}
              </th>
              <th scope="col" className="numeric">
                {say('hull.form.moment')}
              </th>
              <th scope="col" className="numeric">
                {say('hull.form.wetted')}
              </th>
              <th scope="col" className="numeric">
                {say('hull.form.freeboard')}
              </th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <tr key={row.draft}>
                <th scope="row">{format.length(row.draft)}</th>
                <td className="numeric">{format.mass(row.displacementKg)}</td>
                <td className="numeric">{format.mass(row.massPerCentimetre)}</td>
                <td className="numeric">{format.length(middle - row.centroid.x)}</td>
                <td className="numeric">{format.length(middle - row.waterplane.lcf)}</td>
                <td className="numeric">{format.length(row.transverseKm)}</td>
                <td className="numeric">{plain(row.momentPerCentimetreTrim, 1)} N·m</td>
                <td className="numeric">{plain(row.wettedSurface, 2)} m²</td>
                <td className="numeric">{format.length(row.leastFreeboard.value)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}

import { contributions } from '../../../../core/crew/contributions.ts';
import type { Fit } from '../../../../core/document/fit-schema.ts';
import type { Report } from '../../../../core/evaluation/report.ts';
import { useFormat } from '../../../display/use-display.ts';
import { say } from '../../../language/messages.ts';
import { nameInSeat } from '../../crew-names.ts';

const CENTIMETRE = 0.01;

/** A table: each paddler's part of bow over stern, moment across, and what one centimetre aft does. */
export function CrewContributions({ fit, report }: { fit: Fit; report: Report }) {
  const format = useFormat();
  const rows = contributions(fit, report);
  if (rows.length === 0) return <p className="soft">{say('crew.no-float')}</p>;
  const moment = (value: number) => {
    const by = format.quantity('steadyMoment')(Math.abs(value), 'N·m');
    return say(value < 0 ? 'crew.side.right' : 'crew.side.left', { by });
  };
  const inches = format.lengthUnit === 'in';
  const trim = (value: number) => format.length(value, { signed: true, unit: inches ? 'in' : 'mm' });
  const perCentimetre = (value: number) =>
    inches
      ? format.length(value, { signed: true, unit: 'in' })
      : `${format.number(value * 1000, { decimals: 1, signed: true })}\u{202f}mm`;
  const afloat = report.afloat.ready;
  const total = afloat.kind === 'afloat' ? afloat.bowOverStern : 0;
  const brought = rows.reduce((sum, row) => sum + row.bowOverStern, 0);
  return (
    <table className="crew-table">
      <caption className="only-spoken">{say('crew.brings.caption')}</caption>
      <thead>
        <tr>
          <th scope="col">{say('crew.paddler')}</th>
          <th scope="col">{say('crew.bow')}</th>
          <th scope="col">{say('crew.side')}</th>
          <th scope="col">{say('crew.per-cm')}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.seat}>
            <th scope="row">{nameInSeat(fit, row.seat)}</th>
            <td>{trim(row.bowOverStern)}</td>
            <td>{moment(row.sideMoment)}</td>
            <td>{perCentimetre(row.trimPerMetre * CENTIMETRE)}</td>
          </tr>
        ))}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row">{say('crew.boat-itself')}</th>
          <td>{trim(total - brought)}</td>
          <td>–</td>
          <td />
        </tr>
        <tr>
          <th scope="row">{say('crew.sum')}</th>
          <td>{trim(total)}</td>
          <td>{moment(rows.reduce((sum, row) => sum + row.sideMoment, 0))}</td>
          <td />
        </tr>
      </tfoot>
    </table>
  );
}

import { contributions } from '../../../core/crew/contributions.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';
import { useFit } from '../bench/bench-context.tsx';
import { nameInSeat } from './crew-names.ts';

const CENTIMETRE = 0.01;

/** A table: each paddler's part of bow over stern, moment across, and what one centimetre aft does. */
export function CrewBrings() {
  const format = useFormat();
  const fit = useFit((state) => state.fit);
  const report = useFit((state) => state.report);
  const rows = contributions(fit, report);
  if (rows.length === 0) return <p className="soft">{say('crew.no-float')}</p>;
  const moment = (value: number) => {
    const by = format.quantity('steadyMoment')(Math.abs(value), 'N·m');
    return say(value < 0 ? 'crew.side.right' : 'crew.side.left', { by });
  };
  const trim = (value: number) => format.length(value, { signed: true, unit: 'mm' });
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
            <td>{trim(row.trimPerMetre * CENTIMETRE)}</td>
          </tr>
        ))}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row">{say('crew.sum')}</th>
          <td>{trim(rows.reduce((sum, row) => sum + row.bowOverStern, 0))}</td>
          <td>{moment(rows.reduce((sum, row) => sum + row.sideMoment, 0))}</td>
          <td />
        </tr>
      </tfoot>
    </table>
  );
}

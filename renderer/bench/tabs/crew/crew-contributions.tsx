import { contributions } from '../../../../core/crew/contributions.ts';
import type { Fit } from '../../../../core/document/fit-schema.ts';
import type { Report } from '../../../../core/evaluation/report.ts';
import { withUnit } from '../../../../core/text/with-unit.ts';
import { useFormat } from '../../../display/use-display.ts';
import { say } from '../../../language/messages.ts';
import { inShownWords } from '../../../language/shown-words.tsx';
import { DataTable } from '../../../ui/table/data-table.tsx';
import { nameInSeat } from '../../crew-names.ts';

const CENTIMETRE = 0.01;

/** A table: each paddler's part of bow over stern, moment across, and what one centimetre aft does. */
export const CrewContributions = inShownWords(({ fit, report }: { fit: Fit; report: Report }) => {
  const format = useFormat();
  const rows = contributions(fit, report);
  if (rows.length === 0) return <p className="soft">{say('drawing.strip.not-afloat')}</p>;
  const nothing = format.quantity('steadyMoment')(0, 'N·m');
  const moment = (value: number) => {
    const by = format.quantity('steadyMoment')(Math.abs(value), 'N·m');
    if (by === nothing) return nothing;
    return say(value < 0 ? 'crew.side.right' : 'crew.side.left', { by });
  };
  const trim = (value: number) => format.length(value, { signed: true, fine: true });
  const perCentimetre = (value: number) =>
    format.lengthUnit === 'in'
      ? format.length(value, { signed: true })
      : withUnit(format.number(value * 1000, { decimals: 1, signed: true }), 'mm');
  const afloat = report.afloat.ready;
  const total = afloat.kind === 'afloat' ? afloat.bowOverStern : 0;
  const brought = rows.reduce((sum, row) => sum + row.bowOverStern, 0);
  return (
    <DataTable
      className="crew-table"
      caption={say('crew.brings.caption')}
      captionHidden
      rows={rows.map((row) => ({
        name: nameInSeat(fit, row.seat),
        bow: trim(row.bowOverStern),
        side: moment(row.sideMoment),
        perCm: perCentimetre(row.trimPerMetre * CENTIMETRE),
      }))}
      rowKey={(_, at) => at}
      columns={[
        { title: say('crew.paddler'), isName: true, cell: ({ name }) => name },
        { title: say('crew.bow'), cell: ({ bow }) => bow },
        { title: say('crew.side'), cell: ({ side }) => side },
        { title: say('crew.per-cm'), cell: ({ perCm }) => perCm },
      ]}
      foot={[
        { name: say('crew.boat-itself'), bow: trim(total - brought), side: '–', perCm: '' },
        {
          name: say('crew.sum'),
          bow: trim(total),
          side: moment(rows.reduce((sum, row) => sum + row.sideMoment, 0)),
          perCm: '',
        },
      ]}
    />
  );
});

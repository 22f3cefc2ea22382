import type { AthleteRecord } from '../../../app/contract/records.ts';
import { useFormat } from '../../display/use-display.ts';
import { dateText } from '../../language/dates.ts';
import { say, sayCount } from '../../language/messages.ts';
import { Page } from '../../page-parts/page.tsx';
import { RosterList } from '../../page-parts/roster-list.tsx';
import { hrefOf } from '../../route/route.ts';

/** Everybody who has been measured. Body mass is not in the list: it is nobody's business at a glance. */
export function AthletesPage() {
  const format = useFormat();
  return (
    <Page
      title={say('athletes.title')}
      tools={
        <a className="button chief" href={hrefOf({ page: 'athlete', id: 'new' })}>
          {say('athletes.new')}
        </a>
      }
    >
      <RosterList<AthleteRecord>
        of="athletes"
        nameTitle={say('athletes.name')}
        nameOf={({ athlete }) => athlete.name}
        hrefOf={({ id }) => hrefOf({ page: 'athlete', id })}
        columns={[
          { title: say('athletes.side'), cell: ({ athlete }) => say(`side.${athlete.side}`) },
          {
            title: say('athletes.stature'),
            numeric: true,
            cell: ({ athlete }) => format.length(athlete.statureM),
          },
          {
            title: say('athletes.measured'),
            cell: ({ athlete }) =>
              [sayCount('athletes.tapes', Object.keys(athlete.tape).length), dateText(athlete.measuredOn)]
                .filter(Boolean)
                .join(', '),
          },
        ]}
        empty={<p>{say('athletes.empty')}</p>}
      />
    </Page>
  );
}

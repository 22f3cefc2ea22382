import type { AthleteRecord } from '../../../app/contract/records.ts';
import { CONSENTS } from '../../../core/document/athlete-schema.ts';
import { missingConsents } from '../../../core/document/consent.ts';
import { ageOn } from '../../../core/units/age.ts';
import { useFormat } from '../../display/use-display.ts';
import { dateText, today } from '../../language/dates.ts';
import { say, sayCount, words } from '../../language/messages.ts';
import { hrefOf } from '../../route/route.ts';
import { Page } from '../../ui/page.tsx';
import { RosterList } from '../../ui/roster-list.tsx';
import type { Column } from '../../ui/table/data-table.tsx';

/** The list of athletes. It does not show body mass, which is private. */
export function AthletesPage() {
  return (
    <Page
      title={say('archive.counts.athletes')}
      tools={
        <>
          <a className="button" href={hrefOf({ page: 'athletes-table' })}>
            {say('athletes.table')}
          </a>
          <a className="button chief" href={hrefOf({ page: 'athlete', id: 'new' })}>
            {say('athletes.new')}
          </a>
        </>
      }
    >
      <RosterList<AthleteRecord>
        of="athletes"
        nameTitle={say('athletes.name')}
        nameOf={({ athlete }) => athlete.name}
        hrefOf={({ id }) => hrefOf({ page: 'athlete', id })}
        columns={useColumns()}
        empty={<p>{say('athletes.empty')}</p>}
      />
    </Page>
  );
}

function useColumns(): Column<AthleteRecord>[] {
  const format = useFormat();
  const day = today();
  const age = ({ athlete }: AthleteRecord) => (athlete.bornOn ? ageOn(athlete.bornOn, day) : null);
  return [
    {
      title: say('athletes.side'),
      cell: ({ athlete }) => say(`side.${athlete.side}`),
      sortBy: ({ athlete }) => say(`side.${athlete.side}`),
    },
    {
      title: say('athletes.age'),
      numeric: true,
      cell: (record) => age(record) ?? '–',
      sortBy: (record) => age(record) ?? Number.MAX_SAFE_INTEGER,
    },
    {
      title: say('athlete.stature'),
      numeric: true,
      cell: ({ athlete }) => format.length(athlete.statureM),
      sortBy: ({ athlete }) => athlete.statureM,
    },
    {
      title: say('athletes.measured'),
      cell: ({ athlete }) => <Measured athlete={athlete} />,
      sortBy: ({ athlete }) => athlete.measuredOn ?? '',
    },
  ];
}

/** How much was measured and when, and whether a minor's guardian has yet to be asked. */
function Measured({ athlete }: Pick<AthleteRecord, 'athlete'>) {
  const tapes = sayCount('athletes.tapes', Object.keys(athlete.tape).length);
  const missing = missingConsents(athlete, CONSENTS, today()).length > 0;
  return (
    <>
      {words().row([tapes, dateText(athlete.measuredOn)].filter(Boolean))}
      {missing && <span className="odd-mark beside">{say('consent.short')}</span>}
    </>
  );
}

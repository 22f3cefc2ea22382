import type { BoatRecord } from '../../../app/contract/records.ts';
import type { Boat } from '../../../core/fit/boat-schema.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';
import { Page } from '../../page-parts/page.tsx';
import { RosterList } from '../../page-parts/roster-list.tsx';
import { hrefOf } from '../../route/route.ts';

function lengthOf({ hull }: Boat): number {
  if (hull.kind === 'tape') return hull.lengthM;
  const xs = hull.stations.map(({ xM }) => xM);
  return Math.max(...xs) - Math.min(...xs);
}

/** Every hull that has been measured. */
export function BoatsPage() {
  const format = useFormat();
  return (
    <Page
      title={say('boats.title')}
      tools={
        <a className="button chief" href={hrefOf({ page: 'boat', id: 'new' })}>
          {say('boats.new')}
        </a>
      }
    >
      <RosterList<BoatRecord>
        of="boats"
        nameTitle={say('boats.name')}
        nameOf={({ boat }) => boat.name}
        hrefOf={({ id }) => hrefOf({ page: 'boat', id })}
        columns={[
          {
            title: say('boats.class'),
            cell: ({ boat }) => (boat.boatClass === 'none' ? say('boat.class.none') : boat.boatClass),
          },
          { title: say('boats.seats'), numeric: true, cell: ({ boat }) => boat.seats.length },
          {
            title: say('boats.length'),
            numeric: true,
            cell: ({ boat }) =>
              format.length(lengthOf(boat), format.lengthUnit === 'in' ? {} : { unit: 'm' }),
          },
          { title: say('boats.mass'), numeric: true, cell: ({ boat }) => format.mass(boat.massKg) },
          {
            title: say('boats.hull'),
            cell: ({ boat }) => say(`boats.hull.${boat.hull.kind}`, { stations: boat.hull.stations.length }),
          },
        ]}
        empty={<p>{say('boats.empty')}</p>}
      />
    </Page>
  );
}

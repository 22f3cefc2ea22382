import type { BoatRecord } from '../../../app/contract/records.ts';
import { hullLengthOf } from '../../../core/hull/hull-length.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';
import { hrefOf } from '../../route/route.ts';
import { Page } from '../../ui/page.tsx';
import { RosterList } from '../../ui/roster-list.tsx';

/** Every hull that has been measured. */
export function BoatsPage() {
  const format = useFormat();
  return (
    <Page
      title={say('archive.counts.boats')}
      tools={
        <a className="button chief" href={hrefOf({ page: 'boat', id: 'new' })}>
          {say('boats.new')}
        </a>
      }
    >
      <RosterList<BoatRecord>
        of="boats"
        nameTitle={say('fitting.boat')}
        nameOf={({ boat }) => boat.name}
        hrefOf={({ id }) => hrefOf({ page: 'boat', id })}
        columns={[
          {
            title: say('boat.class'),
            cell: ({ boat }) => (boat.boatClass === 'none' ? say('boat.class.none') : boat.boatClass),
            sortBy: ({ boat }) => boat.boatClass,
          },
          {
            title: say('boat.seats'),
            numeric: true,
            cell: ({ boat }) => boat.seats.length,
            sortBy: ({ boat }) => boat.seats.length,
          },
          {
            title: say('measure.paddle.lengthM'),
            numeric: true,
            sortBy: ({ boat }) => hullLengthOf(boat.hull),
            cell: ({ boat }) =>
              format.length(hullLengthOf(boat.hull), format.lengthUnit === 'in' ? {} : { unit: 'm' }),
          },
          {
            title: say('boat.class-check.least-mass'),
            numeric: true,
            cell: ({ boat }) => format.mass(boat.massKg),
            sortBy: ({ boat }) => boat.massKg,
          },
          {
            title: say('boats.hull'),
            cell: ({ boat }) =>
              say(`boats.hull.${boat.hull.kind}`, {
                stations: boat.hull.kind === 'usual' ? 0 : boat.hull.stations.length,
              }),
          },
        ]}
        empty={<p>{say('boats.empty')}</p>}
      />
    </Page>
  );
}

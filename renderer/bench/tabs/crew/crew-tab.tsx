import { Explained } from '../../../language/explained.tsx';
import { say } from '../../../language/messages.ts';
import { hrefOf } from '../../../route/route.ts';
import { useFit } from '../../bench-context.tsx';
import { CrewBands, PLACES } from './crew-bands.tsx';
import { CrewContributions } from './crew-contributions.tsx';
import { CrewFromSingle } from './crew-from-single.tsx';
import { CrewLevel } from './crew-level.tsx';
import { CrewOrders } from './crew-orders.tsx';
import { CrewPlaces } from './crew-places.tsx';

/** The tab of the margin for crew boats: who brings what, levelling, changing places, seating orders. */
export function CrewTab() {
  const fitId = useFit((state) => state.fitId);
  const fit = useFit((state) => state.fit);
  const report = useFit((state) => state.report);
  return (
    <div className="crew">
      {fitId && (
        <p>
          <a className="button" href={hrefOf({ page: 'crew-sheet', id: fitId })}>
            {say('crew.sheet.open')}
          </a>
        </p>
      )}
      <section>
        <h2 className="lettering">{say('crew.brings')}</h2>
        <CrewContributions fit={fit} report={report} />
      </section>
      <section>
        <h2 className="lettering">
          <Explained text={say('crew.bands')} />
        </h2>
        <CrewBands report={report} ids={PLACES} />
      </section>
      <section>
        <h2 className="lettering">{say('crew.level')}</h2>
        <CrewLevel />
      </section>
      <section>
        <h2 className="lettering">{say('crew.places')}</h2>
        <CrewPlaces />
      </section>
      <section>
        <h2 className="lettering">{say('crew.single')}</h2>
        <CrewFromSingle />
      </section>
      <section>
        <h2 className="lettering">{say('crew.orders')}</h2>
        <CrewOrders />
      </section>
    </div>
  );
}

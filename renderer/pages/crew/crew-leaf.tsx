import { say } from '../../language/messages.ts';
import { CrewBrings } from './crew-brings.tsx';
import { CrewFromSingle } from './crew-from-single.tsx';
import { CrewLevel } from './crew-level.tsx';
import { CrewOrders } from './crew-orders.tsx';
import { CrewPlaces } from './crew-places.tsx';

/** The leaf of the margin for crew boats: who brings what, levelling, changing places, seating orders. */
export function CrewLeaf() {
  return (
    <div className="crew">
      <section>
        <h2 className="lettering">{say('crew.brings')}</h2>
        <CrewBrings />
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

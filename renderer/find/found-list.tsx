import type { FoundThing } from '../../app/contract/trials.ts';
import { instantText } from '../language/dates.ts';
import { say, words } from '../language/messages.ts';
import { Name } from '../language/name.tsx';
import { hrefOf } from '../route/route.ts';
import { thingName, thingPlace, thingRoute } from './found-thing.ts';

/** Things of the store, each with what it is, what it belongs to, the words in it, and when it was changed. */
export function FoundList({ things }: { things: readonly FoundThing[] }) {
  return (
    <ul className="found-list">
      {things.map((thing) => (
        <li key={`${thing.kind} ${thing.id}`}>
          <a href={hrefOf(thingRoute(thing))}>
            <span className="found-name">
              <Name text={thingName(thing)} />
            </span>
            <span className="soft">
              <Name
                text={words().beside([thingPlace(thing), thing.archived ? say('boat.fitted.aside') : ''])}
              />
            </span>
            {thing.words && <span className="found-words soft">{thing.words}</span>}
            <span className="found-when soft">{instantText(thing.at)}</span>
          </a>
        </li>
      ))}
    </ul>
  );
}

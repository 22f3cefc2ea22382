import { useState } from 'react';
import type { FoundThing } from '../../../app/contract/trials.ts';
import { useCall } from '../../client/use-call.ts';
import { FoundList } from '../../find/found-list.tsx';
import { useFound } from '../../find/use-found.ts';
import { instantText } from '../../language/dates.ts';
import { type MessageKey, say, sayCount, words } from '../../language/messages.ts';
import { Name } from '../../language/name.tsx';
import { hrefOf, type Route } from '../../route/route.ts';
import { Button } from '../../ui/button.tsx';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { TextField } from '../../ui/fields/text-field.tsx';
import { Page } from '../../ui/page.tsx';
import { StoreNotices } from '../../ui/store-notices.tsx';
import { ToDecide } from '../../ui/to-decide.tsx';

/** So many are shown at first, and so many more each time. */
const AT_ONCE = 24;

/** Where the program opens once there is something in it: what was worked on last, and a line to find anything by. */
export function RecentPage() {
  const [text, setText] = useState('');
  const [most, setMost] = useState(AT_ONCE);
  const found = useFound(text, most);
  const searching = text.trim() !== '';
  const things = found.value ?? [];
  return (
    <Page
      title={say('recent.title')}
      tools={
        <a className="button" href={hrefOf({ page: 'new-fit' })}>
          {say('fits.new')}
        </a>
      }
    >
      <StoreNotices />
      <div className="stack">
        <ToDecide />
        <div className="find-anything">
          <TextField
            label={say('find.label')}
            hint={say('find.hint')}
            type="search"
            value={text}
            onChange={(typed) => {
              setText(typed);
              setMost(AT_ONCE);
            }}
          />
        </div>
        {found.error && <ErrorMessage error={found.error} onRetry={found.reload} />}
        {searching ? (
          <Found text={text} things={found.value} more={found.more} />
        ) : (
          <Lately things={things} />
        )}
        {found.more && (
          <p>
            <Button look="words" onClick={() => setMost(most + AT_ONCE)}>
              {say('find.more')}
            </Button>
          </p>
        )}
      </div>
    </Page>
  );
}

/** What was found, and how many; not while there are more, for nobody has counted them. */
function Found(props: { text: string; things: readonly FoundThing[] | null; more: boolean }) {
  const { text, things, more } = props;
  if (!things) return null;
  const count = more ? '' : sayCount('find.count', things.length);
  return (
    <>
      <p role="status" className="soft">
        {things.length === 0 ? say('find.nothing', { text: text.trim() }) : count}
      </p>
      <FoundList things={things} />
    </>
  );
}

/** The fit that was changed last is a press away; below it everything else, the newest first. */
function Lately({ things }: { things: readonly FoundThing[] }) {
  const fit = things.find(({ kind }) => kind === 'fit');
  const others = things.filter((thing) => thing !== fit);
  return (
    <>
      {fit && (
        <div className="go-on">
          <a className="button chief" href={hrefOf({ page: 'fit', id: fit.id })}>
            <span>
              <Name text={say('recent.go-on', { name: fit.title })} />
            </span>
          </a>
          <span className="soft">
            <Name text={words().beside([fit.of, instantText(fit.at)])} />
          </span>
        </div>
      )}
      <FirstSteps />
      {others.length > 0 && (
        <>
          <h2 className="lettering">{say('recent.lately')}</h2>
          <FoundList things={others} />
        </>
      )}
    </>
  );
}

const FIRST = { limit: 1 };

/** What is still missing before there can be a fit, the first of it. */
function FirstSteps() {
  const athletes = useCall('athletes.list', FIRST);
  const boats = useCall('boats.list', FIRST);
  const fits = useCall('fits.list', FIRST);
  if (!athletes.value || !boats.value || !fits.value || fits.value.length > 0) return null;
  const steps: readonly [boolean, MessageKey, Route, string][] = [
    [athletes.value.length === 0, 'athletes.empty', { page: 'athlete', id: 'new' }, say('athletes.new')],
    [boats.value.length === 0, 'boats.empty', { page: 'boat', id: 'new' }, say('boats.new')],
    [true, 'fits.empty', { page: 'new-fit' }, say('fits.new')],
  ];
  const [, what, route, name] = steps.find(([missing]) => missing)!;
  return (
    <div className="go-on">
      <p>{say(what)}</p>
      <a className="button chief" href={hrefOf(route)}>
        {name}
      </a>
    </div>
  );
}

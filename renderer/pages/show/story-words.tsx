import { Tab, TabList, TabPanel, Tabs } from 'react-aria-components';
import { ATHLETE_CAUTIONS } from '../../../app/language/athlete-cautions.ts';
import type { ShowStory } from '../../../core/show/show-story.ts';
import { useShownWords } from '../../language/shown-words.tsx';
import type { AfterWater } from './after-water.ts';
import { SaidBefore } from './said-before.tsx';

interface StoryWordsProps {
  readonly story: ShowStory;
  readonly reason: string;
  readonly said: AfterWater | null;
  /** Number of the revision that the story compares with; null where it is none. */
  readonly triedNumber: number | null;
}

/** The words beside the picture: how it is now and, where something moved, what changes, why, and what to feel for. */
export function StoryWords(props: StoryWordsProps) {
  const { say } = useShownWords();
  const { story, reason, said, triedNumber } = props;
  const since = said && said.changedFrom !== null && said.changedFrom === triedNumber ? story.changes : [];
  if (story.changes.length === 0) {
    return (
      // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keys
      <section className="show-words" aria-label={say('athlete-page.title')} tabIndex={0}>
        <HowItIs story={story} said={said} since={[]} />
      </section>
    );
  }
  return (
    <Tabs className="show-tabs">
      <TabList className="tabs" aria-label={say('show.leaves')}>
        <Tab id="now" className="tab">
          {say('athlete-page.title')}
        </Tab>
        <Tab id="changes" className="tab">
          {say('athlete-page.changes')}
        </Tab>
      </TabList>
      <TabPanel id="now" className="show-words">
        <HowItIs story={story} said={said} since={since} />
      </TabPanel>
      <TabPanel id="changes" className="show-words">
        <SaidBefore said={said} />
        <WhatChanges story={story} reason={reason} />
        <Cautions />
      </TabPanel>
    </Tabs>
  );
}

function HowItIs(props: { story: ShowStory; said: AfterWater | null; since: ShowStory['changes'] }) {
  const { say } = useShownWords();
  const { story, said, since } = props;
  return (
    <>
      <SaidBefore said={said} changes={since} />
      {story.good.length > 0 && (
        <section>
          <h2>{say('athlete-page.good')}</h2>
          <ul className="show-list" data-kind="good">
            {story.good.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </section>
      )}
      <Watched story={story} open={said?.open ?? false} />
      <Cautions />
    </>
  );
}

/** What to look after. While a trial is unanswered "nothing" is never said. */
function Watched({ story: { watch, more }, open }: { story: ShowStory; open: boolean }) {
  const { say } = useShownWords();
  if (watch.length === 0 && open) return null;
  return (
    <section>
      <h2>{say('athlete-page.watch')}</h2>
      {watch.length === 0 ? (
        <p>{say('athlete-page.nothing')}</p>
      ) : (
        <ul className="show-list" data-kind="watch">
          {watch.map(({ sentence, stop }) => (
            <li key={sentence} data-stop={stop || undefined}>
              {stop ? say('athlete-page.stop', { sentence }) : sentence}
            </li>
          ))}
        </ul>
      )}
      {more && <p className="soft">{say('athlete-page.more')}</p>}
    </section>
  );
}

function Cautions() {
  const { say } = useShownWords();
  return (
    <ul className="show-cautions">
      {ATHLETE_CAUTIONS.map((caution) => (
        <li key={caution}>{say(caution)}</li>
      ))}
    </ul>
  );
}

function WhatChanges({ story, reason }: { story: ShowStory; reason: string }) {
  const { say } = useShownWords();
  return (
    <>
      <section>
        <h2>{say('athlete-page.changes')}</h2>
        <ul className="show-list" data-kind="moves">
          {story.changes.map(({ what }) => (
            <li key={what}>{what}</li>
          ))}
        </ul>
      </section>
      {(reason !== '' || story.reasons.length > 0) && (
        <section>
          <h2>{say('athlete-page.why')}</h2>
          {reason !== '' && <p>{say('athlete-page.coach.says', { reason })}</p>}
          {story.reasons.map(({ before, now }) => (
            <dl key={`${before} ${now}`} className="show-reason">
              <div>
                <dt>{say('athlete-page.before')}</dt>
                <dd>{before}</dd>
              </div>
              <div>
                <dt>{say('athlete-page.now')}</dt>
                <dd>{now}</dd>
              </div>
            </dl>
          ))}
        </section>
      )}
      {story.feel.length > 0 && (
        <section>
          <h2>{say('athlete-page.feel')}</h2>
          <ul className="show-list" data-kind="feel">
            {story.feel.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}

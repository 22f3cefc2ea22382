import { useState } from 'react';
import type { RevisionSummary } from '../../../app/contract/records.ts';
import type { TimelineEntry } from '../../../app/contract/trials.ts';
import { answeredBy } from '../../bench/tabs/trials/answered-by.ts';
import { conditionsText, observationText } from '../../bench/tabs/trials/observation-text.ts';
import { useCall } from '../../client/use-call.ts';
import { useAthlete } from '../../client/use-record.ts';
import { dateText } from '../../language/dates.ts';
import { say, words } from '../../language/messages.ts';
import { revisionNumber } from '../../language/revision-number.ts';
import { hrefOf } from '../../route/route.ts';
import { Button } from '../../ui/button.tsx';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { Page } from '../../ui/page.tsx';
import { momentOf, timelineOrder } from './moments.ts';
import './timeline.css';

/** How many entries are shown at first, and how many more each time. */
const AT_ONCE = 200;

/** What has happened to an athlete's fits: revisions with their reasons, and what was felt on the water between them. */
export function TimelinePage({ id }: { id: string }) {
  const [limit, setLimit] = useState(AT_ONCE);
  const { record, error } = useAthlete(id);
  const { value, error: refused } = useCall('athletes.timeline', { id, limit });
  const trouble = error ?? refused;
  return (
    <Page
      title={say('do.timeline', { name: record?.athlete.name ?? '' })}
      tools={
        <a className="button" href={hrefOf({ page: 'athlete', id })}>
          {say('timeline.back')}
        </a>
      }
    >
      {trouble && <ErrorMessage error={trouble} />}
      {!value && !trouble && <p className="soft">{say('sheet.loading')}</p>}
      {value?.length === 0 && <p>{say('timeline.none')}</p>}
      {value && value.length > 0 && <Timeline entries={timelineOrder(value)} />}
      {value && value.length >= limit && (
        <Button look="words" onClick={() => setLimit(limit + AT_ONCE)}>
          {say('timeline.earlier')}
        </Button>
      )}
    </Page>
  );
}

function Timeline({ entries }: { entries: readonly TimelineEntry[] }) {
  const revisions = entries.flatMap((entry) => (entry.kind === 'revision' ? [entry.revision] : []));
  return (
    <ol className="timeline">
      {entries.map((entry) => (
        <li key={entry.kind === 'revision' ? entry.revision.id : entry.record.id} data-kind={entry.kind}>
          <span className="timeline-day">{dateText(momentOf(entry))}</span>
          <TimelineMark kind={entry.kind} />
          {entry.kind === 'revision' ? <Kept entry={entry} /> : <Tried entry={entry} revisions={revisions} />}
        </li>
      ))}
    </ol>
  );
}

/** A ruled tick for a revision, a wave for a trial. */
function TimelineMark({ kind }: Pick<TimelineEntry, 'kind'>) {
  return (
    <svg className="timeline-mark" viewBox="0 0 24 24" width="24" height="24" aria-hidden="true">
      {kind === 'revision' ? (
        <path d="M5 5h14v14H5ZM9 10h6M9 14h6" />
      ) : (
        <path d="M2 10c3-4 5-4 7 0s5 4 7 0 4-4 6-1M2 17c3-4 5-4 7 0s5 4 7 0 4-4 6-1" />
      )}
    </svg>
  );
}

function Kept({ entry }: { entry: Extract<TimelineEntry, { kind: 'revision' }> }) {
  const { name, reason, answers } = entry.revision;
  return (
    <div>
      <h2>
        <a href={hrefOf({ page: 'fit', id: entry.fitId })}>
          {say('trial.tried.revision', { number: revisionNumber(entry.revision), name })}
        </a>
      </h2>
      <p className="soft">{fitText(entry)}</p>
      {reason && <p className="timeline-words">{reason}</p>}
      {answers.length > 0 && (
        <p>
          {say('answers.of', {
            what: words().row(answers.map(({ observation }) => observationText(observation))),
          })}
        </p>
      )}
    </div>
  );
}

function Tried(props: {
  entry: Extract<TimelineEntry, { kind: 'trial' }>;
  revisions: readonly RevisionSummary[];
}) {
  const { entry, revisions } = props;
  const { id, trial } = entry.record;
  return (
    <div>
      <h2>
        <a href={hrefOf({ page: 'fit', id: entry.fitId, tab: 'trials', trial: id })}>
          {say('timeline.trial')}
        </a>
        {entry.revisionNumber !== null && (
          <span className="soft">
            {' '}
            {say('timeline.tried', {
              number: revisionNumber({ id: entry.record.revisionId, number: entry.revisionNumber }),
            })}
          </span>
        )}
      </h2>
      <p className="soft">{fitText(entry)}</p>
      <ul>
        {trial.observations.map((observation) => {
          const by = answeredBy(revisions, id, observation);
          return (
            <li key={observationText(observation)}>
              {observationText(observation)}
              {by !== null && <span className="soft"> {say('trials.answered.by', { number: by })}</span>}
            </li>
          );
        })}
      </ul>
      {trial.allGood && <p>{say('trials.all-good')}</p>}
      {trial.notes && <p className="timeline-words">{trial.notes}</p>}
      <p className="soft">{conditionsText(trial)}</p>
    </div>
  );
}

/** The fit and its boat; the boat once, where the fit's name says it. */
function fitText({ fitName, boatName }: { readonly fitName: string; readonly boatName: string }): string {
  return fitName.includes(boatName) ? fitName : say('timeline.fit', { fit: fitName, boat: boatName });
}

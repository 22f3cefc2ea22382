import { useEffect } from 'react';
import type { RevisionSummary } from '../../../../app/contract/records.ts';
import type { TrialRecord } from '../../../../app/contract/trials.ts';
import { dateText } from '../../../language/dates.ts';
import { say } from '../../../language/messages.ts';
import { hrefOf, useRoute } from '../../../route/route.ts';
import { ErrorMessage } from '../../../ui/error-message.tsx';
import { ToDecide } from '../../../ui/to-decide.tsx';
import { useDocument, useFit } from '../../bench-context.tsx';
import type { FitTrials } from '../../use-fit-trials.ts';
import { TrialAnswersOf } from './trial-answers.tsx';
import './trials.css';

/** The trials of a fit in the bench's margin: the one gone to, or the latest, opened with the changes that answer it. */
export function TrialsTab(props: {
  fitId: string;
  trials: FitTrials;
  revisions: readonly RevisionSummary[];
}) {
  const { fitId, trials, revisions } = props;
  const document = useDocument();
  const route = useRoute();
  const wanted = route.page === 'fit' ? route.trial : undefined;
  const inUse = trials.all.filter(({ archived }) => !archived);
  const open = trials.all.find(({ id }) => id === wanted) ?? inUse[0] ?? null;
  useEffect(() => () => document.showGhost(null), [document]);
  if (trials.error) return <ErrorMessage error={trials.error} />;
  return (
    <div className="trials">
      <p>
        <a className="button" href={hrefOf({ page: 'trial', id: fitId })}>
          {say('trials.enter')}
        </a>
      </p>
      {trials.all.length === 0 && trials.known && <p className="soft">{say('trials.none')}</p>}
      {open && <OpenTrial key={open.id} record={open} revisions={revisions} fitId={fitId} />}
      <OtherTrials
        records={trials.all.filter(({ id }) => id !== open?.id)}
        revisions={revisions}
        fitId={fitId}
      />
    </div>
  );
}

/** A trial's heading: the day, and what was tried. */
function headText({ trial, revisionId }: TrialRecord, revisions: readonly RevisionSummary[]): string {
  const date = dateText(trial.heldOn);
  const tried = revisions.find(({ id }) => id === revisionId);
  return tried ? say('trials.head', { date, number: tried.number }) : say('trials.head.lost', { date });
}

function OpenTrial(props: { record: TrialRecord; revisions: readonly RevisionSummary[]; fitId: string }) {
  const { record, revisions, fitId } = props;
  const crew = useFit(({ fit }) => fit.seats.length > 1);
  const name = useFit(({ fit }) => fit.seats[record.trial.seat]?.athlete?.name);
  return (
    <section className="trial-open">
      <div className="trial-head">
        <h2>{headText(record, revisions)}</h2>
        <a
          className="button words"
          href={hrefOf({ page: 'trial', id: fitId, trial: record.id })}
          aria-label={say('trials.edit.of', { date: dateText(record.trial.heldOn) })}
        >
          {say('menu.edit')}
        </a>
      </div>
      <ToDecide key={record.changedAt} id={record.id} />
      {crew && name && <p className="soft">{say('trials.whose', { name })}</p>}
      <TrialAnswersOf record={record} revisions={revisions} />
    </section>
  );
}

function OtherTrials(props: {
  records: readonly TrialRecord[];
  revisions: readonly RevisionSummary[];
  fitId: string;
}) {
  if (props.records.length === 0) return null;
  return (
    <section className="trial-others">
      <h2 className="lettering">{say('trials.others')}</h2>
      <ul>
        {props.records.map((record) => (
          <li key={record.id}>
            <a href={hrefOf({ page: 'fit', id: props.fitId, tab: 'trials', trial: record.id })}>
              {headText(record, props.revisions)}
            </a>
            {record.archived && <span className="soft"> {say('trials.aside')}</span>}
          </li>
        ))}
      </ul>
    </section>
  );
}

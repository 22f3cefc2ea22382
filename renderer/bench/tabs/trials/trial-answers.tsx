import { useMemo, useState } from 'react';
import type { RevisionSummary } from '../../../../app/contract/records.ts';
import type { TrialRecord } from '../../../../app/contract/trials.ts';
import type { Fit } from '../../../../core/document/fit-schema.ts';
import { ANSWERED, type Answer } from '../../../../core/trial/answers.ts';
import { causesAndLevers } from '../../../../core/trial/levers.ts';
import { needsCaution, type Observation, type Trial } from '../../../../core/trial/observation.ts';
import type { TrialAnswers } from '../../../../core/trial/rank-changes.ts';
import { helpsAll, toldFirst } from '../../../../core/trial/told-first.ts';
import { useJobOn } from '../../../jobs/use-job.ts';
import { say, sayCount, words } from '../../../language/messages.ts';
import { Button } from '../../../ui/button.tsx';
import { useFit } from '../../bench-context.tsx';
import { answeredBy } from './answered-by.ts';
import { conditionsText, observationText } from './observation-text.ts';
import { TrialCaution } from './trial-caution.tsx';
import { TrialChange } from './trial-change.tsx';
import { useTried } from './use-tried.ts';

/** Changes told at once; the others are a press away. */
const FIRST = 3;
/** Less than this is no change for better or worse. */
const SLIGHT = 0.15;

/** A trial on the bench: the caution first where it is due, what was observed, what answers it already, what would. */
export function TrialAnswersOf({
  record,
  revisions,
}: {
  record: TrialRecord;
  revisions: readonly RevisionSummary[];
}) {
  const fit = useFit((state) => state.fit);
  const tried = useTried(record.revisionId);
  const { trial } = record;
  const base = tried === undefined ? undefined : (tried?.fit ?? fit);
  const open = useMemo(() => openPart(trial, record.id, revisions), [trial, record.id, revisions]);
  const question = useMemo(() => (base ? { fit, tried: base, trial: open } : null), [fit, base, open]);
  const state = useJobOn('trialAnswersOf', question);
  const ranked = state.kind === 'done' ? state.result : null;
  return (
    <div className="trial-answers">
      {needsCaution(open) && <TrialCaution />}
      <p className="soft">{conditionsText(trial)}</p>
      {trial.notes && <blockquote className="trial-notes">{trial.notes}</blockquote>}
      {trial.observations.length > 0 && (
        <ul className="trial-observed">
          {trial.observations.map((observation) => (
            <Observed
              key={observationText(observation)}
              observation={observation}
              answer={ranked?.soFar[open.observations.indexOf(observation)] ?? null}
              by={answeredBy(revisions, record.id, observation)}
            />
          ))}
        </ul>
      )}
      {tried === null && <p className="soft">{say('trials.lost')}</p>}
      {tried && isOther(tried.fit, fit, trial.seat) && <p className="soft">{say('trials.changed-boat')}</p>}
      <h3 className="lettering">{say('trials.changes')}</h3>
      {open.observations.length > 0 ? (
        <Changes ranked={ranked} trial={open} />
      ) : (
        <p className="soft">{say(closedKey(trial))}</p>
      )}
    </div>
  );
}

/** Why there is nothing to answer: all felt good, only words were written, or revisions have answered each of them. */
function closedKey({ observations, allGood }: Trial) {
  if (allGood) return 'trials.all-good';
  return observations.length === 0 ? 'trials.changes.words' : 'trials.changes.closed';
}

/** The trial with what no revision answers yet: that alone is still to be answered. */
function openPart(trial: Trial, id: string, revisions: readonly RevisionSummary[]): Trial {
  const observations = trial.observations.filter((o) => answeredBy(revisions, id, o) === null);
  return { ...trial, observations };
}

/** Whether the boat, or who kneels there, is another than when it was tried. */
function isOther(tried: Fit, now: Fit, seat: number): boolean {
  const who = (fit: Fit) => fit.seats[seat]?.athlete?.id ?? fit.seats[seat]?.athlete?.name;
  return tried.boat.name !== now.boat.name || who(tried) !== who(now);
}

function Observed(props: { observation: Observation; answer: Answer | null; by: number | null }) {
  const { answer, by } = props;
  return (
    <li>
      {observationText(props.observation)}
      <span className="soft">{stateText(answer, by)}</span>
      {by === null && <p className="soft">{causesText(props.observation)}</p>}
    </li>
  );
}

/** What a sign often comes from, by common practice. */
function causesText(observation: Observation): string {
  const { causes } = causesAndLevers(observation);
  return say('trials.causes', { causes: words().row(causes.map((cause) => say(`cause.${cause}`))) });
}

function stateText(answer: Answer | null, by: number | null): string {
  if (by !== null) return say('trials.answered.by', { number: by });
  if (!answer || Math.abs(answer.answered) < SLIGHT) return '';
  if (answer.answered < 0) return say('trials.answered.worse');
  return say(answer.answered >= ANSWERED ? 'trials.answered.yes' : 'trials.answered.part');
}

function Changes({ ranked, trial }: { ranked: TrialAnswers | null; trial: Trial }) {
  const [all, setAll] = useState(false);
  if (!ranked) return <p className="note-looking">{say('trials.working')}</p>;
  const { changes, soFar } = ranked;
  if (changes.length === 0) {
    const done = soFar.length > 0 && soFar.every(({ answered }) => answered >= ANSWERED);
    return <p>{say(done ? 'trials.changes.done' : 'trials.changes.none')}</p>;
  }
  const parted = trial.observations.length > 1 && !changes.some(helpsAll);
  const told = all ? changes : toldFirst(changes, FIRST);
  return (
    <>
      {parted && <p>{say('trials.changes.not-all')}</p>}
      <ol className="trial-changes">
        {told.map((change) => (
          <TrialChange key={change.coordinate} change={change} soFar={soFar} trial={trial} />
        ))}
      </ol>
      {told.length < changes.length && (
        <Button look="words" onClick={() => setAll(true)}>
          {sayCount('trials.more', changes.length - told.length)}
        </Button>
      )}
      <p className="soft trial-about">{say('trials.changes.about')}</p>
    </>
  );
}

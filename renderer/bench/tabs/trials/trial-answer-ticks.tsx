import { useEffect, useMemo, useState } from 'react';
import type { RevisionAnswer, RevisionSummary } from '../../../../app/contract/records.ts';
import type { TrialRecord } from '../../../../app/contract/trials.ts';
import type { Fit } from '../../../../core/document/fit-schema.ts';
import type { Evaluator } from '../../../../core/evaluation/evaluator.ts';
import { ANSWERED, answersOf } from '../../../../core/trial/answers.ts';
import { dateText } from '../../../language/dates.ts';
import { say } from '../../../language/messages.ts';
import { Tick } from '../../../ui/fields/tick.tsx';
import { observationText } from './observation-text.ts';
import { type OpenObservation, openObservations } from './open-observations.ts';
import { fetchRevision } from './use-tried.ts';

/** Which open observations a setting answers by the model, against the settings that were tried. */
async function answeredNow(
  open: readonly OpenObservation[],
  fit: Fit,
  evaluator: Evaluator,
): Promise<Set<OpenObservation>> {
  const now = evaluator.evaluate(fit);
  const answered = new Set<OpenObservation>();
  for (const record of new Set(open.map((o) => o.record))) {
    const tried = await fetchRevision(record.revisionId);
    if (!tried) continue;
    const answers = answersOf(record.trial, { tried: evaluator.evaluateHolding(tried.fit, now), now });
    for (const one of open) {
      if (one.record === record && (answers[one.index]?.answered ?? 0) >= ANSWERED) answered.add(one);
    }
  }
  return answered;
}

/** What a revision about to be kept answers: ticked by the model, settled by the coach. */
export function useAnswerTicks(props: {
  trials: readonly TrialRecord[];
  revisions: readonly RevisionSummary[];
  fit: Fit;
  evaluator: Evaluator;
}) {
  const { trials, revisions, fit, evaluator } = props;
  const open = useMemo(() => openObservations(trials, revisions), [trials, revisions]);
  const [ticked, setTicked] = useState<ReadonlySet<OpenObservation>>(new Set());
  useEffect(() => {
    let wanted = true;
    void answeredNow(open, fit, evaluator).then((answered) => wanted && setTicked(answered));
    return () => {
      wanted = false;
    };
  }, [open, fit, evaluator]);
  const turn = (one: OpenObservation) =>
    setTicked((before) => new Set(before.has(one) ? [...before].filter((o) => o !== one) : [...before, one]));
  const answers: RevisionAnswer[] = open
    .filter((one) => ticked.has(one))
    .map(({ trialId, observation }) => ({ trialId, observation }));
  return { open, ticked, turn, answers };
}

/** The ticks themselves; nothing where no observation is open. */
export function TrialAnswerTicks(props: Pick<ReturnType<typeof useAnswerTicks>, 'open' | 'ticked' | 'turn'>) {
  if (props.open.length === 0) return null;
  return (
    <fieldset className="answer-ticks">
      <legend className="field-label">{say('answers.title')}</legend>
      {props.open.map((one) => (
        <Tick
          key={`${one.trialId} ${one.index}`}
          name={say('answers.observed', {
            what: observationText(one.observation),
            date: dateText(one.record.trial.heldOn),
          })}
          isOn={props.ticked.has(one)}
          onChange={() => props.turn(one)}
        />
      ))}
      <span className="field-hint">{say('answers.about')}</span>
    </fieldset>
  );
}

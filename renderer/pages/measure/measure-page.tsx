import { useEffect, useRef, useState } from 'react';
import type { AthleteRecord } from '../../../app/contract/records.ts';
import { FIRST_TAPES } from '../../../core/body/measuring.ts';
import { useAthlete } from '../../client/use-record.ts';
import { today } from '../../language/dates.ts';
import { say } from '../../language/messages.ts';
import { hrefOf } from '../../route/route.ts';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { useFormValues } from '../../ui/form/use-form-values.ts';
import { Page } from '../../ui/page.tsx';
import { BodyStep } from './body-step.tsx';
import { ReviewStep } from './review-step.tsx';
import {
  beginSession,
  countedBody,
  isFarApart,
  OTHER_TAPES,
  type Step,
  tapePerson,
  tapeTaken,
} from './session.ts';
import { type StepProps, stepName } from './step-props.ts';
import { TapeStep } from './tape-step.tsx';
import './measure.css';

/** A guided measuring session: body, six tapes in the order of what they tell, a review. */
export function MeasurePage({ id }: { id: string }) {
  const { record, error } = useAthlete(id);
  return (
    <Page
      title={say('do.measure', { name: record?.athlete.name ?? '' })}
      wide
      tools={
        <a className="button" href={hrefOf({ page: 'athlete', id })}>
          {say('timeline.back')}
        </a>
      }
    >
      {error && <ErrorMessage error={error} />}
      {record === undefined && !error && <p className="soft">{say('sheet.loading')}</p>}
      {record === null && <p>{say('athlete.not-found')}</p>}
      {record && <Steps record={record} />}
    </Page>
  );
}

function Steps({ record }: { record: AthleteRecord }) {
  const [step, setStep] = useState<Step>('body');
  const start = beginSession(today(), record.athlete);
  const { formValues: session, change, discard } = useFormValues(`measuring.${record.id}`, start);
  const element = useEntryFocus(step);
  const props: StepProps = { record, session, change, onStep: setStep };
  return (
    <div className="stack">
      <p className="soft">{say('measure.about')}</p>
      <div className="measure-columns">
        <StepList {...props} step={step} />
        <div className="measure-step" key={step} ref={element}>
          {step === 'body' && <BodyStep {...props} />}
          {step === 'end' && <ReviewStep {...props} discard={discard} />}
          {step !== 'body' && step !== 'end' && <TapeStep {...props} measure={step} />}
        </div>
      </div>
    </div>
  );
}

/** Each step focuses its first entry, so that the keyboard alone is enough between two tapes. */
function useEntryFocus(step: Step) {
  const element = useRef<HTMLDivElement>(null);
  const before = useRef(step);
  useEffect(() => {
    if (before.current === step) return;
    before.current = step;
    element.current?.querySelector<HTMLElement>('[role="spinbutton"], .button.chief')?.focus();
  }, [step]);
  return element;
}

function StepList(props: StepProps & { step: Step }) {
  const { step, onStep } = props;
  const entry = (one: Step) => (
    <li key={one}>
      <button
        type="button"
        className="step-choice"
        aria-current={one === step ? 'step' : undefined}
        onClick={() => onStep(one)}
      >
        <span>{stepName(one)}</span>
        <StepState {...props} of={one} />
      </button>
    </li>
  );
  return (
    <nav aria-label={say('measure.steps')} className="step-list">
      <ol>{(['body', ...FIRST_TAPES] as const).map(entry)}</ol>
      <p className="soft">{say('measure.more')}</p>
      <ol>{OTHER_TAPES.map(entry)}</ol>
      <ol>{entry('end')}</ol>
    </nav>
  );
}

function StepState({ record: { athlete }, session, of }: StepProps & { of: Step }) {
  if (of === 'end') return null;
  if (of === 'body') {
    const { statureM, massKg } = countedBody(session, athlete);
    if (statureM !== null && massKg !== null)
      return <span className="soft step-state">{say('measure.step.taken')}</span>;
    const entered = session.statureM !== null && session.massKg !== null;
    return entered ? <span className="odd-mark step-state">{say('measure.step.asked')}</span> : null;
  }
  const taken = tapeTaken(session, of, tapePerson(session, athlete));
  if (taken.odd.length > 0 || isFarApart(taken))
    return <span className="odd-mark step-state">{say('measure.step.asked')}</span>;
  return taken.read ? <span className="soft step-state">{say('measure.step.taken')}</span> : null;
}

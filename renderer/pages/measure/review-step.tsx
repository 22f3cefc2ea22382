import { useState } from 'react';
import type { CallError } from '../../../app/contract/result.ts';
import { MEASURING } from '../../../core/body/measuring.ts';
import { type Athlete, TAPE_MEASURES } from '../../../core/document/athlete-schema.ts';
import { announce } from '../../announce/announce.ts';
import { call } from '../../client/client.ts';
import { useFormat } from '../../display/use-display.ts';
import { dateText, today } from '../../language/dates.ts';
import { say } from '../../language/messages.ts';
import { go } from '../../route/route.ts';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { renewFormValues } from '../../ui/form/use-form-values.ts';
import type { AthleteValues } from '../athlete/athlete-values.ts';
import { athleteAfter, beginSession, hasGrown, isEarlier, sessionResult } from './session.ts';
import { type StepProps, stepName } from './step-props.ts';

/** Everything measured in the session beside what was known before, and keeping it. */
export function ReviewStep(props: StepProps & { discard: () => void }) {
  const { record, session, change, discard } = props;
  const { athlete } = record;
  const [refusal, setRefusal] = useState<CallError | null>(null);
  const format = useFormat();
  const result = sessionResult(session, athlete);
  const measured = TAPE_MEASURES.filter((measure) => result.tape[measure]);
  const ahead = session.takenOn > today();
  const nothing = result.statureM === null && result.massKg === null && measured.length === 0;
  const carried = TAPE_MEASURES.filter((measure) => athlete.tape[measure] && !result.tape[measure]);
  const left = result.left.map(({ measure }) => MEASURING[measure].name);
  if (session.statureM !== null && result.statureM === null) left.unshift(say('athlete.stature'));
  if (session.massKg !== null && result.massKg === null) left.unshift(say('athlete.mass'));

  async function keep(): Promise<void> {
    const kept = await keepSession(props);
    if (kept !== null) return setRefusal(kept);
    discard();
    announce(say('measure.step.taken'));
    go({ page: 'athlete', id: record.id });
  }

  return (
    <section className="stack">
      <h2>{stepName('end')}</h2>
      {nothing ? <p>{say('measure.end.nothing')}</p> : <ResultTable athlete={athlete} result={result} />}
      {!nothing && <p className="soft">{say('measure.give-or-take')}</p>}
      {left.length > 0 && <p className="odd-mark">{say('measure.end.left', { what: left.join(', ') })}</p>}
      {hasGrown(session, athlete) && carried.length > 0 && (
        <p>
          {say('measure.end.grown', {
            by: format.length((result.statureM ?? athlete.statureM) - athlete.statureM),
            day: dateText(athlete.measuredOn),
            what: carried.map((measure) => MEASURING[measure].name).join(', '),
          })}
        </p>
      )}
      {isEarlier(session, athlete) && (
        <p className="soft">{say('measure.older', { day: dateText(athlete.measuredOn) })}</p>
      )}
      {ahead && <p className="field-problem">{`${say('measure.on')}: ${say('field.date-ahead')}`}</p>}
      {refusal && <ErrorMessage error={refusal} />}
      <p className="row">
        <button type="button" className="button chief" disabled={nothing || ahead} onClick={keep}>
          {say('measure.keep')}
        </button>
        <button
          type="button"
          className="button words"
          onClick={() => change(beginSession(session.takenOn, athlete))}
        >
          {say('measure.forget')}
        </button>
      </p>
    </section>
  );
}

/** Keeps a session: with the athlete, or in the history alone if a later measuring is known. Gives the refusal, if any. */
async function keepSession({ record, session }: StepProps): Promise<CallError | null> {
  const { athlete, id } = record;
  if (isEarlier(session, athlete)) {
    const { statureM, massKg, tape } = sessionResult(session, athlete);
    const measuring = { takenOn: session.takenOn, statureM, massKg, tape };
    const result = await call('measurings.save', { athleteId: id, measuring });
    return result.ok ? null : result.error;
  }
  const after = athleteAfter(session, { ...athlete, id });
  const result = await call('athletes.save', { athlete: after });
  if (!result.ok) return result.error;
  const { statureM, massKg, measuredOn, tape } = after;
  renewFormValues<AthleteValues>(`athlete.${id}`, { statureM, massKg, measuredOn, tape });
  return null;
}

function ResultTable({ athlete, result }: { athlete: Athlete; result: ReturnType<typeof sessionResult> }) {
  const format = useFormat();
  const row = (name: string, cells: { value: string; doubt: string; before: string }) => (
    <tr key={name}>
      <th scope="row">{name}</th>
      <td className="numeric">{cells.value}</td>
      <td className="numeric">{cells.doubt}</td>
      <td className="numeric">{cells.before}</td>
    </tr>
  );
  return (
    <table className="ruled">
      <thead>
        <tr>
          <th scope="col">{say('measure.end.what')}</th>
          {(['value', 'doubt', 'now'] as const).map((column) => (
            <th key={column} scope="col" className="numeric">
              {say(`measure.end.${column}`)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {result.statureM !== null &&
          row(say('athlete.stature'), {
            value: format.length(result.statureM),
            doubt: '',
            before: format.length(athlete.statureM),
          })}
        {result.massKg !== null &&
          row(say('athlete.mass'), {
            value: format.mass(result.massKg),
            doubt: '',
            before: format.mass(athlete.massKg),
          })}
        {TAPE_MEASURES.map((measure) => {
          const taken = result.tape[measure];
          const before = athlete.tape[measure];
          return (
            taken &&
            row(MEASURING[measure].name, {
              value: format.length(taken.valueM, { exact: true }),
              doubt: format.length(taken.sdM ?? 0, { unit: 'mm' }),
              before: before ? format.length(before.valueM) : '',
            })
          );
        })}
      </tbody>
    </table>
  );
}

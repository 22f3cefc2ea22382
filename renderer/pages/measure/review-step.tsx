import { useState } from 'react';
import type { CallError } from '../../../app/contract/result.ts';
import type { Format } from '../../../app/language/format.ts';
import { FIRST_TAPES } from '../../../core/body/measuring.ts';
import { type Athlete, TAPE_MEASURES } from '../../../core/document/athlete-schema.ts';
import { announce } from '../../announce/announce.ts';
import { call } from '../../client/client.ts';
import { useFormat } from '../../display/use-display.ts';
import { dateText, today } from '../../language/dates.ts';
import { say, words } from '../../language/messages.ts';
import { go } from '../../route/route.ts';
import { Button } from '../../ui/button.tsx';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { renewFormValues } from '../../ui/form/use-form-values.ts';
import { DataTable } from '../../ui/table/data-table.tsx';
import type { AthleteValues } from '../athlete/athlete-values.ts';
import { athleteAfter, beginSession, hasGrown, isEarlier, sessionResult } from './session.ts';
import { type StepProps, stepName } from './step-props.ts';

/** The last step: everything measured in the session beside earlier values, and the button that saves it. */
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
  const left = result.left.map(({ measure }) => say(`tape.${measure}.name`));
  const apart = result.apart.map(({ measure }) => say(`tape.${measure}.name`));
  if (session.statureM !== null && result.statureM === null) left.unshift(say('athlete.stature'));
  if (session.massKg !== null && result.massKg === null) left.unshift(say('athlete.mass'));

  async function keep(): Promise<void> {
    const kept = await keepSession(props);
    if (kept !== null) return setRefusal(kept);
    discard();
    announce(say('measure.step.taken'));
    go({ page: 'athlete', id: record.id });
  }

  const grownText = () =>
    say('measure.end.grown', {
      by: format.length((result.statureM ?? athlete.statureM) - athlete.statureM),
      day: dateText(athlete.measuredOn),
      what: words().row(carried.map((measure) => say(`tape.${measure}.name`))),
    });

  return (
    <section className="stack">
      <h2>{stepName('end')}</h2>
      {nothing ? <p>{say('measure.end.nothing')}</p> : <ResultTable athlete={athlete} result={result} />}
      {!nothing && <p className="soft">{say('measure.give-or-take')}</p>}
      {left.length > 0 && <p className="odd-mark">{say('measure.end.left', { what: words().row(left) })}</p>}
      {apart.length > 0 && (
        <p className="odd-mark">{say('measure.end.apart', { what: words().row(apart) })}</p>
      )}
      {hasGrown(session, athlete) && carried.length > 0 && <p>{grownText()}</p>}
      {isEarlier(session, athlete) && (
        <p className="soft">{say('measure.older', { day: dateText(athlete.measuredOn) })}</p>
      )}
      {ahead && (
        <p className="field-problem">
          {say('sheet.labelled', { label: say('athlete.measured'), text: say('field.date-ahead') })}
        </p>
      )}
      {refusal && <ErrorMessage error={refusal} />}
      <p className="row">
        <Button look="chief" disabled={nothing || ahead} onClick={keep}>
          {say('measure.keep')}
        </Button>
        <Button look="words" onClick={() => change(beginSession(session.takenOn, athlete))}>
          {say('measure.forget')}
        </Button>
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
  const result = await call('athletes.save', { athlete: after, opened: athlete });
  if (!result.ok) return result.error;
  const { statureM, massKg, measuredOn, tape } = after;
  renewFormValues<AthleteValues>(`athlete.${id}`, { statureM, massKg, measuredOn, tape });
  return null;
}

interface ResultRow {
  readonly name: string;
  readonly value: string;
  readonly doubt: string;
  readonly now: string;
}

const COLUMNS = [
  ['value', 'centimetre.value'],
  ['doubt', 'measure.end.doubt'],
  ['now', 'athlete-page.before'],
] as const;

function ResultTable(props: { athlete: Athlete; result: ReturnType<typeof sessionResult> }) {
  const format = useFormat();
  return (
    <DataTable
      rows={resultRows(props, format)}
      rowKey={({ name }) => name}
      columns={[
        { title: say('measure.end.what'), isName: true, cell: ({ name }) => name },
        ...COLUMNS.map(([column, title]) => ({
          title: say(title),
          numeric: true,
          cell: (row: ResultRow) => row[column],
        })),
      ]}
    />
  );
}

/** As they were asked for. */
const ORDER = [...FIRST_TAPES, ...TAPE_MEASURES.filter((measure) => !FIRST_TAPES.includes(measure))];

/** What was measured in the session, each beside what is known now. */
function resultRows(
  { athlete, result }: { athlete: Athlete; result: ReturnType<typeof sessionResult> },
  format: Format,
): ResultRow[] {
  const { statureM, massKg, tape } = result;
  const rows: ResultRow[] = [];
  const add = (name: string, value: string, rest: { doubt?: string; now?: string }) =>
    rows.push({ name, value, doubt: '', now: '', ...rest });
  if (statureM !== null) {
    add(say('athlete.stature'), format.length(statureM), { now: format.length(athlete.statureM) });
  }
  if (massKg !== null) add(say('athlete.mass'), format.mass(massKg), { now: format.mass(athlete.massKg) });
  for (const measure of ORDER) {
    const taken = tape[measure];
    const before = athlete.tape[measure];
    if (!taken) continue;
    add(say(`tape.${measure}.name`), format.length(taken.valueM), {
      doubt: format.length(taken.sdM ?? 0, { fine: true }),
      ...(before ? { now: format.length(before.valueM) } : {}),
    });
  }
  return rows;
}

import { useState } from 'react';
import { athleteSchema } from '../../../core/document/athlete-schema.ts';
import { type Measuring, measuringSchema } from '../../../core/document/measuring-schema.ts';
import { say } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { limitsOf } from '../../ui/fields/limits-of.ts';
import { MeasureField } from '../../ui/fields/measure-field.tsx';
import { TextField } from '../../ui/fields/text-field.tsx';

const { statureM, massKg } = athleteSchema.shape;
const BLANK = { takenOn: '', statureM: null as number | null, massKg: null as number | null };

/** Enters what was measured on an earlier day. */
export function EarlierMeasuring(props: { onSave: (measuring: Measuring) => Promise<boolean> }) {
  const [entries, setEntries] = useState(BLANK);
  const [problem, setProblem] = useState<string | null>(null);

  async function keep(): Promise<void> {
    const read = measuringSchema.safeParse({ ...entries, tape: {} });
    setProblem(read.success ? null : say('history.add.needed'));
    if (read.success && (await props.onSave(read.data))) setEntries(BLANK);
  }

  return (
    <details>
      <summary>{say('history.add')}</summary>
      <div className="stack">
        <div className="entry-row">
          <TextField
            label={say('history.day')}
            type="date"
            value={entries.takenOn}
            onChange={(takenOn) => setEntries({ ...entries, takenOn })}
          />
          <MeasureField
            label={say('athlete.stature')}
            kind="length"
            value={entries.statureM}
            {...limitsOf(statureM)}
            onEnter={(value) => setEntries((now) => ({ ...now, statureM: value }))}
            onEmpty={() => setEntries((now) => ({ ...now, statureM: null }))}
          />
          <MeasureField
            label={say('athlete.mass')}
            kind="mass"
            value={entries.massKg}
            {...limitsOf(massKg)}
            onEnter={(value) => setEntries((now) => ({ ...now, massKg: value }))}
            onEmpty={() => setEntries((now) => ({ ...now, massKg: null }))}
          />
          <Button onClick={keep}>{say('trial.keep')}</Button>
        </div>
        {problem && (
          <p className="field-problem" role="alert">
            {problem}
          </p>
        )}
      </div>
    </details>
  );
}

import { useState } from 'react';
import type { CallError } from '../../../app/contract/result.ts';
import { type StockPaddleDocument, stockPaddleSchema } from '../../../core/fit/stock-paddle-schema.ts';
import { call } from '../../client/client.ts';
import { say } from '../../language/messages.ts';
import { go, hrefOf } from '../../route/route.ts';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { MeasureField } from '../../ui/fields/measure-field.tsx';
import { TextField } from '../../ui/fields/text-field.tsx';

/** What the form holds while it is being filled in. Metres, degrees, kilograms. */
export interface PaddleEntries extends Omit<StockPaddleDocument, 'lengthM' | 'bladeLengthM'> {
  readonly lengthM: number | null;
  readonly bladeLengthM: number | null;
}

const BLANK: PaddleEntries = {
  name: '',
  lengthM: null,
  bladeLengthM: null,
  bladeAngleDeg: 0,
  massKg: 0.75,
  note: '',
};

/** The paddle that the entries describe, or what is still wrong, by entry. */
export function paddleOfEntries(
  entries: PaddleEntries,
  id: string | undefined,
): { paddle: StockPaddleDocument } | { problems: Readonly<Partial<Record<keyof PaddleEntries, string>>> } {
  const { lengthM, bladeLengthM } = entries;
  const needed = say('field.needed');
  const problems = {
    ...(entries.name.trim() === '' ? { name: needed } : {}),
    ...(lengthM === null ? { lengthM: needed } : {}),
    ...(bladeLengthM === null ? { bladeLengthM: needed } : {}),
    ...(lengthM !== null && bladeLengthM !== null && bladeLengthM >= lengthM
      ? { bladeLengthM: say('paddles.entry.blade-too-long') }
      : {}),
  };
  if (Object.keys(problems).length > 0) return { problems };
  return { paddle: stockPaddleSchema.parse({ ...entries, ...(id ? { id } : {}) }) };
}

/** The entries of one of the club's paddles. */
export function PaddleForm({ paddle, id }: { paddle: StockPaddleDocument | null; id: string | undefined }) {
  const [entries, setEntries] = useState<PaddleEntries>(paddle ?? BLANK);
  const [problems, setProblems] = useState<Readonly<Partial<Record<keyof PaddleEntries, string>>>>({});
  const [refusal, setRefusal] = useState<CallError | null>(null);
  const change = (part: Partial<PaddleEntries>) => setEntries((before) => ({ ...before, ...part }));

  async function save(event: React.FormEvent): Promise<void> {
    event.preventDefault();
    const made = paddleOfEntries(entries, id);
    if ('problems' in made) return setProblems(made.problems);
    setProblems({});
    const result = await call('paddles.save', { paddle: made.paddle });
    if (!result.ok) return setRefusal(result.error);
    go({ page: 'paddles' });
  }

  return (
    <form className="entries" onSubmit={save} noValidate>
      <section className="entry-grid">
        <TextField
          label={say('paddles.entry.name')}
          value={entries.name}
          onChange={(name) => change({ name })}
          problem={problems.name ?? null}
          required
        />
        <MeasureField
          label={say('paddles.entry.length')}
          kind="length"
          value={entries.lengthM}
          min={0.8}
          max={2.6}
          onEnter={(lengthM) => change({ lengthM })}
          problem={problems.lengthM}
          required
        />
        <MeasureField
          label={say('paddles.entry.blade')}
          hint={say('paddles.entry.blade.hint')}
          kind="length"
          value={entries.bladeLengthM}
          min={0.2}
          max={1.2}
          onEnter={(bladeLengthM) => change({ bladeLengthM })}
          problem={problems.bladeLengthM}
          required
        />
        <MeasureField
          label={say('paddles.entry.angle')}
          kind="angle"
          stepped
          value={entries.bladeAngleDeg}
          min={-30}
          max={30}
          onEnter={(bladeAngleDeg) => change({ bladeAngleDeg })}
        />
        <MeasureField
          label={say('paddles.entry.mass')}
          kind="mass"
          value={entries.massKg}
          min={0.2}
          max={3}
          onEnter={(massKg) => change({ massKg })}
        />
        <TextField
          label={say('paddles.entry.note')}
          value={entries.note}
          onChange={(note) => change({ note })}
        />
      </section>
      {refusal && <ErrorMessage error={refusal} />}
      <p className="row">
        <button type="submit" className="button chief">
          {say('paddles.entry.keep')}
        </button>
        <a className="button" href={hrefOf({ page: 'paddles' })}>
          {say('paddles.entry.leave')}
        </a>
      </p>
    </form>
  );
}

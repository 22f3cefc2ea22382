import { useState } from 'react';
import type { CallError } from '../../../app/contract/result.ts';
import type { Boat } from '../../../core/document/boat-schema.ts';
import { withFloatCheck } from '../../../core/document/earlier-checks.ts';
import type { HullCorrection } from '../../../core/document/hull-kinds-schema.ts';
import type { Calibrated, NotCalibrated } from '../../../core/hydrostatics/calibrate-hull.ts';
import { announce } from '../../announce/announce.ts';
import { call } from '../../client/client.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';
import { Term } from '../../language/term.tsx';
import { Button } from '../../ui/button.tsx';
import { ErrorMessage } from '../../ui/error-message.tsx';
import { Form } from '../../ui/form/form.tsx';
import { useForm } from '../../ui/form/use-form.ts';
import { CheckAnswer } from './check-answer.tsx';
import {
  FLOAT_RULES,
  type FloatValues,
  floatValues,
  type ReadCheck,
  withCentre,
  workOutCheck,
} from './float-check-rules.ts';
import { FloatReadings } from './float-readings.tsx';

/** What a check made of the hull, and the entries that it was worked out from. */
interface Answered {
  readonly of: FloatValues;
  readonly read: ReadCheck;
  readonly answer: Calibrated | NotCalibrated;
}

/**
 * Entry of a float check, what it makes of the hull, keeping it with the boat, and taking it off again. `onChanged` is
 * called once the boat was saved with it or without it: the page then draws everything again.
 */
export function FloatCheckForm({ boat, onChanged }: { boat: Boat; onChanged: () => void }) {
  const [answered, setAnswered] = useState<Answered | null>(null);
  const [refusal, setRefusal] = useState<CallError | null>(null);
  const form = useForm(FLOAT_RULES, {
    start: floatValues(boat),
    save: async (read) => ({ ok: true as const, value: { read, answer: workOutCheck(boat, read) } }),
    onSaved: ({ read, answer }) => setAnswered({ of: form.values, read, answer }),
  });
  const current = answered?.of === form.values ? answered : null;

  async function keep(changed: Boat, said: string): Promise<void> {
    const result = await call('boats.save', { boat: changed, opened: boat });
    if (!result.ok) return setRefusal(result.error);
    announce(said);
    onChanged();
  }

  const keepCheck = ({ read }: Answered, { correction }: Calibrated) =>
    keep(
      withFloatCheck(withCentre(boat, read.centreXM), { floatCheck: read.check, correction }),
      say('hull.check.kept'),
    );
  const takeOff = () =>
    keep(withFloatCheck(boat, { floatCheck: null, correction: null }), say('hull.check.undone'));
  const found = current?.answer.kind === 'calibrated' ? current.answer : null;

  return (
    <section className="float-check">
      <h2>
        <Term term="float-check">{say('term.float-check')}</Term>
      </h2>
      <p className="soft">{say('hull.check.about')}</p>
      {boat.correction && <CorrectionStands correction={boat.correction} onUndo={() => void takeOff()} />}
      <Form form={form} className="entries" buttons={<Button type="submit">{say('hull.check.work')}</Button>}>
        <FloatReadings form={form} boat={boat} />
      </Form>
      {current && <CheckAnswer boat={boat} answer={current.answer} />}
      {current && found && (
        <p className="row">
          <Button look="chief" onClick={() => void keepCheck(current, found)}>
            {say('hull.check.keep')}
          </Button>
        </p>
      )}
      {refusal && <ErrorMessage error={refusal} />}
    </section>
  );
}

/** Says that the hull is corrected by a float check, with a button that removes the correction. */
function CorrectionStands({ correction, onUndo }: { correction: HullCorrection; onUndo: () => void }) {
  const format = useFormat();
  return (
    <p className="row">
      <span>
        {say('hull.check.stands', { residual: format.length(correction.residualM, { fine: true }) })}
      </span>
      <Button look="words" onClick={onUndo}>
        {say('hull.check.undo')}
      </Button>
    </p>
  );
}

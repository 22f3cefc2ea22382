import type { AthleteRecord } from '../../../app/contract/records.ts';
import { say } from '../../language/messages.ts';
import type { MeasuringSession, Step } from './session.ts';

/** What every step of a measuring session is given. */
export interface StepProps {
  readonly record: AthleteRecord;
  readonly session: MeasuringSession;
  readonly change: (part: Partial<MeasuringSession>) => void;
  readonly onStep: (step: Step) => void;
}

/** Name of a step. */
export function stepName(step: Step): string {
  return step === 'body' || step === 'end' ? say(`measure.step.${step}`) : say(`tape.${step}.name`);
}

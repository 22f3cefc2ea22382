import type { Fit } from '../../core/document/fit-schema.ts';
import type { Report } from '../../core/evaluation/report.ts';
import type { Tightening } from '../../core/optimise/best-measurement.ts';
import { type MeasuringGoal, measurementsFor } from '../../core/optimise/measurements.ts';
import { type Photographed, photographsFor } from '../../core/optimise/photographs.ts';
import type { JobTools } from './job.ts';

/** Which value is to be known better, and in which state. */
export interface TightenQuestion {
  readonly fit: Fit;
  readonly report: Report;
  readonly goal: MeasuringGoal;
}

/** Everything that could be measured, by tape or from a photograph, each list the best first. */
export interface TightenAnswer {
  readonly tape: ReturnType<typeof measurementsFor>;
  readonly photo: readonly Tightening<Photographed>[];
}

/** Which measurement would narrow a value most. */
// biome-ignore lint/correctness/useYield: it is over in one step
export function* bestMeasurements(
  { fit, report, goal }: TightenQuestion,
  { evaluator }: JobTools<never>,
): Generator<never, TightenAnswer, void> {
  return {
    tape: measurementsFor(fit, report, goal),
    photo: photographsFor(evaluator, { fit, report }, goal),
  };
}

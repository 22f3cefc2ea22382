import { createEvaluator } from '../../../core/fit/evaluator.ts';
import type { Fit } from '../../../core/fit/fit-schema.ts';
import type { Report } from '../../../core/fit/report.ts';
import type { Tightening } from '../../../core/proposal/best-measurement.ts';
import { type MeasuringGoal, measurementsFor } from '../../../core/proposal/measurements.ts';
import { type Photographed, photographsFor } from '../../../core/proposal/photographs.ts';

/** Which value is to be tightened, of which state. */
export interface TightenQuestion {
  readonly fit: Fit;
  readonly report: Report;
  readonly goal: MeasuringGoal;
}

/** Everything that could be measured, by tape or off a photograph, each list the best first. */
export interface TightenAnswer {
  readonly tape: ReturnType<typeof measurementsFor>;
  readonly photo: readonly Tightening<Photographed>[];
}

/** Answers one question, then waits for the page to end it. */
self.onmessage = ({ data: { fit, report, goal } }: MessageEvent<TightenQuestion>) => {
  const answer: TightenAnswer = {
    tape: measurementsFor(fit, report, goal),
    photo: photographsFor(createEvaluator(), { fit, report }, goal),
  };
  self.postMessage(answer);
};

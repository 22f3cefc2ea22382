import type { Fit } from '../../core/document/fit-schema.ts';
import type { Trial } from '../../core/trial/observation.ts';
import { rankChanges, type TrialAnswers } from '../../core/trial/rank-changes.ts';
import type { JobTools } from './job.ts';

/** What is asked: how the fit answers a trial of `tried`, and what would answer more. */
export interface TrialQuestion {
  readonly fit: Fit;
  readonly tried: Fit;
  readonly trial: Trial;
}

/** How far a trial is answered, and the changes that would answer more. */
// biome-ignore lint/correctness/useYield: it is over in one step
export function* trialAnswersOf(
  question: TrialQuestion,
  { evaluator }: JobTools<never>,
): Generator<never, TrialAnswers, void> {
  return rankChanges(evaluator, question);
}

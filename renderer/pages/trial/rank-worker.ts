import { createEvaluator } from '../../../core/fit/evaluator.ts';
import type { Fit } from '../../../core/fit/fit-schema.ts';
import type { Trial } from '../../../core/trial/observation.ts';
import { rankChanges, type TrialAnswers } from '../../../core/trial/rank-changes.ts';

/** What is asked: how a trial of `tried` is answered by the fit, and what would answer more. */
export interface RankQuestion {
  readonly turn: number;
  readonly fit: Fit;
  readonly tried: Fit;
  readonly trial: Trial;
}

export interface RankAnswer {
  readonly turn: number;
  readonly answers: TrialAnswers;
}

const evaluator = createEvaluator();

/** Answers the newest question that has arrived; those that were overtaken meanwhile are dropped. */
let waiting: RankQuestion | null = null;
self.onmessage = ({ data }: MessageEvent<RankQuestion>) => {
  const idle = waiting === null;
  waiting = data;
  if (idle) setTimeout(answer, 0);
};

function answer(): void {
  if (!waiting) return;
  const { turn, ...question } = waiting;
  waiting = null;
  self.postMessage({ turn, answers: rankChanges(evaluator, question) } satisfies RankAnswer);
}

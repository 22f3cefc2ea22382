import type { Evaluator } from '../../core/evaluation/evaluator.ts';

/** What a job gets from the worker that runs it. */
export interface JobTools<Progress> {
  /** The worker's one evaluator: bodies and seats are computed once in a job. Another job's fit is another copy. */
  readonly evaluator: Evaluator;
  /** Sends progress at once. Use it inside a call that cannot pause. */
  tell(progress: Progress): void;
}

/**
 * A long computation. It yields its progress step by step and returns its result. At every yield a newer question
 * may take its place. One that first loads something is asynchronous.
 */
export type Job<Input, Progress, Result> = (
  input: Input,
  tools: JobTools<Progress>,
) => Generator<Progress, Result, void> | AsyncGenerator<Progress, Result, void>;

/** A question to the worker. `turn` counts the questions of one runner. */
export interface JobQuestion {
  readonly turn: number;
  readonly name: string;
  readonly input: unknown;
}

/** An answer of the worker; `turn` is that of its question. */
export type JobAnswer =
  | { readonly turn: number; readonly kind: 'progress'; readonly value: unknown }
  | { readonly turn: number; readonly kind: 'result'; readonly value: unknown };

import type { Athlete } from '../../core/document/athlete-schema.ts';
import type { Fit } from '../../core/document/fit-schema.ts';
import { type GrowthChanges, growthChanges } from '../../core/growth/growth-changes.ts';
import type { JobTools } from './job.ts';

/** A fit, and who in it is taken as measured now. `key` comes back with the answer. */
export interface GrowthQuestion {
  readonly key: string;
  readonly fit: Fit;
  readonly seat: number;
  readonly newest: Athlete;
}

export interface GrowthAnswer {
  readonly key: string;
  readonly changes: GrowthChanges;
}

/** What growth does to each of some fits, one step each. */
export function* growthOfFits(
  questions: readonly GrowthQuestion[],
  { evaluator }: JobTools<GrowthAnswer>,
): Generator<GrowthAnswer, void, void> {
  for (const { key, ...question } of questions) yield { key, changes: growthChanges(evaluator, question) };
}

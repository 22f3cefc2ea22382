import type { Athlete } from '../../../core/fit/athlete-schema.ts';
import { createEvaluator } from '../../../core/fit/evaluator.ts';
import type { Fit } from '../../../core/fit/fit-schema.ts';
import { type GrowthChanges, growthChanges } from '../../../core/growth/growth-changes.ts';

/** A fit, and who in it is to be taken as measured now. `key` comes back with the answer. */
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

const evaluator = createEvaluator();

self.onmessage = ({ data }: MessageEvent<GrowthQuestion>) => {
  const { key, ...question } = data;
  self.postMessage({ key, changes: growthChanges(evaluator, question) } satisfies GrowthAnswer);
};

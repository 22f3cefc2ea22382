import { bestMeasurements } from './best-measurements.ts';
import { compareSeatingOrders } from './compare-seating-orders.ts';
import { growthOfFits } from './growth-of-fits.ts';
import { leastChange } from './least-change.ts';
import { planDrilling } from './plan-drilling.ts';
import { readingOfPicture } from './reading-of-picture.ts';
import { slowAnswersOf } from './slow-answers-of.ts';
import { transferToBoat } from './transfer-to-boat.ts';
import { trialAnswersOf } from './trial-answers-of.ts';
import { underWayOf } from './under-way-of.ts';

/** Every long computation, by name. The page imports only the types; the worker runs them. */
export const JOB_TABLE = {
  bestMeasurements,
  compareSeatingOrders,
  growthOfFits,
  leastChange,
  planDrilling,
  readingOfPicture,
  slowAnswersOf,
  transferToBoat,
  trialAnswersOf,
  underWayOf,
} as const;

type JobTable = typeof JOB_TABLE;
export type JobName = keyof JobTable;

type PartsOf<T> = T extends (
  input: infer Input,
  tools: never,
) => Generator<infer Progress, infer Result, void> | AsyncGenerator<infer Progress, infer Result, void>
  ? { input: Input; progress: Progress; result: Result }
  : never;

/** A job's input, progress and result. */
export type JobInput<Name extends JobName> = PartsOf<JobTable[Name]>['input'];
export type JobProgress<Name extends JobName> = PartsOf<JobTable[Name]>['progress'];
export type JobResult<Name extends JobName> = PartsOf<JobTable[Name]>['result'];

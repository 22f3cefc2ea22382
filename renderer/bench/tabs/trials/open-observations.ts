import type { RevisionAnswer, RevisionSummary } from '../../../../app/contract/records.ts';
import type { TrialRecord } from '../../../../app/contract/trials.ts';
import { answeredBy } from './answered-by.ts';

/** Trials looked at for what is still open; older ones have been answered or dropped. */
const MOST_TRIALS = 4;

/** An observation that no revision answers yet. */
export interface OpenObservation extends RevisionAnswer {
  readonly record: TrialRecord;
  readonly index: number;
}

/** Observations of the latest trials that no revision has been made to answer. */
export function openObservations(
  trials: readonly TrialRecord[],
  revisions: readonly RevisionSummary[],
): OpenObservation[] {
  return trials
    .filter(({ archived }) => !archived)
    .slice(0, MOST_TRIALS)
    .flatMap((record) =>
      record.trial.observations.map((observation, index) => ({
        trialId: record.id,
        observation,
        record,
        index,
      })),
    )
    .filter(({ trialId, observation }) => answeredBy(revisions, trialId, observation) === null);
}

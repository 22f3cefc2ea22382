import type { RevisionSummary } from '../../../../app/contract/records.ts';
import type { Observation } from '../../../../core/trial/observation.ts';

/** The number of the first revision that was made to answer an observation; null where none was. */
export function answeredBy(
  revisions: readonly RevisionSummary[],
  trialId: string,
  observation: Observation,
): number | null {
  const same = JSON.stringify(observation);
  const numbers = revisions
    .filter(({ answers }) =>
      answers.some((a) => a.trialId === trialId && JSON.stringify(a.observation) === same),
    )
    .map(({ number }) => number);
  return numbers.length > 0 ? Math.min(...numbers) : null;
}

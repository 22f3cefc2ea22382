import type { CallError } from '../../app/contract/result.ts';
import type { TrialRecord } from '../../app/contract/trials.ts';
import { useCall } from '../client/use-call.ts';

/** The trials of a fit, the latest first; `known` once they have been fetched. */
export interface FitTrials {
  readonly all: readonly TrialRecord[];
  readonly known: boolean;
  readonly error: CallError | null;
}

const NONE: readonly TrialRecord[] = [];

export function useFitTrials(fitId: string): FitTrials {
  const { value, error } = useCall('trials.list', { fitId });
  return { all: value ?? NONE, known: value !== null, error };
}

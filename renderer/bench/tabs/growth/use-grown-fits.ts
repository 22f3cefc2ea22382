import type { GrowthChanges } from '../../../../core/growth/growth-changes.ts';
import type { GrowthQuestion } from '../../../jobs/growth-of-fits.ts';
import { useJobOn } from '../../../jobs/use-job.ts';

/** What growth does to each of some fits, by key, as the answers come in; worked out beside the page. */
export function useGrownFits(questions: readonly GrowthQuestion[]): ReadonlyMap<string, GrowthChanges> {
  const state = useJobOn('growthOfFits', questions.length > 0 ? questions : null);
  const answers = state.kind === 'idle' ? [] : state.progress;
  return new Map(answers.map(({ key, changes }) => [key, changes]));
}

import type { CallInput } from '../../../app/contract/contract.ts';
import type { OpenedFit } from '../../../app/contract/records.ts';
import type { CallResult } from '../../../app/contract/result.ts';
import type { TrialRecord } from '../../../app/contract/trials.ts';
import type { Trial } from '../../../core/trial/observation.ts';
import { call } from '../../client/client.ts';
import { dateText } from '../../language/dates.ts';
import { say } from '../../language/messages.ts';

/** Stands in the entries for the setting as it is on the bench, which has no revision yet. */
export const TRIED_NOW = 'now';

/** Keeps a trial; a setting that is no revision yet is kept as one first, so that what was tried stays known. */
export async function keepTrial(
  opened: OpenedFit,
  made: {
    id?: string | undefined;
    /** The trial as it was before the change, where others may have changed it meanwhile. */
    before?: CallInput<'trials.save'>['opened'];
    tried: string;
    trial: Trial;
    /** Hears of the revision that was kept, so that trying again keeps no second one. */
    onRevision: (id: string) => void;
  },
): Promise<CallResult<TrialRecord>> {
  const { id, tried, trial, before } = made;
  let revisionId = tried;
  if (tried === TRIED_NOW) {
    const name = say('trial.tried.name', { date: dateText(trial.heldOn) });
    const { id: fitId, fit, draftSavedAt } = opened;
    const saved = await call('revisions.save', { fitId, fit, name, basedOn: draftSavedAt });
    if (!saved.ok) return saved;
    revisionId = saved.value.id;
    made.onRevision(revisionId);
  }
  return call('trials.save', { ...(id ? { id } : {}), revisionId, trial, opened: before });
}

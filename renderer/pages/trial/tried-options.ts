import type { OpenedFit, RevisionSummary } from '../../../app/contract/records.ts';
import { revisionMark } from '../../../core/document/revision-mark.ts';
import { say } from '../../language/messages.ts';
import { revisionNumber } from '../../language/revision-number.ts';
import { TRIED_NOW } from './keep-trial.ts';

/**
 * What may have been tried: the setting as it stands, where that is no revision yet, and the fit's revisions. A revision that does not
 * come with the fit, as an old one or one kept just now, is called by its number once it is fetched, and by its mark until then.
 */
export function triedOptions(
  { draftSavedAt, revisions }: Pick<OpenedFit, 'draftSavedAt' | 'revisions'>,
  tried: string,
  fetched: RevisionSummary | null,
): { value: string; name: string }[] {
  const isNow = tried === TRIED_NOW;
  const hasNow = draftSavedAt !== null || revisions.length === 0 || isNow;
  const isListed = isNow || revisions.some(({ id }) => id === tried);
  const unlisted = fetched?.id === tried ? optionOf(fetched) : { value: tried, name: revisionMark(tried) };
  return [
    ...(hasNow ? [{ value: TRIED_NOW, name: say('trial.tried.now') }] : []),
    ...revisions.map(optionOf),
    ...(isListed ? [] : [unlisted]),
  ];
}

function optionOf({ id, number, name }: RevisionSummary): { value: string; name: string } {
  return { value: id, name: say('trial.tried.revision', { number: revisionNumber({ id, number }), name }) };
}

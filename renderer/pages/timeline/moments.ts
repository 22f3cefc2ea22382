import type { TimelineEntry } from '../../../app/contract/trials.ts';
import { today } from '../../language/dates.ts';

/** When something happened: a trial on its day, though it was entered later. ISO text that sorts. */
export function momentOf(entry: TimelineEntry): string {
  if (entry.kind === 'revision') return entry.at;
  const { heldOn } = entry.record.trial;
  return today(new Date(entry.at)) === heldOn ? entry.at : `${heldOn}T12:00:00`;
}

/** Newest first; of two at once, the one that came first in the list stays first. */
export function timelineOrder(entries: readonly TimelineEntry[]): TimelineEntry[] {
  return entries.toSorted((a, b) => momentOf(b).localeCompare(momentOf(a)));
}

import { leavesOfContent, type RecordContent } from '../changes/record-content.ts';
import { sameLeaves } from '../changes/record-state.ts';
import { newestDraft, touchFit } from './fit-list-entry.ts';
import { laterThan, writeDraft } from './fits.ts';
import { prepared } from './prepared.ts';
import { putBack } from './quarantine.ts';
import { checkedDocument } from './record-rows.ts';
import { newestReadableRevision } from './revisions.ts';
import type { Store } from './store.ts';

/**
 * Makes a fit stand as fields say: as no draft where its newest revision holds just that, else as a draft. False if it is no
 * sound fit; nothing is changed then.
 */
export function putFitState(
  store: Store,
  id: string,
  { content, at }: { content: RecordContent; at: string },
): boolean {
  const fit = checkedDocument('fit', content.document);
  const draft = newestDraft(store, id);
  if (!fit || draft === 'none') return false;
  const leaves = leavesOfContent('fit', { document: fit });
  const holds = (other: object | null | undefined) =>
    other != null && sameLeaves(leavesOfContent('fit', { document: other }), leaves);
  if (holds(newestReadableRevision(store, id)?.fit)) {
    prepared(store.db, 'DELETE FROM drafts WHERE fit_id = ?').run(id);
    putBack(store, { table: 'drafts', rowId: id });
  } else if (!holds(draftOf(store, id))) {
    writeDraft(store, { id, fit, at: laterThan(draft, at) });
  }
  const archive = prepared(
    store.db,
    'UPDATE fits SET archived_at = CASE WHEN ? THEN coalesce(archived_at, ?) END WHERE id = ?',
  );
  archive.run(content.archived ? 1 : 0, at, id);
  const { known } = prepared<[string], { known: string }>(
    store.db,
    'SELECT changed_at AS known FROM fits WHERE id = ?',
  ).get(id)!;
  touchFit(store, { id, fit, at: known > at ? known : at });
  return true;
}

function draftOf({ db }: Store, id: string): object | null {
  const row = prepared<[string], { fit: unknown }>(db, 'SELECT fit FROM drafts WHERE fit_id = ?').get(id);
  try {
    return typeof row?.fit === 'string' ? checkedDocument('fit', JSON.parse(row.fit)) : null;
  } catch {
    return null;
  }
}

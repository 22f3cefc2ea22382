import type { Fit } from '../../core/document/fit-schema.ts';
import { prepared } from './prepared.ts';
import { putBack } from './quarantine.ts';
import { searchText } from './search-text.ts';
import type { Store } from './store.ts';

/** What is kept beside a fit so that a list of fits need not read the fits themselves. */
export function listEntry(fit: Fit) {
  const names = fit.seats.flatMap((seat) => (seat.athlete ? [seat.athlete.name] : []));
  return {
    name: fit.name,
    boatName: fit.boat.name,
    athleteNames: JSON.stringify(names),
    athleteIds: JSON.stringify(athleteIds(fit)),
    boatId: fit.boat.id ?? null,
    search: searchText(fit.name, fit.boat.name, ...names, fit.notes),
  };
}

/** Who kneels in each seat, bow first; null for nobody, or for somebody without an identifier. */
export function athleteIds(fit: Fit): (string | null)[] {
  return fit.seats.map(({ athlete }) => athlete?.id ?? null);
}

/** Brings a fit's entry in the list up to its newest state. */
export function touchFit(store: Store, { id, fit, at }: { id: string; fit: Fit; at: string }): void {
  const put = prepared(
    store.db,
    `UPDATE fits SET name = @name, boat_name = @boatName, athlete_names = @athleteNames, athlete_ids = @athleteIds,
       boat_id = @boatId, search = @search, changed_at = @at WHERE id = @id`,
  );
  put.run({ id, at, ...listEntry(fit) });
  putBack(store, { table: 'fits', rowId: id });
}

/** The instant of a fit's draft; null if it has none, `none` if there is no such fit. */
export function newestDraft(store: Store, id: string): string | null | 'none' {
  const row = prepared<[string], { savedAt: string | null }>(
    store.db,
    'SELECT drafts.saved_at AS savedAt FROM fits LEFT JOIN drafts ON fit_id = id WHERE id = ?',
  ).get(id);
  return row ? row.savedAt : 'none';
}

import { packedBytes } from '../../app/bundle/packed.ts';
import { bundleItems } from '../../app/bundle/read-bundle.ts';
import { bundleSteps } from '../../app/bundle/write-bundle.ts';
import { listConflicts } from '../../app/store/conflicts.ts';
import { mergeIn } from '../../app/store/merge.ts';
import type { MergeCounts } from '../../app/store/merge-counts.ts';
import { readLeaves } from '../../app/store/record-rows.ts';
import type { RecordRef } from '../../app/store/record-versions.ts';
import type { Store } from '../../app/store/store.ts';

/** How large a bundle's files may be; as usual where it is not given. */
export type Sizes = Parameters<typeof bundleSteps>[2];

/** Everything of a store as a bundle's bytes. */
export function bundleOf(store: Store, sizes?: Sizes): Uint8Array {
  const steps = bundleSteps(store, '0.0.0', sizes);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** Exports one store and imports it into another. */
export function bring(into: Store, from: Store): MergeCounts {
  return mergeIn(into, bundleItems(packedBytes(bundleOf(from))));
}

/** Both bring each other what they have, until nothing is new. */
export function meet(a: Store, b: Store): void {
  bring(b, a);
  bring(a, b);
}

/** Every field of every record, and every field that waits for a decision: equal on stores that have met. */
export function contentOf(
  store: Store,
  how: 'checked' | 'as-kept' = 'checked',
): { fields: Record<string, string>; open: string[] } {
  const records = store.db
    .prepare<[], RecordRef>(
      'SELECT DISTINCT kind, record_id AS id FROM field_versions ORDER BY kind, record_id',
    )
    .all();
  const fields = records.flatMap((ref) =>
    [...(readLeaves(store, ref, how) ?? [])].map(([path, value]) => [`${ref.kind} ${ref.id} ${path}`, value]),
  );
  const open = listConflicts(store).map(({ kind, id, path, values }) =>
    JSON.stringify([kind, id, path, ...values.map(({ value }) => value)]),
  );
  return { fields: Object.fromEntries(fields.sort()), open };
}

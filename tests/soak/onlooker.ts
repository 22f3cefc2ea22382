/** An edit of one field as an onlooker notes it who sees everything. */
interface Noted {
  readonly field: string;
  readonly value: string | null;
  /** Edits of the same field that its writer had seen replaced. */
  readonly knew: ReadonlySet<Noted>;
}

/**
 * Notes which edits each store has made or heard of, by who edited and who met whom, and nothing else: no versions, no
 * clocks. At the end it tells which edits no later one has replaced; each of those must stand or be shown.
 */
export interface Onlooker {
  /** `saw` is the value that stood, `waiting` the values that waited for a decision: those are not replaced. */
  edited(
    store: number,
    edit: { field: string; value: string | null; saw: string | null; waiting: readonly (string | null)[] },
  ): void;
  /** A decision replaces every edit of the field that the store knows of. */
  decided(store: number, decision: { field: string; value: string | null }): void;
  met(into: number, from: number): void;
  /** A meeting that was cut off: what came over is what `has` finds, and what that had replaced. */
  heard(into: number, from: number, has: (field: string, value: string | null) => boolean): void;
  /** Edits that no other one replaced, over all stores. */
  newest(): readonly { readonly field: string; readonly value: string | null }[];
}

export function onlooker(stores: number): Onlooker {
  const knows = Array.from({ length: stores }, () => new Set<Noted>());
  const ofField = (store: number, field: string) => [...knows[store]!].filter((edit) => edit.field === field);
  const isReplaced = (edit: Noted, among: readonly Noted[]) => among.some((other) => other.knew.has(edit));
  return {
    edited(store, { field, value, saw, waiting }) {
      const known = ofField(store, field);
      const stays = (edit: Noted) =>
        edit.value !== saw && waiting.includes(edit.value) && !isReplaced(edit, known);
      knows[store]!.add({ field, value, knew: new Set(known.filter((edit) => !stays(edit))) });
    },
    decided(store, { field, value }) {
      knows[store]!.add({ field, value, knew: new Set(ofField(store, field)) });
    },
    met(into, from) {
      for (const edit of knows[from]!) knows[into]!.add(edit);
    },
    heard(into, from, has) {
      for (const edit of [...knows[from]!]) {
        if (!has(edit.field, edit.value)) continue;
        for (const known of [edit, ...edit.knew]) knows[into]!.add(known);
      }
    },
    newest() {
      const all = [...new Set(knows.flatMap((one) => [...one]))];
      const replaced = new Set(all.flatMap(({ knew }) => [...knew]));
      return all.filter((edit) => !replaced.has(edit));
    },
  };
}

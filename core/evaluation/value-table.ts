/** Values of a seat and its boat as one array: a place for each value, by its id and its owner. */
export interface ValueTable {
  /** Keys (`keyOf`) in the order of the array. */
  readonly keys: readonly string[];
  /** Places by id: of the seat's own values, of the boat's, and of those shared with neighbours by their whole key. */
  readonly seat: Places;
  readonly boat: Places;
  readonly shared: Places;
}

/** Places in the array by name. */
export type Places = ReadonlyMap<string, number>;

/** Keys by id, of the boat and then of each seat: a drag needs hundreds each step, and building texts again is costly. */
const keys = new Map<string, string[]>();

/** Key of a quantity of a seat, or of the boat (null). */
export function keyOf(id: string, seat: number | null): string {
  const known = keys.get(id) ?? [];
  const place = seat === null ? 0 : seat + 1;
  const key = known[place] ?? `${id}@${seat ?? 'boat'}`;
  if (known.length === 0) keys.set(id, known);
  known[place] = key;
  return key;
}

/** Writes values by their ids into an array, those without a place left out. */
export function put(
  into: Float64Array,
  places: Places,
  values: Readonly<Partial<Record<string, number | null>>>,
): void {
  for (const id in values) {
    const at = places.get(id);
    const value = values[id];
    if (at !== undefined && value !== undefined && value !== null) into[at] = value;
  }
}

/** The entries of a record, typed by its names (`Object.entries` loses them). Names without a value are left out. */
export function entriesOf<Name extends string, Value>(
  record: Readonly<Partial<Record<Name, Value>>>,
): [Name, Value][] {
  return (Object.entries(record) as [Name, Value | undefined][]).filter(
    (entry): entry is [Name, Value] => entry[1] !== undefined,
  );
}

/** The names of a record, typed (`Object.keys` loses them). */
export function keysOf<Name extends string>(record: Readonly<Partial<Record<Name, unknown>>>): Name[] {
  return Object.keys(record) as Name[];
}

/** A record that has a value for each of `names`. */
export function recordOf<Name extends string, Value>(
  names: readonly Name[],
  value: (name: Name, index: number) => Value,
): Record<Name, Value> {
  return Object.fromEntries(names.map((name, i) => [name, value(name, i)])) as Record<Name, Value>;
}

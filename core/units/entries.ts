/** The entries of a record whose names are known: `Object.entries` forgets them. Names without a value are left out. */
export function entriesOf<Name extends string, Value>(
  record: Readonly<Partial<Record<Name, Value>>>,
): [Name, Value][] {
  return (Object.entries(record) as [Name, Value | undefined][]).filter(
    (entry): entry is [Name, Value] => entry[1] !== undefined,
  );
}

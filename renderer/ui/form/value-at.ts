/** The value at a path of nested records and lists; undefined where there is none. */
export function valueAt(whole: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce(
    (part, key) => (part as Readonly<Record<PropertyKey, unknown>> | undefined)?.[key],
    whole,
  );
}

/** The same records and lists with another value at the path; what is not on the path stays the same object. */
export function withValueAt<T>(whole: T, [key, ...rest]: readonly PropertyKey[], value: unknown): T {
  if (key === undefined) return value as T;
  const part = withValueAt(valueAt(whole, [key]), rest, value);
  return (Array.isArray(whole) ? whole.with(Number(key), part) : { ...whole, [key]: part }) as T;
}

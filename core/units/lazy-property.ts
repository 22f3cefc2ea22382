/** The state of a lazy property: the function that computes its value, and the value afterwards. */
interface Kept<Value> {
  readonly make: () => Value;
  value: Value | undefined;
}

/**
 * Gives objects a property whose value is computed at its first reading and then kept: what nothing reads during a drag costs
 * nothing. It is an own, enumerable property: spreading, comparing and JSON read it like any other.
 *
 * One getter serves every object: with a getter of their own, objects would not share the engine's fast layout.
 */
export function lazyProperty<Name extends string, Value>(name: Name) {
  const hidden = Symbol(name);
  const property = {
    enumerable: true,
    configurable: true,
    get(this: { readonly [hidden]: Kept<Value> }): Value {
      const kept = this[hidden];
      kept.value ??= kept.make();
      return kept.value;
    },
  };
  return <Rest extends object>(rest: Rest, make: () => Value): Rest & Readonly<Record<Name, Value>> => {
    const kept: Kept<Value> = { make, value: undefined };
    Object.defineProperty(rest, hidden, { value: kept });
    return Object.defineProperty(rest, name, property) as Rest & Readonly<Record<Name, Value>>;
  };
}

/** What stands behind a lazy property: how its value is made, and the value once it was. */
interface Kept<Value> {
  readonly make: () => Value;
  value: Value | undefined;
}

/**
 * Gives objects a property whose value is made when it is first read, and kept: what nobody reads while a hand is dragging then
 * costs nothing. It is an own, enumerable property: spreading, comparing and writing as JSON read it like any other.
 *
 * One getter serves every object. With a getter each, objects would lose the fast layout that the engine gives those made alike.
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

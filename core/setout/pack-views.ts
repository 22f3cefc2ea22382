/** Width and height of a view, or of the room for several, millimetres. */
export interface ViewSize {
  readonly width: number;
  readonly height: number;
}

/** Where a view's top left corner comes to lie, millimetres right of and below that of the room. */
export type ViewCorner = readonly [right: number, down: number];

/** White between two views on a page, millimetres. */
const BETWEEN_MM = 8;
/** Rounding of sums, millimetres. */
const SAME_MM = 1e-6;

interface Placed extends ViewSize {
  readonly right: number;
  readonly down: number;
}

/**
 * Places for views beside and under one another in a room, in the order given; null where they find none. Each is tried at the
 * top left and at the edges of those placed before it, so that few views find a place wherever there is one. Two of 100 × 50 stand
 * one under the other in a room of 110 × 120.
 */
export function packedViews(views: readonly ViewSize[], room: ViewSize): readonly ViewCorner[] | null {
  const order = [...views.keys()];
  for (const tried of ordersOf(order)) {
    const placed = placedAll(
      tried.map((k) => views[k]!),
      room,
      [],
    );
    if (placed) {
      return order.map((k): ViewCorner => {
        const { right, down } = placed[tried.indexOf(k)]!;
        return [right, down];
      });
    }
  }
  return null;
}

/** All orders of a few things, the given one first. */
function ordersOf(given: readonly number[]): number[][] {
  if (given.length <= 1) return [[...given]];
  return given.flatMap((first) =>
    ordersOf(given.filter((other) => other !== first)).map((others) => [first, ...others]),
  );
}

/** Places of all views after those that stand already; null where one finds none. */
function placedAll(views: readonly ViewSize[], room: ViewSize, before: readonly Placed[]): Placed[] | null {
  const [first, ...others] = views;
  if (!first) return [...before];
  const rights = [0, ...before.map(({ right, width }) => right + width + BETWEEN_MM)];
  const downs = [0, ...before.map(({ down, height }) => down + height + BETWEEN_MM)];
  for (const down of downs) {
    for (const right of rights) {
      const placed = { ...first, right, down };
      const inside =
        right + first.width <= room.width + SAME_MM && down + first.height <= room.height + SAME_MM;
      if (!inside || before.some((other) => meet(placed, other))) continue;
      const all = placedAll(others, room, [...before, placed]);
      if (all) return all;
    }
  }
  return null;
}

/** Whether two views come closer than the white between them. */
function meet(a: Placed, b: Placed): boolean {
  const apart = (from: number, size: number, other: number) => other >= from + size + BETWEEN_MM - SAME_MM;
  return !(
    apart(a.right, a.width, b.right) ||
    apart(b.right, b.width, a.right) ||
    apart(a.down, a.height, b.down) ||
    apart(b.down, b.height, a.down)
  );
}

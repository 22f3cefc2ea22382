/** The fields of a fit's floorboard that parts need. Metres, boat frame. */
export interface Board {
  /** Height of the top; a profile replaces it. */
  readonly heightM: number;
  /** Width; an outline replaces it. */
  readonly widthM: number;
  /** x of its aft end. */
  readonly aftEndXM: number;
  /** x of its fore end. */
  readonly foreEndXM: number;
  /** Of the plank itself. */
  readonly thicknessM: number;
  /** Heights of the top at places along the boat, straight lines between. */
  readonly profile?: readonly { readonly xM: number; readonly heightM: number }[] | undefined;
  /** Widths at places along the boat, straight lines between. */
  readonly outline?: readonly { readonly xM: number; readonly widthM: number }[] | undefined;
}

/**
 * Height of the floorboard's top over the boat frame's origin at `x` (boat frame, both metres): straight lines between the
 * points of its profile, the nearest point beyond them; without a profile the one height. At a third of the way from a point 3
 * cm high to one 6 cm high it is 4 cm.
 */
export function boardTopAt({ heightM, profile }: Pick<Board, 'heightM' | 'profile'>, x: number): number {
  if (!profile || profile.length === 0) return heightM;
  return between(lineOf(profile, 'heightM'), x);
}

/**
 * Half of the floorboard's width at `x`, metres: straight lines between the points of its outline, the nearest point beyond
 * them; without an outline half of the one width. The board's ends are ignored. Widths of 30 cm and 20 cm give 12.5 cm in the
 * middle between them.
 */
export function boardHalfWidthAt({ widthM, outline }: Pick<Board, 'widthM' | 'outline'>, x: number): number {
  if (!outline || outline.length === 0) return widthM / 2;
  return between(lineOf(outline, 'widthM'), x) / 2;
}

/** The board's ends along the boat, aft one first, metres. */
export function boardEnds({ aftEndXM, foreEndXM }: Pick<Board, 'aftEndXM' | 'foreEndXM'>): [number, number] {
  return [Math.min(aftEndXM, foreEndXM), Math.max(aftEndXM, foreEndXM)];
}

/**
 * How far a place in plan lies inside the board's outline, metres: the least of its distances to the side (across the boat)
 * and to the ends; negative by how far it is outside.
 */
export function insideBoard(board: Board, { x, y }: { readonly x: number; readonly y: number }): number {
  const [aft, fore] = boardEnds(board);
  return Math.min(boardHalfWidthAt(board, x) - Math.abs(y), x - aft, fore - x);
}

/** Where the outline or the top changes its direction between the ends, with the ends: stations in order, metres. */
export function boardStations(board: Board): number[] {
  const [aft, fore] = boardEnds(board);
  const bends = [...(board.profile ?? []), ...(board.outline ?? [])].map(({ xM }) => xM);
  return [...new Set([aft, ...bends.filter((x) => x > aft && x < fore), fore])].sort((a, b) => a - b);
}

/** Places along the boat, aftmost first, and the values there. */
interface Line {
  /** Metres, rising. */
  readonly x: readonly number[];
  /** One for each place. */
  readonly value: readonly number[];
}

/** Sorted lines by the list that they come from: every corner and hole asks for one in each step of a drag. */
const lines = new WeakMap<object, Line>();

function lineOf<Name extends string>(
  given: readonly ({ readonly xM: number } & { readonly [Key in Name]: number })[],
  name: Name,
): Line {
  const known = lines.get(given);
  if (known) return known;
  const sorted = given.toSorted((a, b) => a.xM - b.xM);
  const line = { x: sorted.map(({ xM }) => xM), value: sorted.map((point) => point[name]) };
  lines.set(given, line);
  return line;
}

/** A value between given points along straight lines; beyond them that of the nearest. */
function between({ x: places, value }: Line, x: number): number {
  let next = 0;
  while (next < places.length && !(places[next]! >= x)) next++;
  if (next === places.length) return value[next - 1]!;
  if (next === 0 || places[next] === places[next - 1]) return value[next]!;
  const share = (x - places[next - 1]!) / (places[next]! - places[next - 1]!);
  return value[next - 1]! + (value[next]! - value[next - 1]!) * share;
}

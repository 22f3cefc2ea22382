import type { BoardHole } from '../document/boat-schema.ts';
import { type Board, insideBoard } from '../parts/board.ts';
import { type PlanPoint, planMiddle } from '../parts/part.ts';
import type { DrillingWish } from './drilling-wish.ts';

/** Rules for the holes of a board. Metres. */
export interface DrillingRules {
  readonly board: Board;
  /**
   * Known holes: drilled ones may be used, new ones keep away from drilled and plugged ones. Planned ones are planned again.
   */
  readonly known: readonly BoardHole[];
  /** Least distance between the middles of two holes, along the boat or across it. */
  readonly apartM: number;
  /** Least distance of a hole's middle from the board's edge. */
  readonly edgeM: number;
  /** New holes lie on a grid this fine. */
  readonly stepM: number;
}

/** Usual rules: three bolts' breadth between holes, two to the edge (common practice, no source), a grid of 1 mm. */
export const USUAL_DRILLING = { apartM: 0.018, edgeM: 0.012, stepM: 0.001 } as const;

/** A bolt goes through a hole that is off by this, metres: the clearance of bolts in their holes. */
const SAME_M = 0.0005;

/** A hole that a plan may use. */
export interface PlanHole extends PlanPoint {
  /** True where it is drilled already. */
  readonly drilled: boolean;
}

/** One place for a fitting: how far it is from its wish, and the holes of its bolts (indices in `holes`; none on rails). */
export interface Standing {
  /** Moved forward by so many metres, boat frame. */
  readonly dx: number;
  /** Moved to port by so many metres, boat frame. */
  readonly dy: number;
  /** Length of that move, millimetres. */
  readonly movedMm: number;
  /** Empty where the fitting stands on rails. */
  readonly holes: readonly number[];
}

/** Everything that a plan chooses from: the standings of each wish, least moved first, and all holes that they use. */
export interface DrillingModel {
  readonly wishes: readonly DrillingWish[];
  readonly standings: readonly (readonly Standing[])[];
  readonly holes: readonly PlanHole[];
  readonly rules: DrillingRules;
}

/**
 * The choices of a plan. A fitting moves as a whole; the distance of its bolts is rounded to the grid, because its own block is
 * drilled to suit. It may stand wherever all its bolts fall on drilled holes or on the grid, within its tolerance, clear of the
 * board's edge and of every known hole. On rails it stands as wished, kept from their ends, and needs no hole. A wish without a
 * place has no standings.
 */
export function drillingModel(wishes: readonly DrillingWish[], rules: DrillingRules): DrillingModel {
  const holes: PlanHole[] = rules.known
    .filter(({ state }) => state === 'drilled')
    .map(({ xM, yM }) => ({ x: xM, y: yM, drilled: true }));
  const drilled = holes.length;
  const known = new Map<string, number>();
  const holeAt = (at: PlanPoint): number | null => {
    const there = holes.slice(0, drilled).findIndex((hole) => chebyshevDistance(hole, at) <= SAME_M);
    if (there >= 0) return there;
    if (!mayBeDrilled(at, rules)) return null;
    const key = `${Math.round(at.x * 1e4)} ${Math.round(at.y * 1e4)}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    known.set(key, holes.length);
    return holes.push({ ...at, drilled: false }) - 1;
  };
  const standings = wishes.map((wish) => {
    if (wish.rails) return onRails(wish, wish.rails, rules);
    const pattern = onGrid(wish.bolts, rules.stepM);
    const found = movesOf(pattern, wish, { rules, drilled: holes.slice(0, drilled) }).flatMap((move) => {
      const places = pattern.map(({ x, y }) => holeAt({ x: x + move.x, y: y + move.y }));
      if (places.some((place) => place === null)) return [];
      const used = places as number[];
      if (!clearOfOneAnother(used, holes, rules)) return [];
      // The holes' own places count: a bolt stands where its hole is.
      const at = planMiddle(used.map((id) => holes[id]!));
      const wanted = planMiddle(wish.bolts);
      const [dx, dy] = [at.x - wanted.x, at.y - wanted.y];
      return [{ dx, dy, movedMm: 1000 * Math.hypot(dx, dy), holes: used }];
    });
    return found
      .filter(({ movedMm }) => movedMm <= 1000 * wish.toleranceM + 1e-6)
      .sort((a, b) => a.movedMm - b.movedMm);
  });
  return { wishes, standings, holes, rules };
}

/** The one standing on rails: as wished, or moved in from their ends as far as a bolt needs; none where that is too far. */
function onRails(
  { bolts, toleranceM }: DrillingWish,
  [aft, fore]: readonly [number, number],
  { edgeM }: DrillingRules,
): Standing[] {
  if (bolts.length === 0) return [];
  const { x } = planMiddle(bolts);
  const dx = Math.min(fore - edgeM, Math.max(aft + edgeM, x)) - x;
  const isThere = fore - aft >= 2 * edgeM && Math.abs(dx) <= toleranceM + 1e-9;
  return isThere ? [{ dx, dy: 0, movedMm: 1000 * Math.abs(dx), holes: [] }] : [];
}

/** Distance in the rule's own measure: the greater of along and across, so that it is never more than the true one. */
export function chebyshevDistance(a: PlanPoint, b: PlanPoint): number {
  return Math.max(Math.abs(a.x - b.x), Math.abs(a.y - b.y));
}

/** A pattern with its first bolt where it is and all others at whole steps from it. */
function onGrid(bolts: readonly PlanPoint[], step: number): PlanPoint[] {
  const [first] = bolts;
  const whole = (value: number) => Math.round(value / step) * step;
  return bolts.map(({ x, y }) => ({ x: first!.x + whole(x - first!.x), y: first!.y + whole(y - first!.y) }));
}

/** Candidate moves of a pattern: onto every place of the grid within the tolerance, and every bolt onto every drilled hole. */
function movesOf(
  pattern: readonly PlanPoint[],
  { toleranceM }: DrillingWish,
  { rules: { stepM }, drilled }: { rules: DrillingRules; drilled: readonly PlanPoint[] },
): PlanPoint[] {
  const [first] = pattern;
  // Rounding the bolts' distance may have moved the middle by half a step.
  const reach = toleranceM + stepM;
  const along = gridPlaces(first!.x, reach, stepM).map((x) => x - first!.x);
  const across = gridPlaces(first!.y, reach, stepM).map((y) => y - first!.y);
  const onDrilled = pattern.flatMap((bolt) =>
    drilled
      .map(({ x, y }) => ({ x: x - bolt.x, y: y - bolt.y }))
      .filter((move) => Math.hypot(move.x, move.y) <= reach),
  );
  return [...onDrilled, ...along.flatMap((x) => across.map((y) => ({ x, y })))];
}

/** Places of the grid within reach. */
function gridPlaces(at: number, reach: number, step: number): number[] {
  const least = Math.ceil((at - reach) / step - 1e-9);
  const most = Math.floor((at + reach) / step + 1e-9);
  return Array.from({ length: Math.max(0, most - least + 1) }, (_, k) => (least + k) * step);
}

/** Whether a new hole may be drilled: clear of the board's edge and of every known hole, filled ones too. */
function mayBeDrilled(at: PlanPoint, { board, edgeM, apartM, known }: DrillingRules): boolean {
  if (insideBoard(board, at) < edgeM - 1e-9) return false;
  const there = known.filter(({ state }) => state !== 'planned');
  return there.every(({ xM, yM }) => chebyshevDistance(at, { x: xM, y: yM }) >= apartM - 1e-9);
}

/**
 * Whether the holes of one standing leave enough wood between them; those drilled already are as they are.
 */
function clearOfOneAnother(
  used: readonly number[],
  holes: readonly PlanHole[],
  { apartM }: DrillingRules,
): boolean {
  return used.every((a, k) =>
    used.slice(k + 1).every((b) => {
      const [one, other] = [holes[a]!, holes[b]!];
      return a !== b && ((one.drilled && other.drilled) || chebyshevDistance(one, other) >= apartM - 1e-9);
    }),
  );
}

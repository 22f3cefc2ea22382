import { apart, type DrillingModel, type PlanHole, type Standing } from './drilling-model.ts';

/** A plan: for each wish how its fitting stands (null where it finds no place), and what is drilled for it. */
export interface DrillingPlan {
  readonly standings: readonly (Standing | null)[];
  /** Holes that are used, drilled already or new. */
  readonly used: readonly PlanHole[];
  readonly fresh: readonly PlanHole[];
  /** Pairs of bolts that are different: as many base plates fit all fittings. */
  readonly plates: number;
  readonly movedMm: number;
}

/** The plan that takes one standing for each wish (its place in `standings`, or null). */
export function planOf(model: DrillingModel, chosen: readonly (number | null)[]): DrillingPlan {
  const standings = chosen.map((at, wish) => (at === null ? null : model.standings[wish]![at]!));
  const ids = [...new Set(standings.flatMap((standing) => standing?.holes ?? []))].sort((a, b) => a - b);
  const used = ids.map((id) => model.holes[id]!);
  const sets = new Set(
    standings.flatMap((standing) => (standing ? [standing.holes.toSorted().join(' ')] : [])),
  );
  return {
    standings,
    used,
    fresh: used.filter(({ drilled }) => !drilled),
    plates: sets.size,
    movedMm: standings.reduce((sum, standing) => sum + (standing?.movedMm ?? 0), 0),
  };
}

/** What one new hole costs beside a millimetre of moving: more than all fittings of a boat are ever moved together. */
export const HOLE_COST = 1000;

/** What a plan costs: new holes first, then how far everybody is moved, millimetres. */
export function costOf({ fresh, movedMm }: DrillingPlan): number {
  return HOLE_COST * fresh.length + movedMm;
}

/** New holes of a plan that lie too near one another, as groups of places in the model's list of holes; none in a good plan. */
export function tooNear(model: DrillingModel, chosen: readonly (number | null)[]): number[][] {
  const ids = [
    ...new Set(chosen.flatMap((at, wish) => (at === null ? [] : model.standings[wish]![at]!.holes))),
  ].filter((id) => !model.holes[id]!.drilled);
  const { apartM } = model.rules;
  return ids.flatMap((a, k) =>
    ids
      .slice(k + 1)
      .filter((b) => apart(model.holes[a]!, model.holes[b]!) < apartM - 1e-9)
      .map((b) => crowdOf(model, a, b)),
  );
}

/**
 * All new holes of the model in a square, less than the least distance wide, that holds both: of them only one may be drilled. One
 * such rule stands for many pairs.
 */
function crowdOf({ holes, rules: { apartM } }: DrillingModel, a: number, b: number): number[] {
  const [x, y] = [Math.min(holes[a]!.x, holes[b]!.x), Math.min(holes[a]!.y, holes[b]!.y)];
  const within = (value: number, from: number) => value >= from - 1e-9 && value < from + apartM - 1e-9;
  return holes.flatMap((hole, id) => (!hole.drilled && within(hole.x, x) && within(hole.y, y) ? [id] : []));
}

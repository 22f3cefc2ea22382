import { chebyshevDistance, type DrillingModel, type PlanHole, type Standing } from './drilling-model.ts';

/** A plan: for each wish how its fitting stands (null where it finds no place), and what is drilled for it. */
export interface DrillingPlan {
  /** One entry for each wish, in the order of the wishes. */
  readonly standings: readonly (Standing | null)[];
  /** Holes that are used, drilled already or new. */
  readonly used: readonly PlanHole[];
  /** New holes that must be drilled. */
  readonly fresh: readonly PlanHole[];
  /** Number of different sets of holes: each needs a base plate of its own. */
  readonly plates: number;
  /** Sum over all fittings, millimetres. */
  readonly movedMm: number;
}

/** The plan that takes one standing for each wish (its place in `standings`, or null). */
export function planOf(model: DrillingModel, chosen: readonly (number | null)[]): DrillingPlan {
  const standings = chosen.map((at, wish) => (at === null ? null : model.standings[wish]![at]!));
  const ids = [...new Set(standings.flatMap((standing) => standing?.holes ?? []))].sort((a, b) => a - b);
  const used = ids.map((id) => model.holes[id]!);
  const sets = new Set(standings.flatMap((standing) => (standing?.holes.length ? [plateOf(standing)] : [])));
  return {
    standings,
    used,
    fresh: used.filter(({ drilled }) => !drilled),
    plates: sets.size,
    movedMm: standings.reduce((sum, standing) => sum + (standing?.movedMm ?? 0), 0),
  };
}

/** The set of holes that a standing's bolts go through, as a key: standings with the same one share a base plate. */
export function plateOf({ holes }: Standing): string {
  return holes.toSorted((a, b) => a - b).join(' ');
}

/** Costs of a new hole and a base plate, in millimetres of moving. */
export interface DrillingWeights {
  /** Millimetres of moving that one new hole is worth. */
  readonly hole: number;
  /** Millimetres of moving that one more base plate is worth. */
  readonly plate: number;
}

/**
 * Weights by which one hole less is worth any number of plates, and one plate less any moving: a plate costs more than the
 * farthest moves of all together, a hole more than all plates.
 */
export function weightsOf({ standings }: Pick<DrillingModel, 'standings'>): DrillingWeights {
  const farthest = standings.reduce((sum, ways) => sum + (ways.at(-1)?.movedMm ?? 0), 0);
  const plate = Math.ceil(farthest) + 1;
  return { plate, hole: plate * (standings.length + 1) };
}

/** Cost of a plan: new holes first, then base plates, then the sum of moves, millimetres. */
export function costOf({ fresh, plates, movedMm }: DrillingPlan, { hole, plate }: DrillingWeights): number {
  return hole * fresh.length + plate * plates + movedMm;
}

/** Holes just at the least distance are far enough, metres. */
const ON_EDGE_M = 1e-8;

/**
 * New holes of a plan that are too near one another, as groups of indices in the model's list of holes; empty for a good plan.
 */
export function tooNear(model: DrillingModel, chosen: readonly (number | null)[]): number[][] {
  const ids = [
    ...new Set(chosen.flatMap((at, wish) => (at === null ? [] : model.standings[wish]![at]!.holes))),
  ].filter((id) => !model.holes[id]!.drilled);
  const { apartM } = model.rules;
  return ids.flatMap((a, k) =>
    ids
      .slice(k + 1)
      .filter((b) => chebyshevDistance(model.holes[a]!, model.holes[b]!) < apartM - 1e-9)
      .flatMap((b) => crowdsOf(model, a, b)),
  );
}

/**
 * All new holes of the model in a square, less than the least distance wide, that holds both: of them only one may be drilled.
 * One such rule stands for many pairs. The square is laid with the two at each of its corners, so that the next answer cannot
 * avoid it by moving a millimetre.
 */
function crowdsOf({ holes, rules: { apartM } }: DrillingModel, a: number, b: number): number[][] {
  const [one, other] = [holes[a]!, holes[b]!];
  const starts = (p: number, q: number) => [Math.min(p, q), Math.max(p, q) - apartM + ON_EDGE_M];
  const within = (value: number, from: number) =>
    value >= from - ON_EDGE_M / 2 && value < from + apartM - ON_EDGE_M;
  return starts(one.x, other.x).flatMap((x) =>
    starts(one.y, other.y).map((y) =>
      holes.flatMap((hole, id) => (!hole.drilled && within(hole.x, x) && within(hole.y, y) ? [id] : [])),
    ),
  );
}

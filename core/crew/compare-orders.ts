import type { Fit } from '../document/fit-schema.ts';
import type { Evaluator } from '../evaluation/evaluator.ts';
import type { Report } from '../evaluation/report.ts';
import { type Cost, costOfChange, towedFit, usualSpeed } from '../under-way/under-way-of-fit.ts';
import { LEVEL_TARGET, type LevelTarget } from './level-crew.ts';
import { reseat } from './swap-seats.ts';

/** One seating order and how it does. Smaller `score` is better. */
export interface SeatingOrder {
  /** `order[i]` is the present seat whose paddler takes seat `i`. */
  readonly order: readonly number[];
  /** Bow over stern and combined centre of mass from the centreline, metres, ready; null when it does not float. */
  readonly trim: number | null;
  /** Positive to port. */
  readonly offCentre: number | null;
  /** How much deeper than in the present order the boat floats amidships, metres. */
  readonly sinkage: number | null;
  /** Its cost against the present order at the same power, at the usual speed; null where either does not float. */
  readonly water: Cost | null;
  /** Pairs of neighbours who paddle on the same side. */
  readonly sameSideNeighbours: number;
  /** Findings that say change or stop. */
  readonly serious: number;
  /** millimetres off the trim target + millimetres off centre + 20 for each pair of same-side neighbours. */
  readonly score: number;
}

/** What a pair of neighbours on the same side costs in the ranking, in millimetres (this project's weighing). */
const SAME_SIDE_COST = 20;

/** All orders of n things, in lexicographic order: 1, 2, 6, 24 for 1 to 4. */
export function permutations(n: number): number[][] {
  if (n === 0) return [[]];
  const shorter = permutations(n - 1);
  const all: number[][] = [];
  for (let first = 0; first < n; first++) {
    for (const rest of shorter) all.push([first, ...rest.map((i) => (i >= first ? i + 1 : i))]);
  }
  return all;
}

/**
 * Judges one order after another: a generator, so that a worker can report progress and stop. Each paddler keeps side and
 * setting.
 */
export function* compareOrders(
  evaluator: Evaluator,
  fit: Fit,
  target: LevelTarget = LEVEL_TARGET,
): Generator<SeatingOrder, void, void> {
  const held = evaluator.evaluate(fit);
  const present = { report: held, towed: towedFit(fit, held, null) };
  for (const order of permutations(fit.seats.length)) {
    const seated = reseat(fit, order);
    yield judgeOrder(seated, order, { report: evaluator.evaluateHolding(seated, held), present, target });
  }
}

/** Orders by score, then by fewer serious findings, then as listed. */
export function rankOrders(orders: readonly SeatingOrder[]): SeatingOrder[] {
  return orders.toSorted((a, b) => a.score - b.score || a.serious - b.serious);
}

/** The crew in its present order, and its resistance by speed. */
interface Present {
  readonly report: Report;
  readonly towed: ReturnType<typeof towedFit>;
}

/** The boat with its crew in one order, and the score of that order. */
function judgeOrder(
  fit: Fit,
  order: readonly number[],
  { report, present, target }: { report: Report; present: Present; target: LevelTarget },
): SeatingOrder {
  const afloat = report.afloat.ready;
  const before = present.report.afloat.ready;
  const trim = afloat.kind === 'afloat' ? afloat.bowOverStern : null;
  const offCentre = report.balance?.offCentre ?? null;
  const sameSideNeighbours = fit.seats.filter((s, i) => i > 0 && s.side === fit.seats[i - 1]!.side).length;
  const score =
    trim === null || offCentre === null
      ? Number.POSITIVE_INFINITY
      : 1000 * (Math.abs(trim - target.trim) + Math.abs(offCentre - target.offCentre)) +
        SAME_SIDE_COST * sameSideNeighbours;
  const serious = report.findings.filter((f) => f.severity === 'change' || f.severity === 'stop').length;
  const sinkage = afloat.kind === 'afloat' && before.kind === 'afloat' ? afloat.draft - before.draft : null;
  const water = waterCost(fit, report, present);
  return { order, trim, offCentre, sinkage, water, sameSideNeighbours, serious, score };
}

/** Cost in deep still water, at the usual speed of a boat with this many seats. */
function waterCost(fit: Fit, report: Report, { towed }: Present): Cost | null {
  const changed = towedFit(fit, report, null);
  if (!towed || !changed) return null;
  const speed = usualSpeed(fit.seats.length);
  const at = towed(speed);
  return costOfChange({ of: 'other', at, changed, speed, watts: at.total * speed });
}

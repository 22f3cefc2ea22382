import { COORDINATES } from '../../core/document/coordinates.ts';
import type { Fit } from '../../core/document/fit-schema.ts';
import { freeCoordinates, holePitch } from '../../core/document/fitting-coordinate.ts';
import type { Evaluator } from '../../core/evaluation/evaluator.ts';
import type { Report } from '../../core/evaluation/report.ts';
import { boxOf, fitAt, type Search, sizeOf, startOf } from '../../core/optimise/moves.ts';
import { seriousCount, totalViolation } from '../../core/optimise/objective.ts';
import { uniform } from '../random32.ts';

/** What a global search found: how many findings say change or stop, the size of its moves, and how many coordinates move. */
export interface Evolved {
  readonly x: readonly number[];
  readonly serious: number;
  readonly size: number;
  readonly moved: number;
}

/** Weights of what it brings down: findings at change or stop first, then the size; a coordinate that moves costs a little. */
const SERIOUS_WEIGHT = 1000;
const VIOLATION_WEIGHT = 1;
const MOVED_WEIGHT = 0.15;

/** Numbers nearer to zero than this mean no move, so that settings with few moves are found at all. */
const DEAD_ZONE = 1;

/** Differential weight and crossover (Storn and Price 1997): drawn anew for each trial, as is usual where neither is known. */
const WEIGHT = { least: 0.3, most: 0.9 } as const;
const CROSSOVER = { least: 0.1, most: 0.9 } as const;

/**
 * The least change of a single by differential evolution (Storn and Price 1997, "current to best, 1, bin"), which knows nothing of
 * slopes, edges or linear programs: it only asks for the report of each setting.
 */
export function evolvedChange(
  evaluator: Evaluator,
  fit: Fit,
  { seed, members, generations }: { seed: number; members: number; generations: number },
): Evolved {
  const next = uniform(seed);
  const held = evaluator.evaluate(fit);
  const places = freeCoordinates(fit.seats[0]!).map((coordinate) => ({ seat: 0, coordinate }));
  const search: Search = { evaluator, fit, held, places };
  const box = boxOf(search);
  const n = places.length;
  const costAt = (x: readonly number[]) => {
    const moved = x.filter((d) => d !== 0).length;
    return costOf(evaluator.evaluateHolding(fitAt(search, x), held)) + sizeOf(x) + MOVED_WEIGHT * moved;
  };
  const decoded = (genes: readonly number[]) => genes.map((gene, i) => onGrid(search, box, { i, gene }));
  const first = () => Array.from({ length: n }, () => (next() < 0.4 ? 0 : 14 * (next() - 0.5)));
  let population = Array.from({ length: members }, (_, i) =>
    i === 0 ? new Array<number>(n).fill(0) : first(),
  );
  let costs = population.map((genes) => costAt(decoded(genes)));
  const pick = () => population[Math.floor(next() * members)]!;
  const between = ({ least, most }: { least: number; most: number }) => least + (most - least) * next();
  for (let g = 0; g < generations; g++) {
    const best = population[costs.indexOf(Math.min(...costs))]!;
    const trials = population.map((own) => {
      const [weight, crossover] = [between(WEIGHT), between(CROSSOVER)];
      const [a, b] = [pick(), pick()];
      const always = Math.floor(next() * n);
      return own.map((gene, i) =>
        i === always || next() < crossover
          ? gene + weight * (best[i]! - gene) + weight * (a[i]! - b[i]!)
          : gene,
      );
    });
    const there = trials.map((genes) => costAt(decoded(genes)));
    population = population.map((own, i) => (there[i]! <= costs[i]! ? trials[i]! : own));
    costs = costs.map((cost, i) => Math.min(cost, there[i]!));
  }
  const x = decoded(population[costs.indexOf(Math.min(...costs))]!);
  const serious = seriousCount(evaluator.evaluate(fitAt(search, x)));
  return { x, serious, size: sizeOf(x), moved: x.filter((d) => d !== 0).length };
}

/** Findings at change or stop, and a slope toward clearing them. */
function costOf(report: Report): number {
  const serious = seriousCount(report);
  return serious === 0 ? 0 : SERIOUS_WEIGHT * serious + VIOLATION_WEIGHT * Math.sqrt(totalViolation(report));
}

/** A gene as a move: none in the dead zone, else to the nearest grid line or hole within the coordinate's ends. */
function onGrid(
  search: Search,
  { low, high }: { low: readonly number[]; high: readonly number[] },
  { i, gene }: { i: number; gene: number },
): number {
  if (Math.abs(gene) <= DEAD_ZONE) return 0;
  const place = search.places[i]!;
  const { moveUnit, snapStep } = COORDINATES[place.coordinate];
  const step = holePitch(search.fit, place.coordinate) ?? snapStep;
  const from = startOf(search, place);
  const wanted = Math.min(high[i]!, Math.max(low[i]!, gene - Math.sign(gene) * DEAD_ZONE));
  const to = (step * Math.round((from + wanted * moveUnit) / step) - from) / moveUnit;
  return Math.abs(to) < 1e-9 ? 0 : to;
}

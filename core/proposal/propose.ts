import type { Finding } from '../findings/finding.ts';
import type { Evaluator } from '../fit/evaluator.ts';
import type { Fit } from '../fit/fit-schema.ts';
import {
  COORDINATE_RULES,
  coordinateOf,
  freeCoordinates,
  holePitch,
  withCoordinate,
} from '../fit/fitting-coordinate.ts';
import type { Report } from '../fit/report.ts';
import { boundedStep } from './bounded-step.ts';
import { marginsOf, placeable, seriousCount, totalTrouble } from './objective.ts';
import type { CoordinatePlace } from './sensitivity.ts';

/** One fitting's move in a proposal, in the coordinate's own unit. */
export interface ProposedMove extends CoordinatePlace {
  readonly from: number;
  readonly to: number;
}

/** A proposal: the fit with its moves made, and what could not be cleared. */
export interface Proposal {
  readonly fit: Fit;
  readonly report: Report;
  readonly moves: readonly ProposedMove[];
  /** Findings that still say change or stop. */
  readonly uncleared: readonly Finding[];
}

/** Weight of a move of one `scale` (1 cm, 3°) against one unit of trouble: small, so that findings come first. */
const MOVE_WEIGHT = 0.02;

/** Passes of the least-squares search; it stops earlier when nothing improves. */
const MOST_PASSES = 12;

/** A pass that lowers the cost by less than this share is the last one. */
const ENOUGH_SHARE = 1e-3;

/** Step of the differences, in units of a coordinate's scale: 1 mm, 0.3°. */
const PROBE = 0.1;

/** Proposals keep every coordinate within this many scales of where it was: 25 cm, 75°. */
const FARTHEST = 25;

interface Work {
  readonly evaluator: Evaluator;
  readonly held: Report;
  readonly places: readonly CoordinatePlace[];
  readonly scales: readonly number[];
  readonly start: readonly number[];
}

/**
 * The least change from today's setting that clears the findings which placing can clear: bounded least squares over
 * every unlocked fitting coordinate of the named seats (all seats if none are named), then rounded to the coordinate's
 * grain and to the hardware's holes. Deterministic. Never worse than the fit it was given.
 */
export function propose(evaluator: Evaluator, fit: Fit, seats?: readonly number[]): Proposal {
  const held = evaluator.evaluate(fit);
  const places = placesOf(fit, seats);
  const work: Work = {
    evaluator,
    held,
    places,
    scales: places.map((p) => COORDINATE_RULES[p.coordinate].scale),
    start: places.map((p) => coordinateOf(fit.seats[p.seat]!, p.coordinate)),
  };
  const found = search(work, fit);
  const rounded = roundToHardware(work, found);
  const report = evaluator.evaluate(rounded);
  if (totalTrouble(report) > totalTrouble(held) && seriousCount(report) >= seriousCount(held)) {
    return { fit, report: held, moves: [], uncleared: serious(held) };
  }
  return { fit: rounded, report, moves: movesBetween(work, rounded), uncleared: serious(report) };
}

function placesOf(fit: Fit, seats?: readonly number[]): CoordinatePlace[] {
  return fit.seats.flatMap((seat, index) =>
    seat.athlete && (seats?.includes(index) ?? true)
      ? freeCoordinates(seat).map((coordinate) => ({ seat: index, coordinate }))
      : [],
  );
}

function serious(report: Report): Finding[] {
  return report.findings.filter((f) => f.severity === 'change' || f.severity === 'stop');
}

function movesBetween({ places, start }: Work, to: Fit): ProposedMove[] {
  return places.flatMap((place, i) => {
    const at = coordinateOf(to.seats[place.seat]!, place.coordinate);
    return at === start[i] ? [] : [{ ...place, from: start[i]!, to: at }];
  });
}

/** The fit with every free coordinate at start + x·scale. */
function at({ places, scales, start }: Work, fit: Fit, x: readonly number[]): Fit {
  return places.reduce(
    (moved, place, i) => (x[i] ? withCoordinate(moved, place, start[i]! + x[i]! * scales[i]!) : moved),
    fit,
  );
}

function cost(report: Report, x: readonly number[]): number {
  return totalTrouble(report) + MOVE_WEIGHT ** 2 * x.reduce((sum, d) => sum + d * d, 0);
}

/** Gauss–Newton passes with backtracking, in units of each coordinate's scale. */
function search(work: Work, fit: Fit): Fit {
  const n = work.places.length;
  let x = new Array<number>(n).fill(0);
  let report = work.held;
  let best = cost(report, x);
  for (let pass = 0; pass < MOST_PASSES; pass++) {
    if (totalTrouble(report) === 0) break;
    const next = improve(work, fit, { x, report, best });
    if (!next) break;
    const gain = best - next.cost;
    ({ x, report } = next);
    best = next.cost;
    if (gain < ENOUGH_SHARE * (best + gain)) break;
  }
  return at(work, fit, x);
}

/** A side of a band, linear about the present point: `excess` above 0 is trouble; `row` is its slope per scale. */
interface Row {
  readonly excess: number;
  readonly row: readonly number[];
}

/** Dampings tried in one pass, boldest first: a far-off setting is led back in small steps. */
const DAMPINGS = [1e-4, 1e-2, 0.3, 6] as const;

/** The first step, from bold to careful, that lowers the cost; null when none does. */
function improve(
  work: Work,
  fit: Fit,
  { x, report, best }: { x: readonly number[]; report: Report; best: number },
): { x: number[]; report: Report; cost: number } | null {
  const findings = placeable(report.findings);
  const slopes = valueSlopes(work, fit, { x, findings });
  const margins = findings.flatMap((finding): Row[] => {
    const row = slopes.get(finding.id)!;
    return marginsOf(finding).map((m) => ({ excess: m.excess, row: row.map((slope) => slope * m.perUnit) }));
  });
  let found: { x: number[]; report: Report; cost: number } | null = null;
  for (const damping of DAMPINGS) {
    const step = stepFrom(work, x, { margins, damping });
    const next = backtrack(work, fit, { x, step, best: found?.cost ?? best });
    if (next) found = next;
    else if (found) break;
  }
  return found;
}

/**
 * One Gauss–Newton step. Sides of bands with room left count as soon as the step would use that room up: the step is
 * solved again with them until no new one is crossed.
 */
function stepFrom(
  work: Work,
  x: readonly number[],
  { margins, damping }: { margins: readonly Row[]; damping: number },
): number[] {
  const limits = { ...boundsFrom(work, x), damping };
  const moves = x.map((d, i) => ({
    excess: MOVE_WEIGHT * d,
    row: x.map((_, j) => (i === j ? MOVE_WEIGHT : 0)),
  }));
  const counted = new Set(margins.filter((m) => m.excess > 0));
  for (;;) {
    const rows = [...counted, ...moves];
    const step = boundedStep(
      { residuals: rows.map((r) => r.excess), jacobian: rows.map((r) => r.row) },
      limits,
    );
    const crossed = margins.filter((m) => !counted.has(m) && m.excess + product(m.row, step) > 0);
    if (crossed.length === 0) return step;
    for (const margin of crossed) counted.add(margin);
  }
}

function product(row: readonly number[], step: readonly number[]): number {
  return row.reduce((sum, slope, i) => sum + slope * step[i]!, 0);
}

/** Bounds of a step from `x`: no farther than `FARTHEST` from the start, and inside what each coordinate allows. */
function boundsFrom(
  { places, scales, start }: Work,
  x: readonly number[],
): { low: number[]; high: number[] } {
  const edge = (i: number, to: number) => (to - start[i]!) / scales[i]!;
  return {
    low: places.map(({ coordinate }, i) => {
      const { least } = COORDINATE_RULES[coordinate];
      return Math.min(0, Math.max(-FARTHEST, edge(i, least))) - x[i]!;
    }),
    high: places.map(({ coordinate }, i) => {
      const { most } = COORDINATE_RULES[coordinate];
      return Math.max(0, Math.min(FARTHEST, edge(i, most))) - x[i]!;
    }),
  };
}

/** How each finding's value answers one scale of every coordinate, by one-sided differences; SI per scale. */
function valueSlopes(
  work: Work,
  fit: Fit,
  { x, findings }: { x: readonly number[]; findings: readonly Finding[] },
): Map<string, number[]> {
  const rows = new Map(findings.map((f) => [f.id, new Array<number>(x.length).fill(0)]));
  x.forEach((_, index) => {
    const moved = x.map((d, i) => (i === index ? d + PROBE : d));
    const there = work.evaluator.evaluateHolding(at(work, fit, moved), work.held);
    const values = new Map(there.findings.map((f) => [f.id, f.value]));
    for (const { id, value } of findings) {
      rows.get(id)![index] = ((values.get(id) ?? value) - value) / PROBE;
    }
  });
  return rows;
}

function backtrack(
  work: Work,
  fit: Fit,
  { x, step, best }: { x: readonly number[]; step: readonly number[]; best: number },
): { x: number[]; report: Report; cost: number } | null {
  for (let share = 1; share > 0.2; share /= 2) {
    const moved = x.map((d, i) => d + share * step[i]!);
    const report = work.evaluator.evaluateHolding(at(work, fit, moved), work.held);
    const now = cost(report, moved);
    if (now < best) return { x: moved, report, cost: now };
  }
  return null;
}

/** Rounds every moved coordinate to its grain, and those on drilled rails to the better of the two nearest holes. */
function roundToHardware({ evaluator, held, places, start }: Work, found: Fit): Fit {
  let fit = found;
  places.forEach((place, i) => {
    const value = coordinateOf(fit.seats[place.seat]!, place.coordinate);
    const pitch = holePitch(fit, place.coordinate);
    if (pitch === null) {
      const { grain } = COORDINATE_RULES[place.coordinate];
      if (value !== start[i]) fit = withCoordinate(fit, place, tidy(Math.round(value / grain) * grain));
      return;
    }
    const holes = [Math.floor(value / pitch), Math.ceil(value / pitch)].map((k) => tidy(k * pitch));
    const tried = holes.map((hole) => withCoordinate(fit, place, hole));
    const costs = tried.map((f) => totalTrouble(evaluator.evaluateHolding(f, held)));
    fit = costs[0]! <= costs[1]! ? tried[0]! : tried[1]!;
  });
  return fit;
}

const tidy = (value: number) => Number(value.toFixed(6));

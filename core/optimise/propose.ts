import type { Fit } from '../document/fit-schema.ts';
import { freeCoordinates } from '../document/fitting-coordinate.ts';
import type { Evaluator } from '../evaluation/evaluator.ts';
import type { Finding } from '../evaluation/finding.ts';
import type { Report } from '../evaluation/report.ts';
import { keyOf } from '../evaluation/value-table.ts';
import { servesOutcome, settledEdges } from './edges.ts';
import { fitAt, type Search, sizeOf } from './moves.ts';
import { isSerious, placeable, seriousCount } from './objective.ts';
import { type Offer, offersFor } from './offers.ts';
import { movesBetween, type ProposedMove } from './proposed-move.ts';
import type { CoordinatePlace } from './sensitivity.ts';
import { beginning, smallestOfWays } from './smallest-change.ts';

/** A proposal: the fit with its moves made, what could not be cleared, and what each remaining check would cost. */
export interface Proposal {
  readonly fit: Fit;
  readonly report: Report;
  readonly moves: readonly ProposedMove[];
  /** Findings that still say change or stop. */
  readonly uncleared: readonly Finding[];
  /** Checks that may be cleared too, each with its price from this fit. */
  readonly offers: readonly Offer[];
}

/** Most passes with new doubts, where they grew on the way. */
const MOST_PASSES = 3;

/**
 * The least change from today's setting, in two steps: the smallest moves (1 cm, 3°, summed) of the unlocked fittings of the named
 * seats (all seats if none are named) that clear every *change* and *stop*, in whole millimetres, half degrees and holes;
 * then, for each check that is left, an offer. A check alone moves nothing. Deterministic. Never worse than the fit it was given.
 */
export function propose(evaluator: Evaluator, fit: Fit, seats?: readonly number[]): Proposal {
  const held = evaluator.evaluate(fit);
  const places = placesOf(fit, seats);
  const cleared = clearedFit({ evaluator, fit, held, places: placesToMove(places, held) });
  const { report } = cleared;
  const search: Search = { evaluator, fit: cleared.fit, held: report, places };
  const uncleared = report.findings.filter(isSerious);
  const moves = movesBetween({ fit, places }, cleared.fit);
  return { fit: cleared.fit, report, moves, uncleared, offers: offersFor(search, needsWood) };
}

/** A check that a measurement would settle needs that measurement, no moves. */
const needsWood = ({ settledBy }: Finding) => settledBy === undefined;

/** The fit after the first step and its report, never worse than before. */
function clearedFit(search: Search): { fit: Fit; report: Report } {
  const { evaluator, fit, held } = search;
  let best = { fit, report: held, size: 0 };
  if (seriousCount(held) === 0) return best;
  let strict: ReadonlySet<string> = new Set();
  let spreads = held;
  const from = beginning(search);
  for (let pass = 0; pass < MOST_PASSES; pass++) {
    const edges = settledEdges({ ...held, quantities: withSpreadsOf(held, spreads) }, strict);
    const { here } = smallestOfWays({ ...search, held: spreads }, edges, from);
    const there = fitAt(search, here.x);
    const report = evaluator.evaluate(there);
    const found = { fit: there, report, size: sizeOf(here.x) };
    const better = isBetter(found, best);
    if (better) best = found;
    const left = placeable(report.findings).filter(isSerious);
    if (left.length === 0) break;
    const places = left.filter((f) => servesOutcome(f) && !strict.has(f.id)).map((f) => f.id);
    if (places.length === 0 && !better) break;
    strict = new Set([...strict, ...places]);
    spreads = report;
  }
  return best;
}

/** A report's values with another's spreads: where doubts grow on the way, those at its end count. */
function withSpreadsOf({ quantities }: Report, spreads: Report): Report['quantities'] {
  const at = new Map(spreads.quantities.map((q) => [keyOf(q.id, q.seat), q]));
  return quantities.map((q) => {
    const { sd = null, judged } = at.get(keyOf(q.id, q.seat)) ?? q;
    const own = q.judged && judged ? { judged: { ...q.judged, sd: judged.sd } } : {};
    return { ...q, sd, ...own };
  });
}

/** A setting that was tried: its report, and the size of the moves that lead there. */
interface Found {
  readonly report: Report;
  /** In units of moves: 1 cm or 3° each. */
  readonly size: number;
}

/** Fewer stops, then fewer of both, then the smaller change. */
function isBetter(a: Found, b: Found): boolean {
  const stops = ({ report }: Found) => report.findings.filter((f) => f.severity === 'stop').length;
  const by = stops(a) - stops(b) || seriousCount(a.report) - seriousCount(b.report) || a.size - b.size;
  return by < 0;
}

/** Coordinates that may be moved: those of occupied seats, of the named ones alone where some are named. */
function placesOf(fit: Fit, seats?: readonly number[]): CoordinatePlace[] {
  return fit.seats.flatMap((seat, index) =>
    seat.athlete && (seats?.includes(index) ?? true)
      ? freeCoordinates(seat).map((coordinate) => ({ seat: index, coordinate }))
      : [],
  );
}

/** The places that could clear something: those of the seats that have it and their neighbours, all where the boat has it. */
function placesToMove(places: readonly CoordinatePlace[], { findings }: Report): CoordinatePlace[] {
  const serious = placeable(findings).filter(isSerious);
  if (serious.some((f) => f.seat === null)) return [...places];
  const near = (seat: number, f: Finding) =>
    seat === f.seat || (NEIGHBOURS.includes(f.quantity) && Math.abs(seat - f.seat!) === 1);
  return places.filter(({ seat }) => serious.some((f) => near(seat, f)));
}

/** Findings between two seats. */
const NEIGHBOURS: readonly string[] = ['toNextSeat', 'bladeSpacing'];

export type { ProposedMove } from './proposed-move.ts';

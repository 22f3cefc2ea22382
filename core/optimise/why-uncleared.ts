import type { LimitedJoint } from '../document/athlete-schema.ts';
import { COORDINATES } from '../document/coordinates.ts';
import type { Fit } from '../document/fit-schema.ts';
import { withCoordinate } from '../document/fitting-coordinate.ts';
import type { Lockable } from '../document/seat-schema.ts';
import type { Evaluator } from '../evaluation/evaluator.ts';
import type { Finding, SideEffect, Suggestion } from '../evaluation/finding.ts';
import type { Report } from '../evaluation/report.ts';
import { suggestChange } from '../evaluation/suggest-change.ts';
import { isSerious, placeable } from './objective.ts';

/** A move that would clear a finding. */
type Move = Extract<Suggestion, { kind: 'move' }>;
/** What is chosen instead of moved. */
type Choice = Extract<Suggestion, { kind: 'choose' }>['choice'];

/** Why a proposal could not clear a finding. */
export type WhyUncleared =
  /** A choice clears it, not a place. */
  | { readonly kind: 'choice'; readonly choice: Choice }
  /** It is about something given: the boat, or the depth of a recess. */
  | { readonly kind: 'given' }
  /** A move of this locked fitting would clear it. */
  | { readonly kind: 'locked'; readonly fitting: Lockable; readonly move: Move }
  /** One more move would clear it, and bring these, which say *change* or *stop* with it, farther from their bands. */
  | { readonly kind: 'against'; readonly move: Move; readonly spoils: readonly SideEffect[] }
  /** It keeps a limit of the athlete's own: without that limit it would not be found. No setting keeps both. */
  | { readonly kind: 'limit'; readonly joint: LimitedJoint; readonly maxDeg: number }
  /** No single fitting clears it within its longest move. */
  | { readonly kind: 'out of reach' };

/** A finding that still says change or stop, and why. */
export interface Uncleared {
  readonly finding: Finding;
  readonly why: WhyUncleared;
}

/**
 * Why each finding was left, found by solving for the single change that would clear it from the proposal, and where
 * there is none, for the one that would with every fitting freed. Each costs a search or two.
 */
export function whyUncleared(
  evaluator: Evaluator,
  { fit, report }: { fit: Fit; report: Report },
  findings: readonly Finding[],
): Uncleared[] {
  const freed = { ...fit, seats: fit.seats.map((seat) => ({ ...seat, locks: [] })) };
  const search = (of: Fit, finding: Finding) => suggestChange({ evaluator, fit: of, report, finding });
  return findings.map((finding) => ({ finding, why: reasonFor(finding, (of) => search(of, finding)) }));

  /** What says change or stop after a move, farther from its band than before. */
  function spoiltBy(move: Move): SideEffect[] {
    const after = evaluator.evaluateHolding(withCoordinate(fit, move, move.to), report).findings;
    const distances = new Map(report.findings.map((f) => [f.id, f.distance]));
    const worse = after.filter(
      ({ id, severity, distance }) =>
        (severity === 'change' || severity === 'stop') &&
        distance > (distances.get(id) ?? Number.POSITIVE_INFINITY),
    );
    return move.sideEffects.filter((s) => worse.some((f) => f.quantity === s.id && f.seat === s.seat));
  }

  /** The personal limit of the finding's seat without which it would say neither change nor stop. */
  function limitBehind({ id, seat }: Finding): WhyUncleared | null {
    const athlete = seat === null ? null : fit.seats[seat]?.athlete;
    const limit = athlete?.limits.find(({ joint }) => {
      const limits = athlete.limits.filter((other) => other.joint !== joint);
      const seats = fit.seats.map((s, i) => (i === seat ? { ...s, athlete: { ...athlete, limits } } : s));
      const without = evaluator.evaluate({ ...fit, seats }).findings.find((f) => f.id === id);
      return !without || !isSerious(without);
    });
    return limit ? { kind: 'limit', joint: limit.joint, maxDeg: limit.maxDeg } : null;
  }

  function reasonFor(finding: Finding, changeOf: (of: Fit) => Suggestion): WhyUncleared {
    const change = changeOf(fit);
    if (change.kind === 'choose') return { kind: 'choice', choice: change.choice };
    if (change.kind === 'measure' || placeable([finding]).length === 0) return { kind: 'given' };
    if (change.kind === 'move') return { kind: 'against', move: change, spoils: spoiltBy(change) };
    const unlocked = change.locked.length > 0 ? changeOf(freed) : change;
    if (unlocked.kind !== 'move') return limitBehind(finding) ?? { kind: 'out of reach' };
    return { kind: 'locked', fitting: COORDINATES[unlocked.coordinate].fitting, move: unlocked };
  }
}

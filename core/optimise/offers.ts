import type { Finding, SideEffect } from '../evaluation/finding.ts';
import type { Report } from '../evaluation/report.ts';
import { sideEffectsOf } from '../evaluation/side-effects.ts';
import { clearingEdges } from './edges.ts';
import { type Search, sizeOf } from './moves.ts';
import { placeable } from './objective.ts';
import { movesBetween, type ProposedMove } from './proposed-move.ts';
import { beginning, smallestChange } from './smallest-change.ts';

/** A check that could be cleared, and its price: the moves beyond the proposal, their size and side effects. */
export interface Offer {
  readonly finding: Finding;
  readonly moves: readonly ProposedMove[];
  /** Sum of the moves in units of 1 cm and 3°. */
  readonly size: number;
  readonly sideEffects: readonly SideEffect[];
}

/**
 * For each check of a proposal the smallest change that clears it and makes no other finding worse. Checks that no such change
 * clears are left out, and those that are not `asked` for. `search` begins at the proposal; a finding of one seat moves that
 * seat alone.
 */
export function offersFor(search: Search, asked: (finding: Finding) => boolean = () => true): Offer[] {
  const checks = placeable(search.held.findings).filter((f) => f.severity === 'check' && asked(f));
  if (checks.length === 0) return [];
  const from = beginning(search);
  return checks.flatMap((finding) => {
    const edges = clearingEdges(search.held, finding.id);
    const { here } = smallestChange(search, edges, {
      from,
      measurings: 0,
      still: otherSeats(search, finding),
    });
    const report = search.evaluator.evaluateHolding(here.fit, search.held);
    if (!clears(finding, search.held, report)) return [];
    const sideEffects = sideEffectsOf(search.held, report, finding.id);
    return [{ finding, moves: movesBetween(search, here.fit), size: sizeOf(here.x), sideEffects }];
  });
}

/** Coordinates of the seats that a finding does not speak of: they stay. */
function otherSeats({ places }: Search, { seat }: Finding): Set<number> {
  return new Set(places.flatMap((place, i) => (seat === null || place.seat === seat ? [] : [i])));
}

/** Whether a finding is good after a change and fewer findings say check, change or stop. */
function clears({ id }: Finding, before: Report, after: Report): boolean {
  const count = ({ findings }: Report) => findings.filter(({ severity }) => severity !== 'good').length;
  return after.findings.find((f) => f.id === id)?.severity === 'good' && count(after) < count(before);
}

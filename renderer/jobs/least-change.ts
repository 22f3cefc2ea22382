import type { Fit } from '../../core/document/fit-schema.ts';
import type { Evaluator } from '../../core/evaluation/evaluator.ts';
import type { Report } from '../../core/evaluation/report.ts';
import type { Offer } from '../../core/optimise/offers.ts';
import { type ProposedMove, propose } from '../../core/optimise/propose.ts';
import { type Uncleared, whyUncleared } from '../../core/optimise/why-uncleared.ts';
import type { JobTools } from './job.ts';

/** A fit to propose for, and which seats may be moved; null for all of them. */
export interface ProposalQuestion {
  readonly fit: Fit;
  readonly seats: readonly number[] | null;
}

/** How many findings say check, change and stop. */
export type FindingCounts = Readonly<Record<'check' | 'change' | 'stop', number>>;

/** What was found: the moves, how many findings need action before and after, what was left and why, and what else could be cleared. */
export interface FoundProposal {
  readonly moves: readonly ProposedMove[];
  readonly before: FindingCounts;
  readonly after: FindingCounts;
  readonly uncleared: readonly Uncleared[];
  /** Each check that may be cleared too, from the fit with the moves made. */
  readonly offers: readonly Offer[];
}

/** Settings tried between two reports of progress. */
const TELL_EVERY = 50;

/** Works out one proposal and tells how many settings it has tried. The search cannot pause: cancel ends its worker. */
export function* leastChange(
  { fit, seats }: ProposalQuestion,
  tools: JobTools<number>,
): Generator<number, FoundProposal, void> {
  const evaluator = counted(tools.evaluator, tools.tell);
  const before = evaluator.evaluate(fit);
  const proposal = propose(evaluator, fit, seats ?? undefined);
  const uncleared = proposal.uncleared.filter((f) => f.seat === null || (seats?.includes(f.seat) ?? true));
  return {
    moves: proposal.moves,
    before: wanting(before),
    after: wanting(proposal.report),
    uncleared: whyUncleared(evaluator, proposal, uncleared),
    offers: proposal.offers,
  };
}

function counted(evaluator: Evaluator, tell: (count: number) => void): Evaluator {
  let count = 0;
  const one = () => {
    count += 1;
    if (count % TELL_EVERY === 0) tell(count);
  };
  return {
    evaluate: (fit) => evaluator.evaluate(fit),
    evaluateHolding(fit, held) {
      one();
      return evaluator.evaluateHolding(fit, held);
    },
    judgedHolding(fit, held) {
      one();
      return evaluator.judgedHolding(fit, held);
    },
  };
}

function wanting({ findings }: Report): FindingCounts {
  const count = (severity: keyof FindingCounts) => findings.filter((f) => f.severity === severity).length;
  return { check: count('check'), change: count('change'), stop: count('stop') };
}

import { freeCoordinates } from '../../core/document/fitting-coordinate.ts';
import { createEvaluator } from '../../core/evaluation/evaluator.ts';
import { type Search, searchMoves } from '../../core/optimise/search.ts';
import { costByLibrary } from '../reference/proposal-by-library.ts';
import { firstFit, randomAthletes, sampleBoat } from '../reference/proposal-random.ts';
import { ratioOf, sideBySide } from './measure.ts';
import { type Fact, type Found, rowOf } from './row.ts';

const SEED = 77;
const ATHLETES = 8;
const OURS = `search of a setting, ${ATHLETES} random athletes together`;
const BY_LIBRARY = 'the same by ml-levenberg-marquardt, as good';

/** As good is a cost no greater than this times ours and this more: what the reference test allows. */
const AS_GOOD = { times: 1.02, more: 0.01 };
/** Iterations that the library is given, until it is as good; after the last it is given up. */
const LADDER = [1, 2, 3, 5, 8, 12, 20, 30, 45, 70];
const ROUNDS = 5;

/** One athlete's search, counting how often the whole fit is evaluated. */
interface Case {
  readonly search: Search;
  readonly counted: () => number;
}

/**
 * The search behind a proposal beside a general least-squares library on the same objective, from the same first setting of
 * each athlete, the library stopped at the first rung of the ladder where it is as good.
 */
export function searchBench(): Found {
  const cases = randomAthletes(SEED, ATHLETES).map((athlete) =>
    caseOf(firstFit(sampleBoat('single'), athlete)),
  );
  const costs = cases.map(({ search }) => searchMoves(search).cost);
  const rungs = cases.map((one, i) => rungFor(one, costs[i]!));
  const library = (one: Case, i: number) => costByLibrary(one.search, rungs[i] ?? LADDER.at(-1)!);
  const work = {
    [OURS]: () => cases.map(({ search }) => searchMoves(search)),
    [BY_LIBRARY]: () => cases.map(library),
  };
  const times = sideBySide(work, { rounds: ROUNDS, turnMs: 0, warmUpMs: 0 });
  const ratio = { to: OURS, times: ratioOf(times[BY_LIBRARY]!, times[OURS]!) };
  const fact = (name: string, value: number, unit: string): Fact => ({ group: 'core', name, value, unit });
  return {
    rows: [
      rowOf('core', OURS, { times: times[OURS]! }),
      rowOf('core', BY_LIBRARY, { times: times[BY_LIBRARY]!, ratio }),
    ],
    facts: [
      fact('evaluations that the search took', counting(cases, work[OURS]!), ''),
      fact('evaluations that the library took', counting(cases, work[BY_LIBRARY]!), ''),
      {
        ...fact(
          'athletes for whom the library came as good',
          rungs.filter((r) => r !== null).length,
          `of ${ATHLETES}`,
        ),
        note: 'ours takes an evaluation for a step where the library takes two for every coordinate; measuring slopes once is the least for either',
      },
    ],
  };
}

function caseOf(fit: Search['fit']): Case {
  const evaluator = createEvaluator();
  let evaluations = 0;
  const counter: Search['evaluator'] = {
    ...evaluator,
    evaluateHolding: (moved, held) => {
      evaluations++;
      return evaluator.evaluateHolding(moved, held);
    },
  };
  const places = freeCoordinates(fit.seats[0]!).map((coordinate) => ({ seat: 0, coordinate }));
  return {
    search: { evaluator: counter, fit, held: evaluator.evaluate(fit), places },
    counted: () => evaluations,
  };
}

/** Iterations after which the library is as good, or null where it never was. */
function rungFor({ search }: Case, cost: number): number | null {
  const enough = AS_GOOD.times * cost + AS_GOOD.more;
  return LADDER.find((iterations) => costByLibrary(search, iterations) <= enough) ?? null;
}

function counting(cases: readonly Case[], run: () => unknown): number {
  const sum = () => cases.reduce((all, { counted }) => all + counted(), 0);
  const before = sum();
  run();
  return sum() - before;
}

import { createEvaluator } from '../../core/evaluation/evaluator.ts';
import { propose } from '../../core/optimise/propose.ts';
import { evolvedChange } from '../reference/proposal-by-evolution.ts';
import { disturbedFits } from '../reference/proposal-disturbed.ts';
import { ratioOf, sideBySide } from './measure.ts';
import { type Found, rowOf } from './row.ts';

const SEED = 7;
const FITS = 3;
const OURS = `least change of ${FITS} disturbed singles`;
const EVOLVED = 'the same by differential evolution, as good';
const ROUNDS = 3;

/** Settings that differential evolution tries: what the reference test takes to come as near. */
const EVOLUTION = { members: 40, generations: 60 } as const;

/** A proposal with its offers beside a global search on the same disturbed settings. */
export function searchBench(): Found {
  const fits = disturbedFits(SEED, FITS);
  const work = {
    [OURS]: () => fits.map((fit) => propose(createEvaluator(), fit)),
    [EVOLVED]: () =>
      fits.map((fit, i) => evolvedChange(createEvaluator(), fit, { seed: i + 1, ...EVOLUTION })),
  };
  const times = sideBySide(work, { rounds: ROUNDS, turnMs: 0, warmUpMs: 0 });
  const ratio = { to: OURS, times: ratioOf(times[EVOLVED]!, times[OURS]!) };
  return {
    rows: [
      rowOf('core', OURS, { times: times[OURS]! }),
      rowOf('core', EVOLVED, { times: times[EVOLVED]!, ratio }),
    ],
    facts: [],
  };
}

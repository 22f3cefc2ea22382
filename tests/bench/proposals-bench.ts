import { createEvaluator } from '../../core/fit/evaluator.ts';
import { SAMPLE_HULLS } from '../reference/hydro-sample-hulls.ts';
import { proposeFirst, randomAthletes, reasonFor, sampleBoat } from '../reference/proposal-random.ts';

/**
 * First settings for 500 seeded random athletes in each sample hull: share that leaves nothing to change or stop, the
 * reasons of the rest, and the time of one. Takes minutes: `node tests/bench/proposals-bench.ts [athletes] [hull]`.
 */
const count = Number(process.argv[2] ?? 500);
const hulls = SAMPLE_HULLS.filter((name) => process.argv[3] === undefined || process.argv[3] === name);
for (const name of hulls) {
  const boat = sampleBoat(name);
  const evaluator = createEvaluator();
  const times: number[] = [];
  let clean = 0;
  for (const athlete of randomAthletes(20_261_125, count)) {
    const started = performance.now();
    const tried = proposeFirst(evaluator, boat, athlete);
    times.push(performance.now() - started);
    if (tried.proposal.uncleared.length === 0) clean++;
    else console.log(`${name}: ${reasonFor(tried)}`);
  }
  times.sort((a, b) => a - b);
  const at = (share: number) => times[Math.floor(share * (times.length - 1))]?.toFixed(0);
  console.log(
    `${name}: ${clean} of ${count} clean (${((100 * clean) / count).toFixed(1)} %), ` +
      `${at(0.5)} ms each at the middle, ${at(0.95)} ms at the slowest twentieth`,
  );
}

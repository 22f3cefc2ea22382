import type { Fit } from '../../core/document/fit-schema.ts';
import { createEvaluator, type Evaluator } from '../../core/evaluation/evaluator.ts';
import { seriousCount } from '../../core/optimise/objective.ts';
import { propose } from '../../core/optimise/propose.ts';
import { type WhyUncleared, whyUncleared } from '../../core/optimise/why-uncleared.ts';
import { SAMPLE_HULLS } from '../reference/hydro-sample-hulls.ts';
import { boatOf, crewFit, MARK_AT_MIDDLE, randomAthletes, reasonFor } from '../reference/proposal-random.ts';

/**
 * First settings and proposals for crews of seeded random athletes in each sample hull, and in the single with its mark at
 * mid-length: the share that leaves nothing to change or stop, why the rest could not be cleared, and the time of one. Takes
 * minutes: `npm run -s proposals -- [athletes] [hull]`.
 */
const SEED = 20_261_125;
const count = Number(process.argv[2] ?? 500);
const only = process.argv[3];
const names = [...SAMPLE_HULLS, MARK_AT_MIDDLE] as const;
const lines = names.filter((name) => only === undefined || name === only).map((name) => lineFor(name));
console.log(
  `\n${'hull'.padEnd(28)}${'crews'.padStart(9)}${'first setting clean'.padStart(21)}${'proposal clean'.padStart(16)}${'ms, middle'.padStart(12)}${'ms, p95'.padStart(9)}`,
);
for (const line of lines) console.log(line);

/** Runs one hull, tells of every failure as it comes, and gives the table's line. */
function lineFor(name: (typeof names)[number]): string {
  const boat = boatOf(name);
  const evaluator = createEvaluator();
  const times: number[] = [];
  let [firstClean, clean] = [0, 0];
  const athletes = randomAthletes(SEED, count);
  for (let i = 0; i < count; i++) {
    const fit = crewFit(boat, athletes, i);
    const started = performance.now();
    const proposal = propose(evaluator, fit);
    times.push(performance.now() - started);
    if (seriousCount(evaluator.evaluate(fit)) === 0) firstClean++;
    if (proposal.uncleared.length === 0) clean++;
    else {
      console.log(`${name}: ${reasonFor(proposal)}`);
      for (const { finding, why } of whyUncleared(evaluator, proposal, proposal.uncleared)) {
        console.log(`    ${finding.id}: ${whyText(why)}`);
      }
      if (fit.seats.length > 1) console.log(`    ${turnedText(evaluator, fit)}`);
    }
  }
  times.sort((a, b) => a - b);
  const at = (share: number) => times[Math.floor(share * (times.length - 1))]!.toFixed(0);
  const share = (n: number) => `${((100 * n) / count).toFixed(1)} %`;
  return `${name.padEnd(28)}${String(count).padStart(9)}${share(firstClean).padStart(21)}${share(clean).padStart(16)}${at(0.5).padStart(12)}${at(0.95).padStart(9)}`;
}

/** Whether the seating is to blame: what a proposal makes of the same crew seated the other way round. */
function turnedText(evaluator: Evaluator, { boat, seats }: Fit): string {
  const crew = seats.flatMap(({ athlete }) => (athlete ? [athlete] : [])).reverse();
  const { uncleared } = propose(evaluator, crewFit(boat, crew));
  return uncleared.length === 0
    ? 'seated the other way round the crew is clean'
    : 'nor seated the other way round';
}

function whyText(why: WhyUncleared): string {
  switch (why.kind) {
    case 'choice':
      return `a choice clears it: ${why.choice}`;
    case 'given':
      return 'it speaks of what is given';
    case 'locked':
      return `a locked fitting would: ${why.fitting}`;
    case 'against':
      return `${why.move.coordinate} at ${why.move.to.toFixed(3)} would, against ${why.spoils.map((s) => `${s.id}@${s.seat}`).join(', ') || 'nothing that is judged'}`;
    case 'limit':
      return `a personal limit: ${why.joint} at most ${why.maxDeg}°`;
    case 'out of reach':
      return 'no single fitting reaches that far';
  }
}

import { describe, expect, it } from 'vitest';
import type { LimitedJoint } from '../../core/document/athlete-schema.ts';
import type { Fit } from '../../core/document/fit-schema.ts';
import { createEvaluator } from '../../core/evaluation/evaluator.ts';
import { findQuantity, type QuantityId } from '../../core/evaluation/quantities.ts';
import { propose } from '../../core/optimise/propose.ts';
import { whyUncleared } from '../../core/optimise/why-uncleared.ts';
import { cases, LONG } from '../cases.ts';
import { notEmpty } from '../not-empty.ts';
import { evolvedChange } from './proposal-by-evolution.ts';
import { firstFit, randomAthletes, sampleBoat } from './proposal-random.ts';

const SEED = 33;
const COUNT = cases(1, 6);

/** The angle that each limit speaks of, and the motion (degrees from the neutral zero method) that it comes to. */
const JOINTS: readonly (readonly [LimitedJoint, QuantityId, (deg: number) => number])[] = [
  ['kneelingKneeFlexion', 'kneelingKnee', (deg) => 180 - deg],
  ['frontKneeFlexion', 'frontKnee', (deg) => 180 - deg],
  ['kneelingHipExtension', 'kneelingHip', (deg) => deg - 180],
  ['frontHipFlexion', 'frontHip', (deg) => 180 - deg],
  ['rearAnklePlantarflexion', 'rearAnkle', (deg) => deg - 90],
  ['frontAnkleDorsiflexion', 'frontAnkle', (deg) => 90 - deg],
  ['trunkForward', 'trunkPitch', (deg) => deg],
];

const evaluator = createEvaluator();
const fits = randomAthletes(SEED, COUNT).map((athlete) => firstFit(sampleBoat('single'), athlete));

/** The same fit of somebody with a personal limit. */
function limited(fit: Fit, joint: LimitedJoint, maxDeg: number): Fit {
  const [seat] = fit.seats;
  const athlete = { ...seat!.athlete!, limits: [{ joint, maxDeg, reason: 'invented' }] };
  return { ...fit, seats: [{ ...seat!, athlete }] };
}

// The quick run takes every other joint.
describe.each(JOINTS.filter((_, i) => LONG || i % 2 === 0))(
  'a personal limit on %s',
  (joint, quantity, motionOf) => {
    const limitOf = (fit: Fit, by: number) => {
      const { value } = findQuantity(evaluator.evaluate(fit).quantities, quantity, 0)!;
      return Math.round(motionOf((value * 180) / Math.PI) - by);
    };

    it.each(LONG ? [5, 10] : [10])('%i° past the natural posture leaves nothing to change or stop', (by) => {
      for (const fit of notEmpty(fits)) {
        const { uncleared, report } = propose(evaluator, limited(fit, joint, limitOf(fit, by)));
        expect(uncleared.map(({ id }) => id)).toEqual([]);
        const angle = (findQuantity(report.quantities, quantity, 0)!.value * 180) / Math.PI;
        expect(motionOf(angle)).toBeLessThanOrEqual(limitOf(fit, by));
      }
    });

    if (LONG)
      it('35° past it leaves no more than differential evolution (Storn and Price 1997), and says why', () => {
        for (const [i, fit] of fits.slice(0, 2).entries()) {
          const far = limited(fit, joint, limitOf(fit, 35));
          const proposal = propose(evaluator, far);
          const evolved = evolvedChange(evaluator, far, { seed: i + 1, members: 40, generations: 60 });
          expect(proposal.uncleared.length).toBeLessThanOrEqual(evolved.serious);
          const whys = whyUncleared(evaluator, proposal, proposal.uncleared);
          // What the limit leaves of other findings may be out of reach of any one move; the limit itself is always explained.
          for (const { finding, why } of whys)
            expect(
              finding.quantity === quantity ? ['limit', 'against'] : ['limit', 'against', 'out of reach'],
            ).toContain(why.kind);
        }
      });
  },
);

it('a limit that no setting keeps is named: a kneeling knee that may hardly bend', () => {
  const far = limited(fits[0]!, 'kneelingKneeFlexion', 25);
  const proposal = propose(evaluator, far);
  const knee = proposal.uncleared.filter(({ quantity }) => quantity === 'kneelingKnee');
  expect(whyUncleared(evaluator, proposal, knee)[0]!.why).toEqual({
    kind: 'limit',
    joint: 'kneelingKneeFlexion',
    maxDeg: 25,
  });
});

it('a knee that may bend no more than 60° finds its place, beyond the usual 125°', () => {
  const { uncleared, report } = propose(evaluator, limited(fits[0]!, 'kneelingKneeFlexion', 60));
  expect(uncleared.map(({ id }) => id)).toEqual([]);
  const angle = findQuantity(report.quantities, 'kneelingKnee', 0)!.value;
  expect((angle * 180) / Math.PI).toBeGreaterThanOrEqual(120);
});

import { describe, expect, it } from 'vitest';
import { type Athlete, athleteSchema } from '../../core/document/athlete-schema.ts';
import { boatSchema } from '../../core/document/boat-schema.ts';
import type { Fit } from '../../core/document/fit-schema.ts';
import { evaluateFit } from '../../core/evaluation/evaluator.ts';
import { QUANTITIES } from '../../core/evaluation/quantities.ts';
import { usualHull } from '../../core/hull/usual-hull.ts';
import { cases } from '../cases.ts';
import { exampleFit, exampleSeat } from '../core/example/example-fit.ts';
import { sampledSpreads } from './doubt-samples.ts';
import { boatOf, crewFit, randomAthletes } from './proposal-random.ts';

const SEED = 20_261_125;
const SAMPLES = cases(200, 10_000);

/** Sampling alone leaves a spread uncertain by 1/√(2n): three times that is allowed beside the tenth. */
const ALLOWED = 0.1 + 3 / Math.sqrt(2 * SAMPLES);

/** Spreads under a tenth of the smallest change worth showing are not compared. */
const SMALL = 0.1;

/** What a stroke is set to is a choice: the report gives it no doubt, while the samples draw how far somebody leans in fact. */
const AS_SET = ['strokeLean'];

/** A shortfall whose mean is under this share of its spread is missing in fewer than one sample of six: a spread of rare cases. */
const OFTEN_SHORT = 0.3;

const junior = athleteSchema.parse({
  name: 'Invented junior',
  sex: 'female',
  side: 'left',
  statureM: 1.48,
  massKg: 40,
  bornOn: '2014-05-01',
  measuredOn: '2026-05-01',
});

/** The example with its rear rest so far aft that the leg is as often too short as not. */
function stretched(): Fit {
  const seat = exampleSeat();
  const far = (aftM: number) => exampleFit([{ ...seat, rearRest: { ...seat.rearRest, aftM } }]);
  const { aftM } = seat.rearRest;
  const spare = evaluateFit(far(aftM)).quantities.find(({ id }) => id === 'rearReach')!.judged!.value;
  return far(aftM - spare);
}

/** The example with its front foot so far to the off side that the rear foot presses as often as not: its share meets 0 %. */
function hardlyOnTheRearFoot(): Fit {
  const seat = exampleSeat();
  const { frontFoot } = seat;
  return exampleFit([{ ...seat, frontFoot: { ...frontFoot, outM: frontFoot.outM - 0.05 } }]);
}

/** In a hull that nobody has measured: its breadth is most of what is not known of the room in it. */
const unmeasured = (athletes: readonly Athlete[]) =>
  crewFit(boatSchema.parse(usualHull({ boatClass: 'C1' })), athletes);

/** The quick run takes the first two. */
const FITS: readonly (readonly [string, () => Fit])[] = [
  ['the example', () => exampleFit()],
  ['an adult in the usual single', () => unmeasured(randomAthletes(3, 3))],
  ['an adult in the sample single', () => crewFit(boatOf('single'), randomAthletes(3, 3), 1)],
  ['a junior in the sample single', () => crewFit(boatOf('single'), [junior])],
  ['a rear leg at full stretch', stretched],
  ['a rear foot that hardly presses', hardlyOnTheRearFoot],
  ['a junior in the usual single', () => unmeasured([junior])],
  ['an adult in the sample training boat', () => crewFit(boatOf('training'), randomAthletes(3, 3), 2)],
];

// GUM, JCGM 101:2008: the first-order spreads are checked by propagating the distributions themselves.
describe.each(FITS.slice(0, cases(2, FITS.length)))(
  'spreads against %s sampled through the whole pipeline',
  (_, make) => {
    const fit = make();
    const sampled = sampledSpreads(fit, { samples: SAMPLES, seed: SEED });
    const { quantities } = evaluateFit(fit);

    it('are within a tenth for every quantity', () => {
      const wrong = quantities.flatMap(({ id, sd }) => {
        const { mean, sd: real } = sampled.get(id)!;
        if (AS_SET.includes(id)) return [];
        const step = QUANTITIES[id as keyof typeof QUANTITIES].step;
        if (Math.max(sd ?? 0, real) < SMALL * step) return [];
        // What is missing of a reach has a spread of its own only where it is missing now and then.
        if (id.endsWith('Reach') && mean <= OFTEN_SHORT * real) return [];
        const ratio = (sd ?? 0) / real;
        return Math.abs(Math.log(ratio)) < Math.log(1 + ALLOWED) ? [] : [`${id} ${ratio.toFixed(3)}`];
      });
      expect(wrong).toEqual([]);
    });
  },
);

import { describe, expect, it } from 'vitest';
import { createEvaluator } from '../../core/evaluation/evaluator.ts';
import { cases } from '../cases.ts';
import type { SampleHull } from './hydro-sample-hulls.ts';
import { boatOf, crewFit, randomAthletes } from './proposal-random.ts';

const SEED = 20_261_125;
const ATHLETES = cases(4, 300);

/** Findings that are not good at each seat (its share of the boat's among them), and at how many seats each is on. */
function censusOf(name: SampleHull) {
  const boat = boatOf(name);
  const evaluator = createEvaluator();
  const athletes = randomAthletes(SEED, ATHLETES);
  const places = boat.seats.length;
  const perSeat: number[] = [];
  const counts = new Map<string, number>();
  let serious = 0;
  for (let first = 0; first + places <= ATHLETES; first += places) {
    const { findings } = evaluator.evaluate(crewFit(boat, athletes, first));
    const told = findings.filter(({ severity }) => severity !== 'good');
    serious += told.filter(({ severity }) => severity === 'change' || severity === 'stop').length;
    const ofBoat = told.filter(({ seat }) => seat === null).length / places;
    boat.seats.forEach((_, i) => {
      perSeat.push(told.filter(({ seat }) => seat === i).length + ofBoat);
    });
    for (const { quantity, seat } of told)
      counts.set(quantity, (counts.get(quantity) ?? 0) + (seat === null ? places : 1));
  }
  return { perSeat: perSeat.toSorted((a, b) => a - b), counts, serious };
}

describe(`first settings of ${ATHLETES} random athletes (seed ${SEED}), in each sample hull`, () => {
  it.each((['single', 'four', 'training', 'pair'] as const).slice(0, cases(2, 4)))(
    'in the %s little is found, and no finding is a habit',
    (name) => {
      const { perSeat, counts, serious } = censusOf(name);
      const mean = perSeat.reduce((sum, n) => sum + n, 0) / perSeat.length;
      expect(perSeat[Math.floor(perSeat.length / 2)]).toBeLessThanOrEqual(1);
      expect(mean).toBeLessThanOrEqual(1.5);
      expect(serious, 'findings that say change or stop').toBe(0);
      for (const [quantity, n] of counts) expect(n / perSeat.length, quantity).toBeLessThanOrEqual(0.3);
    },
  );
});

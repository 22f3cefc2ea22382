import { describe, expect, it } from 'vitest';
import { bodyOfAthlete } from '../../../core/body/body-of-athlete.ts';
import { createEvaluator } from '../../../core/fit/evaluator.ts';
import type { Fit } from '../../../core/fit/fit-schema.ts';
import { COORDINATE_RULES, withCoordinate } from '../../../core/fit/fitting-coordinate.ts';
import { firstSetting } from '../../../core/proposal/first-setting.ts';
import { seriousCount, totalTrouble } from '../../../core/proposal/objective.ts';
import { propose } from '../../../core/proposal/propose.ts';
import { exampleAthlete, exampleBoat, exampleFit, exampleSeat } from '../example/example-fit.ts';

const evaluator = createEvaluator();

function spoilt(): Fit {
  const seat = exampleSeat();
  return exampleFit([
    {
      ...seat,
      kneePad: { ...seat.kneePad, aftM: 0.26, outM: 0.0 },
      rearRest: { ...seat.rearRest, turnDeg: 2 },
      frontFoot: { ...seat.frontFoot, forwardM: 0.2 },
    },
  ]);
}

describe('propose', () => {
  const fit = spoilt();
  const before = evaluator.evaluate(fit);
  const proposal = propose(evaluator, fit);

  it('brings the trouble down and clears serious findings', () => {
    expect(totalTrouble(proposal.report)).toBeLessThan(0.2 * totalTrouble(before));
    expect(seriousCount(proposal.report)).toBeLessThan(seriousCount(before));
  });

  it('says what it moved, in whole millimetres and half degrees', () => {
    expect(proposal.moves.length).toBeGreaterThan(0);
    for (const move of proposal.moves) {
      const grains = move.to / COORDINATE_RULES[move.coordinate].grain;
      expect(grains).toBeCloseTo(Math.round(grains), 6);
    }
  });

  it('is the same every time', () => {
    expect(propose(createEvaluator(), spoilt()).fit).toEqual(proposal.fit);
  });

  it('is not beaten by any single coordinate tried on a coarse grid', () => {
    const best = totalTrouble(proposal.report);
    for (const [coordinate, { scale }] of Object.entries(COORDINATE_RULES)) {
      for (let steps = -8; steps <= 8; steps += 2) {
        const place = { seat: 0, coordinate: coordinate as keyof typeof COORDINATE_RULES };
        const [fitting, field] = coordinate.split('.') as ['kneePad', 'aftM'];
        const tried = withCoordinate(fit, place, fit.seats[0]![fitting][field] + steps * scale);
        expect(totalTrouble(evaluator.evaluateHolding(tried, before))).toBeGreaterThanOrEqual(best * 0.999);
      }
    }
  });

  it('leaves locked fittings alone', () => {
    const locked = { ...fit, seats: fit.seats.map((s) => ({ ...s, locks: ['frontFoot' as const] })) };
    const moves = propose(evaluator, locked).moves;
    expect(moves.some((m) => m.coordinate.startsWith('frontFoot'))).toBe(false);
  });

  it('leaves a fit without trouble as it is', () => {
    const settled = propose(evaluator, propose(evaluator, fit).fit);
    expect(totalTrouble(settled.report)).toBeLessThanOrEqual(totalTrouble(proposal.report) + 1e-9);
  });
});

describe('from athlete and boat alone', () => {
  it.each([
    ['female', 1.52, 46],
    ['female', 1.7, 64],
    ['male', 1.68, 62],
    ['male', 1.95, 98],
  ] as const)('%s, %f m, %f kg: nothing says stop', (sex, statureM, massKg) => {
    const athlete = exampleAthlete({ sex, statureM, massKg });
    const boat = exampleBoat();
    const start = firstSetting({ body: bodyOfAthlete(athlete), boat, stationX: 0, side: 'left' });
    const { report } = propose(evaluator, { ...exampleFit([{ ...start, athlete }]), boat });
    expect(report.findings.filter((f) => f.severity === 'stop').map((f) => f.id)).toEqual([]);
  });
});

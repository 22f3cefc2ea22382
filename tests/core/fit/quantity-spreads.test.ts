import { describe, expect, it } from 'vitest';
import { findQuantity, type QuantityId } from '../../../core/findings/quantities.ts';
import { createEvaluator } from '../../../core/fit/evaluator.ts';
import type { Fit } from '../../../core/fit/fit-schema.ts';
import {
  heldSpreads,
  PINNED_SD_DEG,
  PLACING_SD_M,
  POSTURE_SD_DEG,
  type SpreadSources,
  withSpreads,
} from '../../../core/fit/quantity-spreads.ts';
import type { Pins } from '../../../core/fit/seat-schema.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../example/example-fit.ts';

const evaluator = createEvaluator();
const spreadOf = (fit: Fit, id: QuantityId, sources?: SpreadSources, seat: number | null = 0) =>
  findQuantity(evaluator.evaluate(fit, sources).quantities, id, seat)!.sd!;
const degreesOf = (...of: Parameters<typeof spreadOf>) => (spreadOf(...of) * 180) / Math.PI;
const fit = exampleFit();

describe('posture', () => {
  it.each([
    ['trunkPitch', 4.5],
    ['trunkRoll', 2.2],
    ['pelvisYaw', 4.8],
    ['thighPitch', 2.8],
  ] as const)('makes %s uncertain by about %f°', (id, expected) => {
    expect(Math.abs(degreesOf(fit, id) - expected)).toBeLessThan(0.2);
  });

  it('counts less than a degree of body and placing beside it', () => {
    for (const id of ['trunkPitch', 'trunkRoll', 'pelvisYaw', 'thighPitch'] as const) {
      expect(degreesOf(fit, id, { posture: false })).toBeLessThan(1);
    }
  });

  it('no longer matters for an angle that was measured: that has the doubt of the reading alone', () => {
    for (const id of ['trunkPitch', 'trunkRoll', 'thighPitch', 'pelvisYaw'] as const) {
      const pins: Pins = { [`${id}Deg`]: 5 };
      expect(degreesOf(exampleFit([exampleSeat({ pins })]), id)).toBeCloseTo(PINNED_SD_DEG[id], 6);
    }
  });

  it('between persons is no less than the spread of one person’s own angle', () => {
    for (const [name, own] of Object.entries(POSTURE_SD_DEG)) {
      if (name === 'thighRoll') continue;
      expect(degreesOf(fit, name as QuantityId)).toBeGreaterThanOrEqual(own - 1e-9);
    }
  });
});

describe('what is measured', () => {
  it('of a body narrows what depends on it: two tapes take a fifth off the front knee’s', () => {
    const tape = Object.fromEntries(
      [
        ['kneeHeightSitting', 0.57],
        ['buttockKneeLength', 0.63],
      ].map(([name, valueM]) => [name, { valueM }]),
    );
    const measured = exampleFit([exampleSeat({ athlete: exampleAthlete({ tape }) })]);
    const sources = { posture: false } as const;
    expect(spreadOf(measured, 'frontKnee', sources)).toBeLessThan(0.85 * spreadOf(fit, 'frontKnee', sources));
  });

  it('by setting it has the doubt of setting it, and no other', () => {
    expect(spreadOf(fit, 'padAft')).toBeCloseTo(PLACING_SD_M, 9);
    expect(spreadOf(fit, 'padHeight')).toBeCloseTo(PLACING_SD_M, 9);
  });
});

describe('spreads of a report', () => {
  const report = evaluator.evaluate(fit);

  it('are held for the values of another: the same fit comes back the same', () => {
    const bare = report.quantities.map((q) => ({ ...q, sd: null }));
    expect(withSpreads(bare, heldSpreads(report))).toEqual(report.quantities);
  });

  it('are unknown where nothing is known', () => {
    const stranger = { id: 'frontKnee', seat: 3, value: 1, sd: null, unit: 'rad' } as const;
    expect(withSpreads([stranger], heldSpreads(report))[0]!.sd).toBeNull();
  });

  it('of one seat do not grow by another’s doubts where the two share nothing', () => {
    const crew = exampleFit([exampleSeat(), exampleSeat({ side: 'right' })]);
    expect(spreadOf(crew, 'frontKnee')).toBeCloseTo(spreadOf(fit, 'frontKnee'), 9);
    expect(spreadOf(crew, 'trimRest', {}, null)).toBeGreaterThan(0);
  });
});

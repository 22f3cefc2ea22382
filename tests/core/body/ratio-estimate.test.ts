import { describe, expect, it } from 'vitest';
import { BODY_LENGTHS } from '../../../core/body/body.ts';
import { ratioEstimate, ratioLengths } from '../../../core/body/ratio-estimate.ts';

describe('ratio table (Drillis & Contini 1966 via Winter)', () => {
  it.each([
    ['thigh', 0.441],
    ['shank', 0.4428],
    ['ankleHeight', 0.0702],
    ['hipHeight', 0.954],
    ['shoulderHeight', 1.4724],
    ['upperArm', 0.3348],
    ['forearm', 0.2628],
    ['hand', 0.1944],
    ['footLength', 0.2736],
  ] as const)('%s of a 1.80 m person', (measure, metres) => {
    expect(ratioEstimate(measure, 1.8)).toBeCloseTo(metres, 6);
  });

  it('hip height is thigh, shank and ankle in a row', () => {
    const parts = (['thigh', 'shank', 'ankleHeight'] as const).map((m) => ratioEstimate(m, 1.8));
    expect(parts.reduce((a, b) => a + b)).toBeCloseTo(ratioEstimate('hipHeight', 1.8), 9);
  });

  it('gives the figure’s lengths from sole to vertex, adding up to the stature', () => {
    const lengths = ratioLengths(1.8);
    const chain = (['ankleHeight', 'shank', 'thigh', 'trunk', 'headNeck'] as const).map(
      (n) => lengths[n] ?? 0,
    );
    expect(chain.reduce((a, b) => a + b)).toBeCloseTo(1.8, 9);
  });

  it('says nothing where it has no figure, and names every length', () => {
    const lengths = ratioLengths(1.8);
    expect(Object.keys(lengths)).toEqual([...BODY_LENGTHS]);
    for (const name of ['hand', 'hipSeparation', 'shoulderSeparation', 'kneeRadius', 'heelToBall'] as const) {
      expect(lengths[name]).toBeNull();
    }
  });

  it('scales with stature', () => {
    for (const name of BODY_LENGTHS) {
      const [one, two] = [ratioLengths(1)[name], ratioLengths(2)[name]];
      expect(two).toBe(one === null ? null : 2 * one);
    }
  });
});

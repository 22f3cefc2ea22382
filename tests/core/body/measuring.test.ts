import { describe, expect, it } from 'vitest';
import { bodyPrior, lengthIndex, tapeIndex } from '../../../core/body/body-prior.ts';
import { conditioned, type Gaussian } from '../../../core/body/gaussian.ts';
import { FIRST_TAPES, LENGTHS_THAT_MATTER, MEASURING } from '../../../core/body/measuring.ts';
import { TAPE_SD } from '../../../core/body/tape-sd.ts';
import { TAPE_MEASURES, type TapeMeasure } from '../../../core/fit/athlete-schema.ts';

const priorOf = (sex: 'female' | 'male' | 'unspecified') =>
  bodyPrior({ stature: 1.72, statureSd: 0.006, sex, spread: 1 });

/** Summed variance of the lengths on which kneeling depends, m². */
const total = ({ covariance }: Gaussian) =>
  LENGTHS_THAT_MATTER.reduce((sum, name) => sum + covariance[lengthIndex(name)]![lengthIndex(name)]!, 0);

/** The spread once a measure has been taken by the usual hand; what it reads does not change how sure one is. */
function taken(spread: Gaussian, measure: TapeMeasure): Gaussian {
  const index = tapeIndex(measure);
  return conditioned(spread, { index, value: spread.mean[index]!, sd: TAPE_SD[measure] });
}

function bestFirst(sex: 'female' | 'male' | 'unspecified', count: number): TapeMeasure[] {
  let spread = priorOf(sex);
  const order: TapeMeasure[] = [];
  while (order.length < count) {
    const left = TAPE_MEASURES.filter((measure) => !order.includes(measure));
    const best = left.reduce((a, b) => (total(taken(spread, b)) < total(taken(spread, a)) ? b : a));
    order.push(best);
    spread = taken(spread, best);
  }
  return order;
}

describe('which measures to take first', () => {
  it('is the order that takes most doubt away each time', () => {
    expect(FIRST_TAPES).toEqual(bestFirst('unspecified', 6));
  });

  it.each(['female', 'male'] as const)('holds for a known table too: the same six (%s)', (sex) => {
    expect(new Set(bestFirst(sex, 6))).toEqual(new Set(FIRST_TAPES));
  });

  it('six of twelve take away nine tenths of what twelve could', () => {
    const before = total(priorOf('unspecified'));
    const six = total(FIRST_TAPES.reduce(taken, priorOf('unspecified')));
    const all = total(TAPE_MEASURES.reduce(taken, priorOf('unspecified')));
    expect(Math.sqrt(before)).toBeCloseTo(0.049, 3);
    expect((before - six) / (before - all)).toBeGreaterThan(0.88);
    expect(six).toBeLessThan(0.6 * before);
  });
});

describe('how measures are taken', () => {
  it.each(TAPE_MEASURES)('%s is told in full', (measure) => {
    const guide = MEASURING[measure];
    for (const words of [guide.name, guide.posture, guide.from, guide.to, guide.hint]) {
      expect(words.trim().length).toBeGreaterThan(3);
    }
    expect(guide.posture).toMatch(/\.$/);
    expect(guide.hint).toMatch(/\.$/);
  });

  it('names are all different', () => {
    const names = TAPE_MEASURES.map((measure) => MEASURING[measure].name);
    expect(new Set(names).size).toBe(names.length);
  });

  it('gives no standard’s name to the measures that this project defines', () => {
    expect(MEASURING.kneelingHeight.isoName).toBeNull();
    expect(MEASURING.kneeToHipLength.isoName).toBeNull();
  });
});

import { describe, expect, it } from 'vitest';
import { bodyPrior, lengthIndex, tapeIndex } from '../../../core/body/body-prior.ts';
import { conditioned, type Gaussian } from '../../../core/body/gaussian.ts';
import { FIRST_TAPES, ISO_NAMES, LENGTHS_THAT_MATTER } from '../../../core/body/measuring.ts';
import { TAPE_SD } from '../../../core/body/tape-sd.ts';
import { TAPE_MEASURES, type TapeMeasure } from '../../../core/document/athlete-schema.ts';
import { english } from '../../english.ts';

const priorOf = (sex: 'female' | 'male' | 'unspecified') =>
  bodyPrior({ stature: 1.72, statureSd: 0.006, mass: 70, massSd: 0.7, ageYears: null, sex, spread: 1 });

/** Summed variance of the lengths on which kneeling depends, m². */
const total = ({ covariance }: Gaussian) =>
  LENGTHS_THAT_MATTER.reduce((sum, name) => sum + covariance[lengthIndex(name)]![lengthIndex(name)]!, 0);

/** The spread once a measure has been taken by the usual hand; what it reads does not change how sure one is. */
function taken(spread: Gaussian, measure: TapeMeasure): Gaussian {
  const index = tapeIndex(measure);
  return conditioned(spread, { index, value: spread.mean[index]!, sd: TAPE_SD[measure] });
}

/** Crotch height is not asked for first, though it tells much. */
const WILLINGLY = TAPE_MEASURES.filter((measure) => measure !== 'crotchHeight');

function bestFirst(sex: 'female' | 'male' | 'unspecified', count: number): TapeMeasure[] {
  let spread = priorOf(sex);
  const order: TapeMeasure[] = [];
  while (order.length < count) {
    const left = WILLINGLY.filter((measure) => !order.includes(measure));
    const best = left.reduce((a, b) => (total(taken(spread, b)) < total(taken(spread, a)) ? b : a));
    order.push(best);
    spread = taken(spread, best);
  }
  return order;
}

describe('which measures to take first', () => {
  it('takes away most doubt each time, or within 3 % of it', () => {
    let spread = priorOf('unspecified');
    for (const measure of FIRST_TAPES) {
      const left = WILLINGLY.filter(
        (other) => !FIRST_TAPES.slice(0, FIRST_TAPES.indexOf(measure)).includes(other),
      );
      const best = Math.min(...left.map((other) => total(taken(spread, other))));
      spread = taken(spread, measure);
      expect(Math.sqrt(total(spread) / best), measure).toBeLessThan(1.03);
    }
  });

  it.each(['female', 'male', 'unspecified'] as const)('is as good as the best six (%s)', (sex) => {
    const six = (tapes: readonly TapeMeasure[]) => total(tapes.reduce(taken, priorOf(sex)));
    expect(Math.sqrt(six(FIRST_TAPES) / six(bestFirst(sex, 6)))).toBeLessThan(1.03);
  });

  it('six of twelve take away nine tenths of what twelve could', () => {
    const before = total(priorOf('unspecified'));
    const six = total(FIRST_TAPES.reduce(taken, priorOf('unspecified')));
    const all = total(TAPE_MEASURES.reduce(taken, priorOf('unspecified')));
    expect(Math.sqrt(before)).toBeCloseTo(0.0475, 3);
    expect((before - six) / (before - all)).toBeGreaterThan(0.88);
    expect(six).toBeLessThan(0.6 * before);
  });
});

describe('how measures are taken', () => {
  it.each(TAPE_MEASURES)('%s is told in full', (measure) => {
    for (const part of ['name', 'posture', 'from', 'to', 'hint'])
      expect(english.has(`tape.${measure}.${part}`), part).toBe(true);
    expect(english.say(`tape.${measure}.posture`)).toMatch(/\.$/);
    expect(english.say(`tape.${measure}.hint`)).toMatch(/\.$/);
  });

  it('names are all different', () => {
    const names = TAPE_MEASURES.map((measure) => english.say(`tape.${measure}.name`));
    expect(new Set(names).size).toBe(names.length);
  });

  it('gives no standard’s name to the measures that this project defines', () => {
    expect(ISO_NAMES.kneelingHeight).toBeNull();
    expect(ISO_NAMES.kneeToHipLength).toBeNull();
  });
});

import { describe, expect, it } from 'vitest';
import type { BalanceDemand } from '../../../core/hydrostatics/afloat.ts';
import { toRadians } from '../../../core/units/angle.ts';
import { balanceSentence } from '../../english.ts';

const tippy: BalanceDemand = {
  transverseGm: -0.36,
  offCentre: 0.006,
  steadyMoment: 5.7,
  leanMoment: 6.1,
  equilibriumHeel: null,
};
const steady: BalanceDemand = {
  ...tippy,
  transverseGm: 0.1,
  leanMoment: null,
  equilibriumHeel: toRadians(-3.4),
};

describe('balanceSentence', () => {
  it('a tippy boat: that it is so, how hard for each degree, which side, how hard', () => {
    expect(balanceSentence(tippy)).toMatch(
      /^Like a bicycle, it must always be balanced: 6\.1 N·m per degree of lean.*6 mm to the left: hold 5\.7 N·m/,
    );
    expect(balanceSentence({ ...tippy, offCentre: -0.012, steadyMoment: -11 })).toMatch(
      /12 mm to the right: hold 11\.0 N·m/,
    );
    expect(balanceSentence({ ...tippy, offCentre: 0.0004, steadyMoment: 0.4 })).toMatch(
      /over the centreline/,
    );
  });

  it('a steady boat: where it comes to rest, or that it does not', () => {
    expect(balanceSentence(steady)).toMatch(/is stable.*6 mm to the left heels it 3°/);
    expect(balanceSentence({ ...steady, equilibriumHeel: null })).toMatch(/let water in/);
    expect(balanceSentence({ ...steady, offCentre: 0 })).toMatch(/floats upright/);
  });

  it('never promises more than it knows', () => {
    for (const demand of [tippy, steady])
      expect(balanceSentence(demand)).not.toMatch(/\bsafe|NaN|Infinity|null/);
  });
});

it('weight within a millimetre of the centreline is over it: no pad is set finer', () => {
  const at = (offCentre: number) => balanceSentence({ ...tippy, offCentre, steadyMoment: 0.9 });
  for (const side of [-1, 1]) {
    expect(at(side * 0.0009)).toMatch(/over the centreline/);
    expect(at(side * 0.0011)).toMatch(/1 mm to the (left|right)/);
  }
});

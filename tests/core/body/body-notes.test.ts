import { describe, expect, it } from 'vitest';
import { isJunior } from '../../../core/body/body-input.ts';
import { bodyNotes } from '../../../core/body/body-notes.ts';

/** One length of 0.5 m known to 3 mm. */
const prior = { mean: [0.5], covariance: [[0.003 ** 2]] };
const input = (more: object = {}) => ({ stature: 1.75, mass: 70, sex: 'male' as const, ...more });
const codes = (more: object = {}) => bodyNotes(input(more), prior, []).map((note) => note.code);
const reading = (value: number) => ({ measure: 'footLength' as const, index: 0, value, sd: 0.004 });

describe('bodyNotes', () => {
  it('has nothing to say of an ordinary adult', () => {
    expect(codes()).toEqual([]);
    expect(codes({ ageYears: 18 })).toEqual([]);
    expect(codes({ ageYears: null })).toEqual([]);
  });

  it.each([
    [{ stature: 1.299 }, 'extrapolates-stature'],
    [{ stature: 2.151 }, 'extrapolates-stature'],
    [{ mass: 29.9 }, 'extrapolates-mass'],
    [{ mass: 140.1 }, 'extrapolates-mass'],
    [{ ageYears: 17 }, 'junior'],
  ])('says of %o that it %s', (more, code) => {
    expect(codes(more)).toEqual([code]);
  });

  it.each([{ stature: 1.3 }, { stature: 2.15 }, { mass: 30 }, { mass: 140 }])(
    'is silent at the very edge: %o',
    (more) => {
      expect(codes(more)).toEqual([]);
    },
  );

  it('says everything that is to be said', () => {
    expect(codes({ stature: 1.2, mass: 25, ageYears: 9 })).toEqual([
      'extrapolates-stature',
      'extrapolates-mass',
      'junior',
    ]);
  });

  it('calls a tape in question past three standard deviations of person and tape together: 15 mm here', () => {
    const notes = (value: number) => bodyNotes(input(), prior, [reading(value)]);
    expect(notes(0.5149)).toEqual([]);
    expect(notes(0.4851)).toEqual([]);
    expect(notes(0.52)).toEqual([
      { code: 'tape-disagrees', measure: 'footLength', sigmas: expect.closeTo(4, 9) },
    ]);
  });
});

describe('isJunior', () => {
  it('is true only for an age that is known and under 18', () => {
    expect([17, 18, null, undefined].map((ageYears) => isJunior({ ageYears }))).toEqual([
      true,
      false,
      false,
      false,
    ]);
  });
});

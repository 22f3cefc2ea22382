import { describe, expect, it } from 'vitest';
import { athleteSchema } from '../../../core/document/athlete-schema.ts';
import { measureAgain } from '../../../core/growth/measure-again.ts';

const aged = (bornOn: string | undefined, measuredOn: string | undefined, sex = 'male') =>
  athleteSchema.parse({ name: 'A', sex, side: 'left', statureM: 1.6, massKg: 50, bornOn, measuredOn });
const TODAY = '2026-11-01';

describe('measureAgain', () => {
  it('is due for a boy of thirteen after five months, not after two', () => {
    expect(measureAgain(aged('2013-04-17', '2026-06-01'), TODAY)).toMatchObject({ months: 5, ageYears: 13 });
    expect(measureAgain(aged('2013-04-17', '2026-09-01'), TODAY)).toBe(null);
  });

  it('expects growth in proportion to the time', () => {
    const [half, whole] = ['2026-05-02', '2025-11-01'].map(
      (day) => measureAgain(aged('2013-01-01', day, 'female'), TODAY)!.likelyM,
    );
    expect(half! / 0.045).toBeCloseTo(0.5, 1);
    expect(whole! / 0.064).toBeCloseTo(1, 2);
  });

  it('takes the mean of both tables where the sex is not said', () => {
    const of = (sex: string) => measureAgain(aged('2013-04-17', '2025-11-01', sex), TODAY)!.likelyM;
    expect(of('unspecified')).toBeCloseTo((of('female') + of('male')) / 2, 9);
  });

  it('is never due for a grown-up, nor where a date is missing or lies ahead', () => {
    expect(measureAgain(aged('2000-01-01', '2010-01-01'), TODAY)).not.toBe(null);
    expect(measureAgain(aged('2000-01-01', '2019-01-01'), TODAY)).toBe(null);
    expect(measureAgain(aged(undefined, '2020-01-01'), TODAY)).toBe(null);
    expect(measureAgain(aged('2013-04-17', undefined), TODAY)).toBe(null);
    expect(measureAgain(aged('2013-04-17', '2027-06-01'), TODAY)).toBe(null);
  });
});

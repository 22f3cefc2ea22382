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
      (day) => measureAgain(aged('2013-11-01', day, 'female'), TODAY)!.likelyM,
    );
    expect(half! / 0.064).toBeCloseTo(0.5, 1);
    expect(whole! / 0.064).toBeCloseTo(1, 2);
  });

  // The table's own years: growth slows with age and ends, so that a long time does not grow a giant.
  it('counts each year of age by its own growth', () => {
    const girl = measureAgain(aged('2008-11-01', '2021-11-01', 'female'), TODAY)!;
    expect(girl.likelyM).toBeCloseTo(0.045 + 0.025 + 0.012 + 0.006 + 0.002, 3);
    expect(measureAgain(aged('2008-11-01', '2021-11-01', 'female'), '2040-11-01')!.likelyM).toBeCloseTo(
      girl.likelyM,
      9,
    );
    expect(measureAgain(aged('2001-11-01', '2018-11-01'), TODAY)).toBe(null);
  });

  it('is due from 1.5 cm on (estimate)', () => {
    const grown = (day: string) => measureAgain(aged('2013-11-01', '2026-11-01', 'male'), day)?.likelyM;
    // A boy of 13 grows 6.7 cm in his year: 1.5 cm take 81.8 days.
    expect(grown('2027-01-21')).toBeUndefined();
    expect(grown('2027-01-22')).toBeCloseTo(0.015, 3);
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

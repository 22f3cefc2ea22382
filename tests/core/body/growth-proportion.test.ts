import { describe, expect, it } from 'vitest';
import { juniorShift, sittingShare } from '../../../core/body/growth-proportion.ts';
import { SEXES } from '../../../core/body/sex.ts';
import { SURVEY_MODELS } from '../../../core/body/survey-model.ts';

const shiftOf = (ageYears: number | null, sex: 'female' | 'male' = 'male', stature = 1.57) =>
  juniorShift({ stature, ageYears }, sex, SURVEY_MODELS[sex], 45);

describe('proportions of juniors', () => {
  // Fredriks et al. 2005: medians in the middle of the year, shares of stature.
  it('has the reference’s shares', () => {
    expect(sittingShare(10, 'male')).toBe(0.5181);
    expect(sittingShare(13, 'male')).toBe(0.5079);
    expect(sittingShare(12, 'female')).toBe(0.5157);
    expect(sittingShare(3, 'female')).toBe(sittingShare(7, 'female'));
  });

  it.each(SEXES)('falls to the growth spurt and rises after it (%s)', (sex) => {
    const ages = Array.from({ length: 11 }, (_, i) => i + 7);
    const least = ages.reduce((a, b) => (sittingShare(b, sex) < sittingShare(a, sex) ? b : a));
    expect(least).toBe(sex === 'male' ? 13 : 12);
  });

  it('moves sitting height to the reference, legs the other way, arms and shoulders not', () => {
    const shift = shiftOf(13);
    const adult = SURVEY_MODELS.male.line('sittingHeight', 1.57, 45).value;
    expect(adult + shift.sittingHeight!).toBeCloseTo(0.5079 * 1.57, 12);
    expect(shift.sittingHeight).toBeCloseTo(-0.042, 2);
    expect(shift.crotchHeight).toBeGreaterThan(0.02);
    expect(shift.trochanterionHeight).toBeGreaterThan(0.02);
    expect([shift.span, shift.acromialHeight, shift.buttockKneeLength]).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
  });

  it('gives way to the survey of adults by the eighteenth birthday', () => {
    const shifts = [14, 15, 16, 17].map((age) => Math.abs(shiftOf(age, 'male', 1.75).sittingHeight!));
    for (const [i, shift] of shifts.entries()) if (i > 0) expect(shift).toBeLessThan(shifts[i - 1]!);
    expect(shifts.at(-1)).toBeLessThan(0.006);
    expect(shiftOf(18)).toEqual({});
    expect(shiftOf(null)).toEqual({});
  });
});

it('the children’s reference counts whole to the fifteenth birthday, then a quarter less each year (estimate)', () => {
  const stature = 1.75;
  const adult = SURVEY_MODELS.male.line('sittingHeight', stature, 45).value;
  for (const [age, weight] of [
    [14, 1],
    [15, 0.75],
    [16, 0.5],
    [17, 0.25],
  ] as const)
    expect(shiftOf(age, 'male', stature).sittingHeight).toBeCloseTo(
      weight * (sittingShare(age, 'male') * stature - adult),
      12,
    );
});

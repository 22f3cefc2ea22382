import { describe, expect, it } from 'vitest';
import { HIP_ABOVE_TROCHANTERION } from '../../core/body/joint-centres.ts';
import { ratioEstimate } from '../../core/body/ratio-estimate.ts';
import { TABLE_THIGH } from '../../core/body/segment-table.ts';
import { SEXES, type Sex } from '../../core/body/sex.ts';
import { surveyRow } from '../../core/body/survey-table.ts';

// Where is the hip joint centre above the survey's trochanterion? Four ways that do not feel for the trochanter, for the
// survey's mean man and woman. Figures of bone are recalled.

const mean = (measure: Parameters<typeof surveyRow>[0], sex: Sex) => surveyRow(measure, sex).mean / 1000;
const above = (hipHeight: number, sex: Sex) => hipHeight - mean('trochanterionHeight', sex);

/** Stature in cm = slope × greatest length of the femur + intercept: Trotter & Gleser 1952, white men and women, recalled. */
const FEMUR_LINE = { male: { slope: 2.38, intercept: 61.41 }, female: { slope: 2.47, intercept: 54.1 } };

/** Radius of the femoral head, and knee axis above the end of the condyles, metres (recalled). */
const FEMUR_ENDS = { male: 0.024 + 0.027, female: 0.022 + 0.025 };

/** Hip joint centre over the seat: sitting bone to joint 8 cm and the flesh under it, metres (recalled, estimate). */
const HIP_OVER_SEAT = { male: 0.095, female: 0.088 };

function byFemur(sex: Sex): number {
  const { slope, intercept } = FEMUR_LINE[sex];
  const femur = (mean('stature', sex) * 100 - intercept) / slope / 100;
  return above(mean('epicondyleHeight', sex) + femur - FEMUR_ENDS[sex], sex);
}

function bySittingHeight(sex: Sex): number {
  return above(mean('stature', sex) - mean('sittingHeight', sex) + HIP_OVER_SEAT[sex], sex);
}

function byRatioTable(sex: Sex): number {
  return above(ratioEstimate('hipHeight', mean('stature', sex)), sex);
}

/** De Leva 1996 table 4, men: shank 0.2493 of stature. His women's thigh is the trap told of in `segment-table.ts`. */
const byDeLevasMen = above(
  (TABLE_THIGH.male + 0.2493) * mean('stature', 'male') + mean('malleolusHeight', 'male'),
  'male',
);

describe('hip joint centre above the trochanterion', () => {
  const ways = [
    ...SEXES.flatMap((sex) => [
      ['femur', sex, byFemur(sex)] as const,
      ['sitting height', sex, bySittingHeight(sex)] as const,
      ['ratio table', sex, byRatioTable(sex)] as const,
    ]),
    ['de Leva', 'male', byDeLevasMen] as const,
  ];
  const { mean: ours, sd } = HIP_ABOVE_TROCHANTERION;

  it.each(ways)('%s (%s) puts it within two standard deviations of ours', (_, __, distance) => {
    expect(distance).toBeGreaterThan(0.01);
    expect(Math.abs(distance - ours)).toBeLessThan(2 * sd);
  });

  it('together they are within one', () => {
    const average = ways.reduce((sum, [, , distance]) => sum + distance, 0) / ways.length;
    expect(average).toBeCloseTo(0.024, 2);
    expect(Math.abs(average - ours)).toBeLessThan(sd);
  });
});

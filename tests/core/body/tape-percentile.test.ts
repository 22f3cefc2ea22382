import { describe, expect, it } from 'vitest';
import { surveyEstimate } from '../../../core/body/survey-estimate.ts';
import { tapePercentile } from '../../../core/body/tape-percentile.ts';
import { TAPE_MEASURES } from '../../../core/document/athlete-schema.ts';

const MAN = { stature: 1.8, sex: 'male' } as const;

describe('the place of a tape reading among persons of that stature', () => {
  it('expects what the survey’s line says', () => {
    const place = tapePercentile('kneeHeightSitting', 0.56, MAN);
    const line = surveyEstimate('kneeHeightSitting', 1.8, 'male');
    // The line is of all the survey's men, the regressions are of four fifths of them.
    expect(place.expected).toBeCloseTo(line.value, 4);
    // Persons 12.7 mm, tape 4 mm, and 0.363 of the 6 mm by which statures are misread.
    expect(Math.abs(place.sd - Math.hypot(line.sd, 0.004, 0.363 * 0.006))).toBeLessThan(2e-5);
    expect(place.percentile).toBeCloseTo(0.228, 2);
    expect(place.usual).toBe(true);
  });

  it.each(TAPE_MEASURES)('%s: the middle is the middle, and 1–99 %% is the usual range', (measure) => {
    const { expected, low, high } = tapePercentile(measure, 1, MAN);
    expect(tapePercentile(measure, expected, MAN).percentile).toBeCloseTo(0.5, 6);
    expect(tapePercentile(measure, low, MAN).percentile).toBeCloseTo(0.01, 4);
    expect(tapePercentile(measure, high, MAN).percentile).toBeCloseTo(0.99, 4);
    expect(tapePercentile(measure, low + 0.001, MAN).usual).toBe(true);
    expect(tapePercentile(measure, low - 0.001, MAN).usual).toBe(false);
    expect(tapePercentile(measure, high + 0.001, MAN).usual).toBe(false);
  });

  it('catches a slip of ten centimetres in every measure but the arm span of no-one in particular', () => {
    for (const measure of TAPE_MEASURES) {
      const { expected } = tapePercentile(measure, 1, MAN);
      const caught = !tapePercentile(measure, expected + 0.1, MAN).usual;
      expect(caught).toBe(measure !== 'armSpan');
    }
  });

  it('catches inches taken for centimetres, and the reverse', () => {
    for (const measure of TAPE_MEASURES) {
      const { expected } = tapePercentile(measure, 1, MAN);
      expect(tapePercentile(measure, expected / 2.54, MAN).usual).toBe(false);
      expect(tapePercentile(measure, expected * 2.54, MAN).usual).toBe(false);
    }
  });

  it('is narrower once the mass is known, and moves with it', () => {
    const at = (mass: number | null) => tapePercentile('buttockKneeLength', 0.62, { ...MAN, mass });
    expect(at(80).sd).toBeLessThan(0.92 * at(null).sd);
    // 0.72 mm of buttock to knee with every kilogram.
    expect(at(90).expected - at(80).expected).toBeCloseTo(0.0072, 4);
  });

  it('is more lenient with a junior, whom the survey did not measure', () => {
    const reach = (ageYears: number | null) => {
      const { low, high } = tapePercentile('kneeHeightSitting', 0.5, { ...MAN, ageYears });
      return high - low;
    };
    expect(reach(null)).toBe(reach(30));
    expect(reach(13)).toBeGreaterThan(1.15 * reach(30));
  });

  it('is more lenient when the table is not known', () => {
    const width = (sex: 'male' | 'unspecified') => {
      const { low, high } = tapePercentile('biacromialBreadth', 0.4, { stature: 1.75, sex });
      return high - low;
    };
    expect(width('unspecified')).toBeGreaterThan(width('male'));
  });
});

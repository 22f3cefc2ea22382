import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { PERSON_MEASURES } from '../../../core/body/person-measures.ts';
import { SEXES } from '../../../core/body/sex.ts';
import { SURVEYED_STATURE } from '../../../core/body/survey-estimate.ts';
import { SURVEY_MODELS, SURVEYED_MASS_INDEX } from '../../../core/body/survey-model.ts';

const stature = fc.double({ min: 0.8, max: 2.6, noNaN: true });
const mass = fc.double({ min: 15, max: 250, noNaN: true });
const anyOf = fc.record({
  stature,
  mass,
  measure: fc.constantFrom(...PERSON_MEASURES),
  sex: fc.constantFrom(...SEXES),
});

/** Whether a stature or a body mass index lies at an end, where a slope changes. */
function atAnEnd(s: number, m: number): boolean {
  const nearest = Math.min(SURVEYED_STATURE.high, Math.max(SURVEYED_STATURE.low, s));
  const index = m / (s / nearest) ** 3 / nearest ** 2;
  const ends = [SURVEYED_MASS_INDEX.low, SURVEYED_MASS_INDEX.high];
  return Math.abs(s - nearest) < 1e-4 && s !== nearest
    ? true
    : [SURVEYED_STATURE.low, SURVEYED_STATURE.high].some((edge) => Math.abs(s - edge) < 1e-4) ||
        ends.some((edge) => Math.abs(index - edge) < 1e-2);
}

describe('the survey’s lines on stature and mass', () => {
  it('are the regressions, in metres', () => {
    // 0.34031 × 1800 + 0.225124 × 80 − 62.7448 = 567.82 mm, residual 12.37 mm.
    const line = SURVEY_MODELS.male.line('kneeHeightSitting', 1.8, 80);
    expect(line.value).toBeCloseTo(0.567823, 5);
    expect(line.sd).toBeCloseTo(0.0123701, 7);
    expect([line.perMetre, line.perKg * 1000]).toEqual([0.34031, expect.closeTo(0.225124, 9)]);
  });

  it('are positive and finite everywhere, and their slopes are what stature and mass do', () => {
    fc.assert(
      fc.property(anyOf, ({ stature: s, mass: m, measure, sex }) => {
        const { line } = SURVEY_MODELS[sex];
        const here = line(measure, s, m);
        expect(here.value).toBeGreaterThan(0);
        expect(here.sd).toBeGreaterThan(0);
        fc.pre(!atAnEnd(s, m));
        const rise = (line(measure, s + 1e-6, m).value - line(measure, s - 1e-6, m).value) / 2e-6;
        const gain = (line(measure, s, m + 1e-4).value - line(measure, s, m - 1e-4).value) / 2e-4;
        expect(Math.abs(rise - here.perMetre)).toBeLessThan(1e-6);
        expect(Math.abs(gain - here.perKg)).toBeLessThan(1e-8);
      }),
      { seed: 307, numRuns: 400 },
    );
  });

  it.each(SEXES)('keep the proportions of the nearer end beyond the surveyed statures (%s)', (sex) => {
    const { line, massFor } = SURVEY_MODELS[sex];
    for (const [end, beyond] of [
      [SURVEYED_STATURE.low, 0.9],
      [SURVEYED_STATURE.high, 2.5],
    ] as const) {
      const scaled = (kg: number) => kg * (beyond / end) ** 3;
      for (const measure of PERSON_MEASURES) {
        const [atEnd, far] = [line(measure, end, 40), line(measure, beyond, scaled(40))];
        expect(far.value / beyond).toBeCloseTo(atEnd.value / end, 12);
        expect(far.sd / beyond).toBeGreaterThan(atEnd.sd / end);
      }
      expect(massFor(beyond).value).toBeCloseTo(scaled(massFor(end).value), 9);
    }
  });

  it('have no jump at either end', () => {
    for (const edge of [SURVEYED_STATURE.low, SURVEYED_STATURE.high]) {
      for (const measure of PERSON_MEASURES) {
        const [below, above] = [-1e-7, 1e-7].map((by) =>
          SURVEY_MODELS.female.line(measure, edge + by, 25 * edge ** 2),
        );
        expect(Math.abs(above!.value - below!.value)).toBeLessThan(1e-6);
        expect(Math.abs(above!.sd - below!.sd)).toBeLessThan(1e-6);
      }
    }
  });
});

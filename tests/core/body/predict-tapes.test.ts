import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { TAPE_MEASURES } from '../../../core/document/athlete-schema.ts';
import { athleteSchema, predictTapes } from '../../../core/index.ts';
import { cases } from '../../cases.ts';

const MAN = { stature: 1.8, mass: 80, sex: 'male' } as const;

describe('predictTapes', () => {
  it('foretells every tape measure with its spread', () => {
    const told = predictTapes(MAN);
    expect(Object.keys(told).sort()).toEqual([...TAPE_MEASURES].sort());
    // By hand: 0.34031 × 1800 + 0.225124 × 80 − 62.7448 mm.
    expect(told.kneeHeightSitting.value).toBeCloseTo(0.56782, 5);
    expect(told.kneeHeightSitting.sd).toBeCloseTo(0.01237, 5);
  });

  it('takes tapes as an athlete has them, as a body estimate has them, and as bare numbers', () => {
    const by = (tape: Parameters<typeof predictTapes>[0]['tape']) => predictTapes({ ...MAN, tape });
    const athlete = athleteSchema.parse({
      name: 'A',
      sex: 'male',
      side: 'left',
      statureM: 1.8,
      massKg: 80,
      tape: { sittingHeight: { valueM: 0.95 } },
    });
    const bare = by({ sittingHeight: 0.95 });
    expect(by(athlete.tape)).toEqual(bare);
    expect(by({ sittingHeight: { value: 0.95 } })).toEqual(bare);
    expect(by({ sittingHeight: undefined })).toEqual(predictTapes(MAN));
    const sure = by({ sittingHeight: { valueM: 0.95, sdM: 0.001 } });
    expect(by({ sittingHeight: { value: 0.95, sd: 0.001 } })).toEqual(sure);
    expect(sure.crotchHeight.sd).toBeLessThan(bare.crotchHeight.sd);
    expect(sure.sittingHeight.sd).toBeCloseTo(0.001, 4);
  });

  it('does without mass, without sex and without tapes, and is vaguer then', () => {
    const [full, unweighed, unsaid] = [
      predictTapes(MAN),
      predictTapes({ ...MAN, mass: null }),
      predictTapes({ stature: 1.8, mass: 80 }),
    ];
    for (const measure of TAPE_MEASURES) {
      expect(unweighed[measure].sd).toBeGreaterThan(0.999 * full[measure].sd);
    }
    expect(unweighed.buttockKneeLength.sd).toBeGreaterThan(1.1 * full.buttockKneeLength.sd);
    expect(unsaid.biacromialBreadth.sd).toBeGreaterThan(1.1 * full.biacromialBreadth.sd);
    const woman = predictTapes({ ...MAN, sex: 'female' });
    expect(unsaid.armSpan.value).toBeCloseTo((woman.armSpan.value + full.armSpan.value) / 2, 12);
  });

  it('counts the doubt of stature and mass once it is told', () => {
    const told = predictTapes({ ...MAN, statureSd: 0.01, massSd: 3 });
    for (const measure of TAPE_MEASURES)
      expect(told[measure].sd).toBeGreaterThan(predictTapes(MAN)[measure].sd);
  });

  it('is finite, positive and never made vaguer by a tape, whoever it is', () => {
    const person = fc.record({
      stature: fc.double({ min: 0.8, max: 2.6, noNaN: true }),
      mass: fc.option(fc.double({ min: 15, max: 250, noNaN: true })),
      sex: fc.constantFrom('female' as const, 'male' as const, 'unspecified' as const),
      ageYears: fc.option(fc.integer({ min: 4, max: 90 })),
      tape: fc.dictionary(fc.constantFrom(...TAPE_MEASURES), fc.double({ min: 0.02, max: 3, noNaN: true })),
    });
    fc.assert(
      fc.property(person, (input) => {
        const [without, with_] = [predictTapes({ ...input, tape: {} }), predictTapes(input)];
        for (const measure of TAPE_MEASURES) {
          expect(without[measure].value).toBeGreaterThan(0);
          expect(Number.isFinite(with_[measure].value)).toBe(true);
          expect(with_[measure].sd).toBeLessThanOrEqual(without[measure].sd + 1e-12);
          expect(with_[measure].sd).toBeGreaterThan(0);
        }
      }),
      { seed: 308, numRuns: cases(30, 150) },
    );
  });
});

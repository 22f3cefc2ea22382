import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { repeatedReading } from '../../../core/body/repeated-reading.ts';
import { TAPE_SD } from '../../../core/body/tape-sd.ts';
import { TAPE_MEASURES, tapeReadingSchema } from '../../../core/document/athlete-schema.ts';

const SEED = 20260312;

describe('several readings of one measure', () => {
  it('are nothing when there are none', () => {
    expect(repeatedReading('sittingHeight', [])).toBeNull();
  });

  it.each(TAPE_MEASURES)('%s: one reading is as sure as the usual hand', (measure) => {
    const one = repeatedReading(measure, [0.5])!;
    expect(one).toMatchObject({ valueM: 0.5, spreadM: 0, another: true });
    expect(one.sdM).toBeCloseTo(TAPE_SD[measure], 12);
  });

  it('two are their mean, and surer than one; worked by hand', () => {
    const two = repeatedReading('sittingHeight', [0.9, 0.9])!;
    // 0.5 · 49 of the point; the hand's 24.5 pooled with no spread, 4 · 24.5 / 5 = 19.6, halved: 34.3 mm².
    expect(two.sdM).toBeCloseTo(Math.sqrt(34.3) / 1000, 9);
    expect(two.valueM).toBeCloseTo(0.9, 12);
    expect(two.another).toBe(false);
  });

  it('of a wide spread are less sure than the usual hand', () => {
    const wide = repeatedReading('footLength', [0.25, 0.27])!;
    // 200 mm² of spread pooled with 4 · 3.125: (12.5 + 200) / 5 / 2 + 3.125 = 24.375 mm².
    expect(wide.sdM).toBeCloseTo(Math.sqrt(24.375) / 1000, 9);
    expect(wide.sdM).toBeGreaterThan(TAPE_SD.footLength);
  });

  it('ask for a third when two are more than a centimetre apart, and then take the middle one', () => {
    expect(repeatedReading('armSpan', [1.7, 1.7099])?.another).toBe(false);
    expect(repeatedReading('armSpan', [1.7, 1.7101])?.another).toBe(true);
    expect(repeatedReading('armSpan', [1.7, 1.72, 1.702])).toMatchObject({ valueM: 1.702, another: false });
    expect(repeatedReading('armSpan', [1.7, 1.72, 1.702, 1.704])?.valueM).toBeCloseTo(1.703, 12);
  });

  it('ask again as long as no two of three agree, and doubt a value of two that are 5 cm apart as much', () => {
    expect(repeatedReading('armSpan', [1.7, 1.75, 1.8])?.another).toBe(true);
    expect(repeatedReading('armSpan', [1.7, 1.75, 1.8, 1.85])?.another).toBe(false);
    // Both readings lie inside the value's 95 % interval.
    const far = repeatedReading('sittingHeight', [0.83, 0.88])!;
    expect(Math.abs(far.valueM - 0.83)).toBeLessThan(2 * far.sdM);
  });

  it(`never need more or less doubt than a document allows, never in another order (seed ${SEED})`, () => {
    const readings = fc.array(fc.double({ min: 0.2, max: 0.3, noNaN: true }), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(fc.constantFrom(...TAPE_MEASURES), readings, (measure, values) => {
        const read = repeatedReading(measure, values)!;
        expect(tapeReadingSchema.safeParse({ valueM: read.valueM, sdM: read.sdM }).success).toBe(true);
        expect(read.sdM).toBeGreaterThanOrEqual(TAPE_SD[measure] * Math.SQRT1_2);
        const turned = repeatedReading(measure, values.toReversed())!;
        expect(turned.valueM).toBeCloseTo(read.valueM, 12);
        expect(turned.sdM).toBeCloseTo(read.sdM, 12);
      }),
      { seed: SEED, numRuns: 400 },
    );
  });
});

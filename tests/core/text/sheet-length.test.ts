import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bareLength,
  millimetres,
  tapeReadingBelow,
  wholeMillimetres,
  writtenLength,
} from '../../../core/text/sheet-length.ts';
import { inchFraction } from '../../../core/units/inch-fraction.ts';

const SEED = 20260507;
/** Half of 1/32 in, the finest that an inch tape is read to, millimetres. */
const HALF_A_STEP_MM = 25.4 / 64;

/** An inch figure read as a person reads it: `6 7/8`. */
function readInches(text: string): number {
  const [, sign, whole, over, under] = /^(-?)(\d+)?(?: ?(\d+)\/(\d+))?$/.exec(
    text.replace(/^(-?)(\d+\/)/, '$1 $2'),
  )!;
  const size = Number(whole ?? 0) + (over ? Number(over) / Number(under) : 0);
  return (sign ? -1 : 1) * size * 25.4;
}

describe('a length on a sheet', () => {
  it.each([
    [175, '175'],
    [174.6, '175'],
    [0.2, '0'],
    [-0.2, '0'],
    [-64.4, '-64'],
  ])('%f mm is written %s', (mm, text) => {
    expect(bareLength(mm, 'mm')).toBe(text);
  });

  it.each([
    [25.4, '1'],
    [12.7, '1/2'],
    [175, '6 7/8'],
    [3.175, '1/8'],
    [0.79375, '1/32'],
    [0.3, '0'],
    [-19.05, '-3/4'],
    [254.1, '10'],
    [304.7, '12'],
  ])('%f mm is %s inches', (mm, text) => {
    expect(bareLength(mm, 'in')).toBe(text);
  });

  it('in inches is never further off than half of what a tape reads', () => {
    fc.assert(
      fc.property(fc.double({ min: -3000, max: 3000, noNaN: true }), (mm) => {
        expect(Math.abs(readInches(bareLength(mm, 'in')) - mm)).toBeLessThanOrEqual(HALF_A_STEP_MM + 1e-9);
      }),
      { seed: SEED },
    );
  });

  it('in inches is a fraction in lowest terms', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 500, noNaN: true }), (mm) => {
        const fraction = /(\d+)\/(\d+)$/.exec(bareLength(mm, 'in'));
        if (!fraction) return;
        expect(Number(fraction[1]) % 2).toBe(1);
        expect([2, 4, 8, 16, 32]).toContain(Number(fraction[2]));
        expect(Number(fraction[1])).toBeLessThan(Number(fraction[2]));
      }),
      { seed: SEED },
    );
  });

  it('carries its unit in sentences', () => {
    expect(writtenLength(175, 'mm')).toBe('175\u{202f}mm');
    expect(writtenLength(175, 'in')).toBe('6\u{202f}7/8\u{202f}in');
  });

  it('comes from metres, whole ones never a minus nought', () => {
    expect(millimetres(0.1754)).toBeCloseTo(175.4, 9);
    expect(wholeMillimetres(0.1756)).toBe(176);
    expect(Object.is(wholeMillimetres(-0.0001), 0)).toBe(true);
  });
});

it('a least size is read down, never up: 59.9 mm is 59, and 2 11/32 in', () => {
  expect(tapeReadingBelow(59.9, 'mm')).toBe(59);
  expect(tapeReadingBelow(60, 'mm')).toBe(60);
  // 2 11/32 in are 59.53 mm, 2 3/8 are 60.33.
  expect(tapeReadingBelow(60.2, 'in')).toBeCloseTo(59.53, 2);
});

it('less than half of 1/32 in is 0, without a sign', () => {
  expect(inchFraction(-1 / 128)).toBe('0');
  expect(inchFraction(-1 / 32)).toBe('-1/32');
});

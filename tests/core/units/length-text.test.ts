import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LENGTH_UNITS, type LengthUnit, parseLength } from '../../../core/units/length-text.ts';

const inCm = (text: string) => parseLength(text, { defaultUnit: 'cm' });
const read = (text: string, defaultUnit: LengthUnit = 'cm') => {
  const parsed = parseLength(text, { defaultUnit });
  return parsed.ok ? parsed.value : parsed.problem.code;
};

describe('a length as people write it', () => {
  it.each([
    ['17.5', 0.175],
    ['17,5', 0.175],
    ['175 mm', 0.175],
    ['175mm', 0.175],
    // 6 7/8 in = 6.875 × 25.4 mm = 174.625 mm, exact by the definition of the inch.
    ['6 7/8 in', 0.174625],
    ['6-7/8 in', 0.174625],
    ['6⅞ in', 0.174625],
    ['6 ⅞"', 0.174625],
    ['7/8 in', 0.022225],
    ['5\' 10½"', 1.7907],
    ['5 ft 10', 1.778],
    ['1 m 75', 1.75],
    ['1 m 75 cm', 1.75],
    ['1.75m', 1.75],
    ['−3,5', -0.035],
    ['- 3.5 cm', -0.035],
    ['+2', 0.02],
    ['.5', 0.005],
    ['2 in.', 0.0508],
    ['1 234,5 mm', 1.2345],
    ['1 2', 'not-a-number'],
    ['1.234,5 mm', 1.2345],
    ['1,234.5 mm', 1.2345],
    ['1,234 m', 1.234],
    ['17\u{202f}cm', 0.17],
    ['17.5 Centimetres', 0.175],
  ])('%s', (text, wanted) => {
    const got = read(text);
    if (typeof wanted === 'number') expect(got).toBeCloseTo(wanted, 12);
    else expect(got).toBe(wanted);
  });

  it('takes a bare number in the unit it is told', () => {
    expect(read('6 7/8', 'in')).toBeCloseTo(0.174625, 12);
    expect(read('175', 'mm')).toBeCloseTo(0.175, 12);
    expect(read('1.75', 'm')).toBeCloseTo(1.75, 12);
  });

  it.each([
    ['', { code: 'empty' }],
    ['   ', { code: 'empty' }],
    ['wide', { code: 'not-a-number', text: 'wide' }],
    ['12 ells', { code: 'unknown-unit', text: 'ells' }],
    ['1.2.3', { code: 'unclear-separator', text: '1.2.3' }],
    ['1,2.3,4', { code: 'unclear-separator', text: '1,2.3,4' }],
    ['6 7/0 in', { code: 'not-a-number', text: '6 7/0' }],
    ['12 cm 3', { code: 'not-a-number', text: '3' }],
    ['5 in 3 ft', { code: 'not-a-number', text: '3 ft' }],
    ['12 -', { code: 'not-a-number', text: '-' }],
    ['1e3', { code: 'unknown-unit', text: 'e' }],
    ['NaN', { code: 'not-a-number', text: 'nan' }],
  ])('refuses %s with a reason', (text, problem) => {
    expect(inCm(text)).toEqual({ ok: false, problem });
  });

  it('reads back what is written with either decimal mark, in every unit', () => {
    const unit = fc.constantFrom(...(Object.keys(LENGTH_UNITS) as LengthUnit[]));
    fc.assert(
      fc.property(
        unit,
        fc.double({ min: -99, max: 99, noNaN: true }),
        fc.boolean(),
        (name, number, comma) => {
          const written = number.toFixed(3);
          const text = `${comma ? written.replace('.', ',') : written} ${name}`;
          const parsed = inCm(text);
          expect(parsed.ok && parsed.value).toBeCloseTo(Number(written) * LENGTH_UNITS[name], 12);
        },
      ),
      { seed: 175 },
    );
  });

  it('never throws and never gives a number that is not finite, whatever is typed', () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(...' 0179.,-/+½″\'"cmft°x') }), (text) => {
        const parsed = inCm(text);
        if (parsed.ok) expect(Number.isFinite(parsed.value)).toBe(true);
      }),
      { seed: 687, numRuns: 2000 },
    );
  });
});

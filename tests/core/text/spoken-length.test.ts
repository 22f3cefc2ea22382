import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatOf } from '../../../core/text/format.ts';

/** As it is said, with plain spaces. */
const said = (length: number, unit: 'cm' | 'in' = 'cm', mark: '.' | ',' = '.') =>
  formatOf({ length: unit, mass: 'kg', mark }).spokenLength(length).replaceAll('\u{202f}', ' ');

const SEED = 20260510;
/** Half a millimetre: what is said in millimetres or tenths of a centimetre is never further off. */
const HALF_MM = 0.5;

describe('a length as one says it to an athlete', () => {
  it.each([
    [0.004, '4 mm'],
    [0.0094, '9 mm'],
    [0.01, '1 cm'],
    [0.0152, '1.5 cm'],
    [0.0099, '1 cm'],
    [0.02, '2 cm'],
    [0.0254, '2.5 cm'],
    [0.105, '10.5 cm'],
  ])('%f m is %s', (length, text) => {
    expect(said(length)).toBe(text);
  });

  it('is true to half a millimetre, in millimetres or centimetres', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 0.6, noNaN: true }), (length) => {
        const [, number, unit] = /^([\d.]+) (mm|cm)$/.exec(said(length))!;
        const told = Number(number) * (unit === 'cm' ? 10 : 1);
        expect(Math.abs(told - length * 1000)).toBeLessThanOrEqual(HALF_MM + 1e-9);
      }),
      { seed: SEED },
    );
  });

  it('has no nought at its end that says nothing', () => {
    for (let mm = 10; mm < 300; mm++) expect(said(mm / 1000)).not.toMatch(/\.0 cm/);
  });

  it('in inches is a fraction as on a tape', () => {
    expect(said(0.0127, 'in')).toBe('1/2 in');
    expect(said(0.0762, 'in')).toBe('3 in');
    expect(said(0.0095, 'in')).toBe('3/8 in');
  });

  it('has the reader’s decimal mark', () => {
    expect(said(0.0152, 'cm', ',')).toBe('1,5 cm');
  });
});

import { describe, expect, it } from 'vitest';
import { parseMeasure } from '../../../core/units/measure-text.ts';

/** Invented units of 60 and of 1, as an hour of minutes. */
const UNITS = [
  { names: ['long', 'l'], factor: 60 },
  { names: ['short', 's'], factor: 1 },
];
const read = (text: string) =>
  parseMeasure(text, { units: UNITS, bare: 1, below: (factor) => (factor === 60 ? 1 : undefined) });

describe('parseMeasure', () => {
  it.each([
    ['7', 7],
    ['2 long', 120],
    ['2l 30s', 150],
    ['2 l. 30', 150],
    ['-1 l 30', -90],
    ['−½ l', -30],
    ['1 3/4 l', 105],
    ['1½ long', 90],
    ['1,5 l', 90],
    ['1.234,5', 1234.5],
    ['1,234.5', 1234.5],
    ['1 234,5', 1234.5],
    ['1.234.567', 1234567],
    ['1,234', 1.234],
  ])('reads %s', (text, value) => {
    const parsed = read(text);
    expect(parsed.ok && parsed.value).toBeCloseTo(value, 9);
  });

  it.each([
    ['  ', { code: 'empty' }],
    ['long', { code: 'not-a-number', text: 'long' }],
    ['3 ells', { code: 'unknown-unit', text: 'ells' }],
    ['1.234,5.6', { code: 'unclear-separator', text: '1.234,5.6' }],
    ['1/0', { code: 'not-a-number', text: '1/0' }],
  ])('says why it cannot read “%s”', (text, problem) => {
    expect(read(text)).toEqual({ ok: false, problem });
  });

  it('takes no part that is not smaller than the one before it', () => {
    expect(read('30 s 2 l').ok).toBe(false);
    expect(read('2 l 3 l').ok).toBe(false);
  });
});

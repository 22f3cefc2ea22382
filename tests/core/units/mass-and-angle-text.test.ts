import { describe, expect, it } from 'vitest';
import { parseAngle } from '../../../core/units/angle-text.ts';
import { parseMass } from '../../../core/units/mass-text.ts';

describe('a mass as people write it', () => {
  it.each([
    ['72,5', 72.5],
    ['72.5 kg', 72.5],
    // 160 lb = 160 × 0.45359237 kg, exact by the definition of the pound.
    ['160 lb', 72.5747792],
    ['11 st 4', 158 * 0.45359237],
    ['8 st', 50.80234544],
  ])('%s', (text, wanted) => {
    const parsed = parseMass(text, { defaultUnit: 'kg' });
    expect(parsed.ok && parsed.value).toBeCloseTo(wanted, 9);
  });

  it('takes a bare number in the unit it is told', () => {
    const parsed = parseMass('160', { defaultUnit: 'lb' });
    expect(parsed.ok && parsed.value).toBeCloseTo(72.5747792, 9);
  });

  it('refuses a length', () => {
    expect(parseMass('72 cm', { defaultUnit: 'kg' })).toEqual({
      ok: false,
      problem: { code: 'unknown-unit', text: 'cm' },
    });
  });
});

describe('an angle as people write it', () => {
  it.each([
    ['12', 12],
    ['12,5°', 12.5],
    ['-4 deg', -4],
    ["7° 30'", 7.5],
  ])('%s', (text, wanted) => {
    const parsed = parseAngle(text);
    expect(parsed.ok && parsed.value).toBeCloseTo(wanted, 12);
  });

  it('refuses a length', () => {
    expect(parseAngle('12 cm')).toEqual({ ok: false, problem: { code: 'unknown-unit', text: 'cm' } });
  });
});

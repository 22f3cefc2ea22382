import { describe, expect, it } from 'vitest';
import { formatFor } from '../../../app/language/format.ts';
import { comparedBody } from '../../../renderer/bench/compared-body.ts';
import { bannerText } from '../../../renderer/bench/tabs/growth/difference-text.ts';
import { exampleAthlete } from '../../core/example/example-fit.ts';

const format = formatFor({ length: 'cm', mass: 'kg', decimal: 'point' });
const boy = exampleAthlete({ statureM: 1.55, massKg: 45, bornOn: '2013-04-17', measuredOn: '2026-03-01' });

describe('the body that a fit is held against', () => {
  it('is the one measured last where that differs, however long ago', () => {
    const taller = { ...boy, statureM: 1.58 };
    const { newest, due, difference } = comparedBody(boy, taller, '2027-09-01');
    expect(newest).toBe(taller);
    expect(due).toBe(null);
    expect(difference!.statureM).toBeCloseTo(0.03, 9);
  });

  it('is the likely one where nothing was measured though the age grows', () => {
    const { newest, due, difference } = comparedBody(boy, boy, '2026-11-01');
    expect(due).toMatchObject({ months: 8, ageYears: 13 });
    expect(newest.statureM).toBeCloseTo(1.55 + due!.likelyM, 9);
    const banner = bannerText({ name: 'Tom', difference: difference!, due }, format);
    expect(banner).toContain('measured 8 months ago; usual growth since at 13: about ');
  });

  it('is the same soon after the tape, and of a grown-up', () => {
    expect(comparedBody(boy, boy, '2026-03-20')).toEqual({ newest: boy, due: null, difference: null });
    const man = { ...boy, bornOn: '1990-01-01' };
    expect(comparedBody(man, man, '2030-01-01').difference).toBe(null);
  });
});

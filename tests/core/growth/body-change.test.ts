import { describe, expect, it } from 'vitest';
import { bodySlips, latestChange } from '../../../core/growth/body-change.ts';

describe('the latest change of a body', () => {
  const march = { takenOn: '2026-03-02', value: 1.52 };
  const september = { takenOn: '2026-09-02', value: 1.56 };

  it('is from the last measuring that lies four weeks back or more', () => {
    const nearly = { takenOn: '2026-08-20', value: 1.559 };
    const change = latestChange([september, march, nearly]);
    expect(change).toMatchObject({ from: march, to: september, days: 184 });
    expect(change?.by).toBeCloseTo(0.04, 12);
  });

  it('takes the nearer of two earlier ones', () => {
    const june = { takenOn: '2026-06-02', value: 1.54 };
    expect(latestChange([march, june, september])?.from).toEqual(june);
  });

  it('is none of one measuring, of none, or of two in one week', () => {
    expect(latestChange([])).toBeNull();
    expect(latestChange([march])).toBeNull();
    expect(latestChange([march, { takenOn: '2026-03-06', value: 1.53 }])).toBeNull();
  });
});

describe('a slip of stature or mass', () => {
  const before = { takenOn: '2025-06-01', statureM: 1.6, massKg: 50 };
  const now = (statureM: number | null, massKg: number | null, takenOn = '2026-06-01') => ({
    takenOn,
    statureM,
    massKg,
  });

  it('is none in a year’s usual growth, of a child in a spurt too', () => {
    expect(bodySlips(before, now(1.6, 50))).toEqual([]);
    expect(bodySlips(before, now(1.72, 60))).toEqual([]);
    expect(bodySlips(before, now(1.595, 47))).toEqual([]);
  });

  it('is a body that shrank, shot up, or jumped in mass', () => {
    expect(bodySlips(before, now(1.57, 50))).toEqual(['shrunk']);
    expect(bodySlips(before, now(1.86, 50))).toEqual(['shot-up']);
    expect(bodySlips(before, now(1.62, 95))).toEqual(['mass-jumped']);
    expect(bodySlips(before, now(1.06, 5))).toEqual(['shrunk', 'mass-jumped']);
  });

  it('leaves less room the shorter the time', () => {
    expect(bodySlips(before, now(1.66, 50))).toEqual([]);
    expect(bodySlips(before, now(1.66, 50, '2025-07-01'))).toEqual(['shot-up']);
  });

  it('does not judge what was not measured', () => {
    expect(bodySlips({ ...before, statureM: null }, now(1.2, null))).toEqual([]);
  });
});

it('a change needs 28 days (estimate): nearer ones show the time of day', () => {
  const since = (day: string) =>
    latestChange([
      { takenOn: day, value: 1.6 },
      { takenOn: '2026-03-29', value: 1.61 },
    ]);
  expect(since('2026-03-01')!.days).toBe(28);
  expect(since('2026-03-02')).toBe(null);
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { daysBetween } from '../../../core/growth/calendar-days.ts';

const SEED = 20260311;

describe('days between two dates', () => {
  it.each([
    ['2024-02-01', '2024-03-01', 29],
    ['2026-02-01', '2026-03-01', 28],
    ['1900-02-01', '1900-03-01', 28],
    ['2000-02-01', '2000-03-01', 29],
    ['2026-12-31', '2027-01-01', 1],
    ['2026-06-02', '2026-06-01', -1],
  ])('%s to %s: %i', (from, to, days) => {
    expect(daysBetween(from, to)).toBe(days);
  });

  it(`agrees with the engine's own calendar for any two dates (seed ${SEED})`, () => {
    const day = fc.date({ min: new Date('1900-01-01'), max: new Date('2199-12-31'), noInvalidDate: true });
    fc.assert(
      fc.property(day, day, (a, b) => {
        const [from, to] = [a.toISOString().slice(0, 10), b.toISOString().slice(0, 10)];
        expect(daysBetween(from, to)).toBe((Date.parse(to) - Date.parse(from)) / 86_400_000);
      }),
      { seed: SEED, numRuns: 500 },
    );
  });
});

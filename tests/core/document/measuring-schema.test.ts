import { describe, expect, it } from 'vitest';
import { measuringOf, measuringSchema } from '../../../core/document/measuring-schema.ts';
import { exampleAthlete } from '../example/example-fit.ts';

describe('one day’s measuring', () => {
  it('of an athlete is what the document says, on its own day', () => {
    const tape = { footLength: { valueM: 0.25 } };
    const athlete = exampleAthlete({ measuredOn: '2026-02-03', tape });
    expect(measuringOf(athlete, '2026-05-01')).toEqual({
      takenOn: '2026-02-03',
      statureM: 1.8,
      massKg: 80,
      tape,
    });
    expect(measuringOf(exampleAthlete(), '2026-05-01').takenOn).toBe('2026-05-01');
  });

  it('may hold one thing only, but not nothing', () => {
    const blank = { takenOn: '2026-02-03', statureM: null, massKg: null, tape: {} };
    expect(measuringSchema.safeParse(blank).success).toBe(false);
    for (const part of [{ statureM: 1.6 }, { massKg: 50 }, { tape: { footLength: { valueM: 0.25 } } }]) {
      expect(measuringSchema.safeParse({ ...blank, ...part }).success).toBe(true);
    }
  });
});

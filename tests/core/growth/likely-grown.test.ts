import { describe, expect, it } from 'vitest';
import { athleteSchema } from '../../../core/document/athlete-schema.ts';
import { likelyGrown } from '../../../core/growth/likely-grown.ts';

const athlete = athleteSchema.parse({
  name: 'Liv Aronsen',
  sex: 'female',
  side: 'left',
  statureM: 1.5,
  massKg: 40,
  measuredOn: '2026-01-10',
  tape: { footLength: { valueM: 0.225, sdM: 0.003 } },
});

describe('likelyGrown', () => {
  const grown = likelyGrown(athlete, { likelyM: 0.06 });

  it('grows stature by what is likely and keeps the body-mass index', () => {
    expect(grown.statureM).toBeCloseTo(1.56, 12);
    expect(grown.massKg / grown.statureM ** 2).toBeCloseTo(40 / 1.5 ** 2, 12);
  });

  it('scales what the tape read and doubts it more, and says nothing new of the day', () => {
    expect(grown.tape.footLength!.valueM).toBeCloseTo(0.225 * 1.04, 12);
    expect(grown.tape.footLength!.sdM!).toBeGreaterThan(0.003);
    expect(grown.measuredOn).toBe('2026-01-10');
    expect(athleteSchema.safeParse(grown).success).toBe(true);
  });
});

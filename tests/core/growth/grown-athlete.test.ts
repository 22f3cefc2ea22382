import { describe, expect, it } from 'vitest';
import { TAPE_SD } from '../../../core/body/tape-sd.ts';
import { athleteSchema } from '../../../core/document/athlete-schema.ts';
import { grownAthlete } from '../../../core/growth/grown-athlete.ts';

const athlete = athleteSchema.parse({
  name: 'Liv Aronsen',
  sex: 'female',
  side: 'left',
  statureM: 1.5,
  massKg: 42,
  tape: { kneeHeightSitting: { valueM: 0.46, sdM: 0.004 }, footLength: { valueM: 0.225 } },
});

describe('grownAthlete', () => {
  const grown = grownAthlete(athlete, { statureM: 1.56, massKg: 47, measuredOn: '2026-04-01' });

  it('takes the new stature, mass and day', () => {
    expect(grown).toMatchObject({
      statureM: 1.56,
      massKg: 47,
      measuredOn: '2026-04-01',
      name: 'Liv Aronsen',
    });
  });

  it('scales earlier tape readings with stature and widens their doubt', () => {
    const knee = grown.tape.kneeHeightSitting!;
    expect(knee.valueM).toBeCloseTo(0.46 * 1.04, 12);
    expect(knee.sdM).toBeCloseTo(Math.hypot(0.004, 0.46 * 0.02), 12);
    expect(grown.tape.footLength!.sdM!).toBeGreaterThan(0.005);
  });

  it('leaves an athlete who has not grown as measured', () => {
    const same = grownAthlete(athlete, { statureM: 1.5, massKg: 42 });
    expect(same.tape.kneeHeightSitting).toEqual({ valueM: 0.46, sdM: 0.004 });
  });

  it('never narrows a reading that has only its usual doubt', () => {
    const tape = { kneelingHeight: { valueM: 1.1 } };
    const { kneelingHeight } = grownAthlete({ ...athlete, tape }, { statureM: 1.501, massKg: 42 }).tape;
    expect(kneelingHeight!.sdM).toBeGreaterThan(TAPE_SD.kneelingHeight);
  });

  it('still passes the schema', () => {
    expect(athleteSchema.safeParse(grown).success).toBe(true);
  });
});

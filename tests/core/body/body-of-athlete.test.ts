import { describe, expect, it } from 'vitest';
import { bodyOfAthlete } from '../../../core/body/body-of-athlete.ts';
import { estimateBody } from '../../../core/body/estimate-body.ts';
import { athleteSchema } from '../../../core/document/athlete-schema.ts';

const WRITTEN = {
  name: 'Invented Paddler',
  sex: 'female',
  side: 'left',
  statureM: 1.68,
  massKg: 61,
} as const;

describe('the body of an athlete as written', () => {
  it('is that of the same figures', () => {
    const athlete = athleteSchema.parse({
      ...WRITTEN,
      tape: { kneeHeightSitting: { valueM: 0.53, sdM: 0.003 }, armSpan: { valueM: 1.7 } },
    });
    expect(bodyOfAthlete(athlete)).toEqual(
      estimateBody({
        stature: 1.68,
        mass: 61,
        sex: 'female',
        tape: { kneeHeightSitting: { value: 0.53, sd: 0.003 }, armSpan: { value: 1.7 } },
      }),
    );
  });

  it('knows a junior by birth date and day of measuring', () => {
    const athlete = athleteSchema.parse({ ...WRITTEN, bornOn: '2010-09-01', measuredOn: '2026-08-31' });
    expect(bodyOfAthlete(athlete).notes).toEqual([{ code: 'junior', ageYears: 15 }]);
  });

  it.each([{ bornOn: '2010-09-01' }, { measuredOn: '2026-08-31' }, {}])(
    'assumes an adult with no more than %o',
    (dates) => {
      expect(bodyOfAthlete(athleteSchema.parse({ ...WRITTEN, ...dates })).notes).toEqual([]);
    },
  );
});

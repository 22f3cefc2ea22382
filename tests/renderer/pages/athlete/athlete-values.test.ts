import { describe, expect, it } from 'vitest';
import { athleteSchema } from '../../../../core/document/athlete-schema.ts';
import { NEUTRAL_TERMS } from '../../../../core/document/neutral-schema.ts';
import { today } from '../../../../renderer/language/dates.ts';
import {
  ATHLETE_RULES,
  athleteValues,
  unasked,
  valuesWithChange,
  withTape,
} from '../../../../renderer/pages/athlete/athlete-values.ts';
import { readForm } from '../../../../renderer/ui/form/form-rules.ts';
import { exampleAthlete } from '../../../core/example/example-fit.ts';

describe('the athlete’s values', () => {
  it('give back an athlete as it was', () => {
    const athlete = exampleAthlete({
      bornOn: '2012-03-04',
      measuredOn: '2021-01-02',
      tape: { footLength: { valueM: 0.26, sdM: 0.002, takenOn: '2020-12-01' } },
      limits: [{ joint: 'kneelingKneeFlexion', maxDeg: 110, reason: 'old injury' }],
    });
    expect(readForm(ATHLETE_RULES, athleteValues(athlete))).toEqual({ ok: true, document: athlete });
  });

  it('give back all that an athlete can have, with what the form does not ask for', () => {
    const athlete = exampleAthlete({
      id: '6f1f9a52-4f39-4d57-9a6a-0f3d1d3f6b11',
      bornOn: '2012-03-04',
      measuredOn: '2021-01-02',
      kneeBreadthM: 0.1,
      bands: [{ quantity: 'frontKnee', min: null, max: 2, reason: 'sore knee' }],
      neutral: {
        learntOn: '2021-01-02',
        pictures: 2,
        strays: Array<number>(NEUTRAL_TERMS).fill(0.1),
        roots: Array<number>(NEUTRAL_TERMS ** 2).fill(0),
        setAside: false,
      },
      consent: { bodyData: { by: 'Her mother', on: '2021-01-02' } },
    });
    expect(Object.keys(athlete).sort()).toEqual(Object.keys(athleteSchema.shape).sort());
    const { id: _, ...asked } = athlete;
    const read = readForm(ATHLETE_RULES, athleteValues(athlete));
    expect(read.ok && { ...read.document, ...unasked(athlete) }).toEqual(asked);
  });

  it('say which fields are still needed', () => {
    const made = readForm(ATHLETE_RULES, athleteValues(null));
    expect(!made.ok && Object.keys(made.problems).sort()).toEqual(['massKg', 'name', 'side', 'statureM']);
  });

  it('date a tape measure with the day of measuring, and keep one that was not taken again', () => {
    const athlete = exampleAthlete({
      measuredOn: '2021-01-02',
      tape: { footLength: { valueM: 0.26, sdM: 0.002, takenOn: '2020-12-01' } },
    });
    const values = athleteValues(athlete);
    expect(withTape(values, 'footLength', 0.26)).toBe(values.tape);
    expect(withTape(values, 'footLength', 0.265).footLength).toEqual({
      valueM: 0.265,
      takenOn: '2021-01-02',
    });
    expect(withTape(values, 'footLength', null)).toEqual({});
  });
});

describe('days that have not come yet', () => {
  it('are named and nothing is made of them', () => {
    const values = { ...athleteValues(exampleAthlete()), bornOn: '2999-01-01', measuredOn: '2999-01-02' };
    const made = readForm(ATHLETE_RULES, values);
    expect(!made.ok && Object.keys(made.problems).sort()).toEqual(['bornOn', 'measuredOn']);
  });

  it('doubt a year of birth that nobody living has', () => {
    const born = (bornOn: string) => readForm(ATHLETE_RULES, { ...athleteValues(exampleAthlete()), bornOn });
    const made = born('1800-01-01');
    expect(!made.ok && Object.keys(made.problems)).toEqual(['bornOn']);
    expect(born('1950-01-01').ok).toBe(true);
  });
});

describe('a changed body', () => {
  const kept = exampleAthlete({ measuredOn: '2026-01-10' });
  const values = athleteValues(kept);

  it('is one measured today, so that the earlier figures stay', () => {
    expect(valuesWithChange(values, { statureM: 1.83 }, kept)).toEqual({
      statureM: 1.83,
      measuredOn: today(),
    });
  });

  it('keeps a day that was set by hand, and other changes move no day', () => {
    const set = { ...values, measuredOn: '2026-02-02' };
    expect(valuesWithChange(set, { massKg: 81 }, kept)).toEqual({ massKg: 81 });
    expect(valuesWithChange(values, { name: 'Another' }, kept)).toEqual({ name: 'Another' });
    expect(valuesWithChange(values, { massKg: 81 }, null)).toEqual({ massKg: 81 });
  });
});

describe('consents and own bands', () => {
  const given = { by: 'a guardian', on: '2026-01-09' };
  const band = { quantity: 'frontKnee', min: 110, max: 130, reason: 'short hamstrings' };

  it('come through the values and back', () => {
    const athlete = exampleAthlete({ consent: { bodyData: given }, bands: [band] });
    expect(readForm(ATHLETE_RULES, athleteValues(athlete))).toEqual({ ok: true, document: athlete });
    const bare = exampleAthlete();
    expect(readForm(ATHLETE_RULES, athleteValues(bare))).toEqual({ ok: true, document: bare });
  });

  it('that are half filled in are named, field by field', () => {
    const blank = athleteValues(exampleAthlete());
    const half = readForm(ATHLETE_RULES, {
      ...blank,
      consent: { bodyData: { by: 'a guardian', on: '' }, photographs: { by: '', on: '2026-01-09' } },
      bands: [
        { ...band, min: null, max: null },
        { ...band, quantity: 'padOut', min: 3, max: 2 },
        { ...band, quantity: 'padHeight', reason: ' ' },
      ],
    });
    expect('problems' in half && Object.keys(half.problems).sort()).toEqual([
      'bands.0',
      'bands.1',
      'bands.2.reason',
      'consent.bodyData.on',
      'consent.photographs.by',
    ]);
  });
});

import { describe, expect, it } from 'vitest';
import { today } from '../../../../renderer/language/dates.ts';
import {
  athleteOf,
  entriesOf,
  withChange,
  withTape,
} from '../../../../renderer/pages/athlete/athlete-entries.ts';
import { exampleAthlete } from '../../../core/example/example-fit.ts';

describe('the athlete’s entries', () => {
  it('give back an athlete as it was', () => {
    const athlete = exampleAthlete({
      bornOn: '2012-03-04',
      measuredOn: '2021-01-02',
      tape: { footLength: { valueM: 0.26, sdM: 0.002, takenOn: '2020-12-01' } },
      limits: [{ joint: 'kneelingKneeFlexion', maxDeg: 110, reason: 'old injury' }],
    });
    expect(athleteOf(entriesOf(athlete), undefined)).toEqual({ athlete });
  });

  it('say which fields are still needed', () => {
    const made = athleteOf(entriesOf(null), undefined);
    expect('problems' in made && Object.keys(made.problems).sort()).toEqual([
      'massKg',
      'name',
      'side',
      'statureM',
    ]);
  });

  it('date a tape measure with the day of measuring, and keep one that was not taken again', () => {
    const athlete = exampleAthlete({
      measuredOn: '2021-01-02',
      tape: { footLength: { valueM: 0.26, sdM: 0.002, takenOn: '2020-12-01' } },
    });
    const entries = entriesOf(athlete);
    expect(withTape(entries, 'footLength', 0.26)).toBe(entries.tape);
    expect(withTape(entries, 'footLength', 0.265).footLength).toEqual({
      valueM: 0.265,
      takenOn: '2021-01-02',
    });
    expect(withTape(entries, 'footLength', null)).toEqual({});
  });
});

describe('days that have not come yet', () => {
  it('are named and nothing is made of them', () => {
    const entries = { ...entriesOf(exampleAthlete()), bornOn: '2999-01-01', measuredOn: '2999-01-02' };
    const made = athleteOf(entries, undefined);
    expect('problems' in made && Object.keys(made.problems).sort()).toEqual(['bornOn', 'measuredOn']);
  });
});

describe('a changed body', () => {
  const kept = exampleAthlete({ measuredOn: '2026-01-10' });
  const entries = entriesOf(kept);

  it('is one measured today, so that the earlier figures stay', () => {
    expect(withChange(entries, { statureM: 1.83 }, kept)).toEqual({ statureM: 1.83, measuredOn: today() });
  });

  it('keeps a day that was set by hand, and other changes move no day', () => {
    const set = { ...entries, measuredOn: '2026-02-02' };
    expect(withChange(set, { massKg: 81 }, kept)).toEqual({ massKg: 81 });
    expect(withChange(entries, { name: 'Another' }, kept)).toEqual({ name: 'Another' });
    expect(withChange(entries, { massKg: 81 }, null)).toEqual({ massKg: 81 });
  });
});

describe('consents and own bands', () => {
  const given = { by: 'a guardian', on: '2026-01-09' };
  const band = { quantity: 'frontKnee', min: 110, max: 130, reason: 'short hamstrings' };

  it('come through the entries and back', () => {
    const athlete = exampleAthlete({ consent: { bodyData: given }, bands: [band] });
    expect(athleteOf(entriesOf(athlete), undefined)).toEqual({ athlete });
    const bare = exampleAthlete();
    expect(athleteOf(entriesOf(bare), undefined)).toEqual({ athlete: bare });
  });

  it('that are half filled in are named, field by field', () => {
    const blank = entriesOf(exampleAthlete());
    const half = athleteOf(
      {
        ...blank,
        consent: { bodyData: { by: 'a guardian', on: '' }, photographs: { by: '', on: '2026-01-09' } },
        bands: [
          { ...band, min: null, max: null },
          { ...band, quantity: 'padOut', min: 3, max: 2 },
          { ...band, quantity: 'padHeight', reason: ' ' },
        ],
      },
      undefined,
    );
    expect('problems' in half && Object.keys(half.problems).sort()).toEqual([
      'bands.0',
      'bands.1',
      'bands.2.reason',
      'consent.bodyData.on',
      'consent.photographs.by',
    ]);
  });
});

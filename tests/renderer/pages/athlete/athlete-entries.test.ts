import { describe, expect, it } from 'vitest';
import { athleteOf, entriesOf, withTape } from '../../../../renderer/pages/athlete/athlete-entries.ts';
import { exampleAthlete } from '../../../core/example/example-fit.ts';

describe('the athlete’s entries', () => {
  it('give back an athlete as it was', () => {
    const athlete = exampleAthlete({
      bornOn: '2012-03-04',
      measuredOn: '2031-01-02',
      tape: { footLength: { valueM: 0.26, sdM: 0.002, takenOn: '2030-12-01' } },
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
      measuredOn: '2031-01-02',
      tape: { footLength: { valueM: 0.26, sdM: 0.002, takenOn: '2030-12-01' } },
    });
    const entries = entriesOf(athlete);
    expect(withTape(entries, 'footLength', 0.26)).toBe(entries.tape);
    expect(withTape(entries, 'footLength', 0.265).footLength).toEqual({
      valueM: 0.265,
      takenOn: '2031-01-02',
    });
    expect(withTape(entries, 'footLength', null)).toEqual({});
  });
});

import { describe, expect, it } from 'vitest';
import { forFit, isMinor, missingConsents } from '../../../core/document/consent.ts';
import { exampleAthlete } from '../example/example-fit.ts';

const BOTH = ['bodyData', 'photographs'] as const;
const given = { by: 'a guardian', on: '2026-01-10' };

describe('who is a minor', () => {
  it('is told by the birth date, to the day', () => {
    expect(isMinor({ bornOn: '2008-05-01' }, '2026-04-30')).toBe(true);
    expect(isMinor({ bornOn: '2008-05-01' }, '2026-05-01')).toBe(false);
    expect(isMinor({}, '2026-05-01')).toBeNull();
  });
});

describe('consents that are missing', () => {
  const minor = exampleAthlete({ bornOn: '2012-11-05' });

  it('are all of them, until each is given', () => {
    expect(missingConsents(minor, BOTH, '2026-05-01')).toEqual(['bodyData', 'photographs']);
    const half = exampleAthlete({ bornOn: '2012-11-05', consent: { bodyData: given } });
    expect(missingConsents(half, BOTH, '2026-05-01')).toEqual(['photographs']);
    expect(missingConsents(half, ['bodyData'], '2026-05-01')).toEqual([]);
  });

  it('are none once the athlete is of age, or where the age is not known', () => {
    expect(missingConsents(minor, BOTH, '2031-01-01')).toEqual([]);
    expect(missingConsents(exampleAthlete(), BOTH, '2026-05-01')).toEqual([]);
  });
});

describe('the athlete that a fit carries', () => {
  it('is the same without the guardian', () => {
    const athlete = exampleAthlete({ bornOn: '2012-11-05', consent: { bodyData: given } });
    const { consent, ...rest } = athlete;
    expect(consent).toEqual({ bodyData: given });
    expect(forFit(athlete)).toEqual(rest);
    expect(JSON.stringify(forFit(athlete))).not.toContain('guardian');
  });
});

import { describe, expect, it } from 'vitest';
import { revisionText, type SheetStamp, stampDay, stampLine } from '../../../core/setout/sheet-stamp.ts';
import { english } from '../../english.ts';

const stamp: SheetStamp = {
  fitName: 'Spring',
  boatName: 'Grey Heron',
  athleteName: 'Žofie Łuczak',
  revision: 7,
  revisionName: 'pad back',
  keptAt: '2026-05-04T23:59:00Z',
};

describe('what a sheet says of itself', () => {
  it('is who for, which boat, which revision, of which day in UTC', () => {
    expect(stampLine(stamp, english)).toBe('Žofie Łuczak · Grey Heron · revision 7, pad back · 2026-05-04');
    expect(stampDay(stamp)).toBe('2026-05-04');
    expect(revisionText({ ...stamp, revision: null, revisionName: '' }, english)).toBe('no revision');
    expect(stampLine({ ...stamp, boatName: '' }, english)).toBe(
      'Žofie Łuczak · revision 7, pad back · 2026-05-04',
    );
  });

  it('of a revision without a name is its number, of work without a revision that has one both', () => {
    expect(revisionText({ ...stamp, revisionName: '' }, english)).toBe('revision 7');
    expect(revisionText({ ...stamp, revision: null, revisionName: 'trial' }, english)).toBe(
      'no revision, trial',
    );
    expect(revisionText({ ...stamp, mark: 'K7QXM' }, english)).toBe('revision 7 K7QXM, pad back');
  });
});

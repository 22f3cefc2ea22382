import { describe, expect, it } from 'vitest';
import { revisionText, type SheetStamp, stampDay, stampLine } from '../../../core/setout/sheet-stamp.ts';

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
    expect(stampLine(stamp)).toBe('Žofie Łuczak · Grey Heron · revision 7, pad back · 2026-05-04');
    expect(stampDay(stamp)).toBe('2026-05-04');
    expect(revisionText({ ...stamp, revision: null, revisionName: '' })).toBe('draft');
    expect(stampLine({ ...stamp, boatName: '' })).toBe('Žofie Łuczak · revision 7, pad back · 2026-05-04');
  });

  it('of a revision without a name is its number, of a draft with one both', () => {
    expect(revisionText({ ...stamp, revisionName: '' })).toBe('revision 7');
    expect(revisionText({ ...stamp, revision: null, revisionName: 'trial' })).toBe('draft, trial');
    expect(revisionText({ ...stamp, mark: 'K7QXM' })).toBe('revision 7 K7QXM, pad back');
  });
});

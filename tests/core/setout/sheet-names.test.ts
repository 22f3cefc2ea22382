import { describe, expect, it } from 'vitest';
import { ANGLES, HEIGHTS } from '../../../core/setout/heights-and-angles.ts';
import { MARKS } from '../../../core/setout/marks.ts';
import {
  acrossText,
  alongText,
  angleName,
  angleText,
  FITTING_NAMES,
  heightCheck,
  heightName,
  markWhat,
} from '../../../core/setout/sheet-names.ts';
import { inventedSetOut, ON_A_WEDGE } from './invented-set-out.ts';

const out = inventedSetOut({ seat: { frontFoot: ON_A_WEDGE } });

describe('the words of a sheet', () => {
  it('name every mark, height and angle, each otherwise', () => {
    const names = [
      ...MARKS.map((name) => markWhat(out, name)),
      ...HEIGHTS.map(heightName),
      ...ANGLES.map(angleName),
      ...Object.values(FITTING_NAMES),
    ];
    expect(new Set(names).size).toBe(names.length);
    for (const name of names) expect(name.length).toBeGreaterThan(5);
  });

  it('say along and across as a tape is read, never with a minus', () => {
    expect(alongText({ forwardMm: -175 }, 'mm')).toBe('175 aft');
    expect(alongText({ forwardMm: 400 }, 'mm')).toBe('400 forward');
    expect(alongText({ forwardMm: 0 }, 'mm')).toBe('on the mark');
    expect(acrossText({ portMm: 35 }, 'mm')).toBe('35 left');
    expect(acrossText({ portMm: -60 }, 'in')).toBe('2 3/8 right');
    expect(acrossText({ portMm: 0 }, 'mm')).toBe('on the line');
  });

  it('say how each height is proved', () => {
    const checks = out.heights.map((row) => heightCheck(row, 'mm'));
    expect(checks).toEqual([
      'all four corners alike',
      '20 mm down from a straightedge laid over the block',
      '10 mm foam brings it up to K',
      '58 mm up the slope of the face',
      '24 mm between heel and toes',
      '24 mm between heel and toes',
    ]);
  });

  it('say each angle with a tape', () => {
    const texts = Object.fromEntries(out.angles.map((row) => [row.angle, angleText(row, 'mm')]));
    expect(texts.padTurn).toBe('aft end to the right; over 200 mm, 43 mm aside');
    expect(texts.restTurn).toBe('aft end to the right; over 200 mm, 73 mm aside');
    expect(texts.restTilt).toBe('50 mm up over 29 mm aft');
    expect(texts.footTurn).toBe('toes to the right; over 200 mm, 21 mm aside');
    expect(texts.footWedge).toMatch(/^toes \d+ mm up over \d+ mm$/);
  });

  it('say upright, flat and straight in words', () => {
    const row = { deg: 0, toleranceDeg: 1, toward: null, overMm: 0, byMm: 50 } as const;
    expect(angleText({ ...row, angle: 'restTilt' }, 'mm')).toBe('upright');
    expect(angleText({ ...row, angle: 'footWedge' }, 'mm')).toBe('flat');
    expect(angleText({ ...row, angle: 'padTurn' }, 'mm')).toBe('straight fore and aft');
    const down = { ...row, angle: 'footWedge', deg: -3, overMm: 270, byMm: -14 } as const;
    expect(angleText(down, 'mm')).toBe('toes 14 mm down over 270 mm');
  });
});

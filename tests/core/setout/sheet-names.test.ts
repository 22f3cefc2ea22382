import { describe, expect, it } from 'vitest';
import { ANGLES, HEIGHTS } from '../../../core/setout/heights-and-angles.ts';
import { MARKS } from '../../../core/setout/marks.ts';
import {
  acrossText,
  alongText,
  angleName,
  angleText,
  heightCheck,
  heightName,
  markWhat,
} from '../../../core/setout/sheet-names.ts';
import { english, plainSpaces } from '../../english.ts';
import { inventedSetOut, ON_A_WEDGE } from './invented-set-out.ts';

const MM = { units: 'mm', words: english } as const;
const INCHES = { units: 'in', words: english } as const;
const out = inventedSetOut({ seat: { frontFoot: ON_A_WEDGE } });

describe('the words of a sheet', () => {
  it('name every mark, height and angle, each otherwise', () => {
    const names = [
      ...MARKS.map((name) => markWhat(out, name)),
      ...HEIGHTS.map((height) => heightName(height, english)),
      ...ANGLES.map((angle) => angleName(angle, english)),
    ];
    expect(new Set(names).size).toBe(names.length);
    for (const name of names) expect(name.length).toBeGreaterThan(5);
  });

  it('say along and across as a tape is read, never with a minus', () => {
    expect(alongText({ forwardMm: -175 }, MM)).toBe('175 aft');
    expect(alongText({ forwardMm: 400 }, MM)).toBe('400 forward');
    expect(alongText({ forwardMm: 0 }, MM)).toBe('on the mark');
    expect(acrossText({ portMm: 35 }, MM)).toBe('35 left');
    expect(acrossText({ portMm: -60 }, INCHES)).toBe('2 3/8 right');
    expect(acrossText({ portMm: 0 }, MM)).toBe('on the line');
  });

  it('say how each height is proved', () => {
    const checks = out.heights.map((row) => plainSpaces(heightCheck(row, MM)));
    expect(checks).toEqual([
      'all four corners',
      '20 mm below a straightedge on the block',
      '10 mm foam brings it up to K',
      '58 mm up the face',
      '24 mm between heel and toes',
      '24 mm between heel and toes',
    ]);
  });

  it('say each angle with a tape', () => {
    const texts = Object.fromEntries(out.angles.map((row) => [row.angle, plainSpaces(angleText(row, MM))]));
    expect(texts.padTurn).toBe('aft end to the right: 43 mm aside over 200 mm');
    expect(texts.restTurn).toBe('aft end to the right: 73 mm aside over 200 mm');
    expect(texts.restTilt).toBe('50 mm up over 29 mm aft');
    expect(texts.footTurn).toBe('toes to the right: 21 mm aside over 200 mm');
    expect(texts.footWedge).toMatch(/^toes \d+ mm up over \d+ mm$/);
  });

  it('say upright, flat and straight in words', () => {
    const row = { deg: 0, toleranceDeg: 1, toward: null, overMm: 0, byMm: 50 } as const;
    expect(angleText({ ...row, angle: 'restTilt' }, MM)).toBe('upright');
    expect(angleText({ ...row, angle: 'footWedge' }, MM)).toBe('flat');
    expect(angleText({ ...row, angle: 'padTurn' }, MM)).toBe('straight fore and aft');
    const down = { ...row, angle: 'footWedge', deg: -3, overMm: 270, byMm: -14 } as const;
    expect(plainSpaces(angleText(down, MM))).toBe('toes 14 mm down over 270 mm');
  });
});

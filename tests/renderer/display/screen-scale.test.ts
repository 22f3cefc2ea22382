import { describe, expect, it } from 'vitest';
import { DISPLAY_DEFAULTS, displayRecord } from '../../../app/contract/display.ts';
import {
  ASSUMED_PIXELS_PER_MM,
  CARD_MM,
  SCALE_LIMITS,
  scaleOf,
  scaleOfBar,
  withScale,
} from '../../../renderer/display/screen-scale.ts';

describe('the scale of a screen', () => {
  it('is that of the card whose frame it fills (ISO/IEC 7810, ID-1: 85.60 × 53.98 mm)', () => {
    expect(CARD_MM.width).toBe(85.6);
    expect(CARD_MM.height).toBe(53.98);
  });

  it('is assumed as 96 pixels to the inch where nobody has measured (CSS Values 3)', () => {
    expect(ASSUMED_PIXELS_PER_MM * 25.4).toBeCloseTo(96, 12);
    expect(scaleOf(DISPLAY_DEFAULTS, 'any')).toBeNull();
  });

  it('follows from a bar and what a ruler says of it', () => {
    expect(scaleOfBar(400, 100)).toBe(4);
    expect(scaleOfBar(400, 0.5)).toBeNull();
    expect(scaleOfBar(400, 5000)).toBeNull();
    for (const limit of Object.values(SCALE_LIMITS)) expect(scaleOfBar(400, 400 / limit)).toBe(limit);
  });

  it('is kept for each screen, measured again in place of before, and forgotten', () => {
    const one = withScale([], '1440 × 900 at 2', 4.3);
    const two = withScale(one, '1920 × 1080 at 1', 3.6);
    expect(scaleOf({ screens: two }, '1440 × 900 at 2')).toBe(4.3);
    const again = withScale(two, '1440 × 900 at 2', 4.4);
    expect(again).toHaveLength(2);
    expect(scaleOf({ screens: again }, '1440 × 900 at 2')).toBe(4.4);
    expect(scaleOf({ screens: withScale(again, '1440 × 900 at 2', null) }, '1440 × 900 at 2')).toBeNull();
  });

  it('of however many screens, no more are kept than the program takes', () => {
    const many = Array.from({ length: 40 }, (_, k) => `screen ${k}`).reduce(
      (screens, name) => withScale(screens, name, 4),
      withScale([], 'first', 4),
    );
    expect(displayRecord.safeParse({ ...DISPLAY_DEFAULTS, screens: many }).success).toBe(true);
    expect(scaleOf({ screens: many }, 'screen 39')).toBe(4);
    expect(scaleOf({ screens: many }, 'first')).toBeNull();
  });
});

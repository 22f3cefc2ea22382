import { describe, expect, it } from 'vitest';
import { shownBox } from '../../../core/photograph/shown-box.ts';

const image = { width: 1000, height: 800 };
const joints = { headTop: { u: 500, v: 300 }, frontToe: { u: 600, v: 500 } };

describe('what of a picture an athlete is shown', () => {
  it('is the athlete with some room, not who stands beside', () => {
    expect(shownBox(joints, image, null)).toEqual({ left: 460, top: 260, width: 180, height: 280 });
  });

  it('holds the whole circle of the face', () => {
    const { left, top } = shownBox(joints, image, { centre: { u: 500, v: 300 }, radius: 100 });
    expect(left).toBeLessThan(400);
    expect(top).toBeLessThan(200);
  });

  it('stays within the picture, and is all of it without marks', () => {
    const { left, top, width, height } = shownBox(
      { headTop: { u: 10, v: 10 }, topHand: { u: 990, v: 790 } },
      image,
      null,
    );
    expect([left, top, width, height]).toEqual([0, 0, 1000, 800]);
    expect(shownBox({}, image, null)).toEqual({ left: 0, top: 0, ...image });
  });
});

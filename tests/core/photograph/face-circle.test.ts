import { describe, expect, it } from 'vitest';
import { faceCircle } from '../../../core/photograph/face-circle.ts';

describe('the circle over a face', () => {
  const midShoulder = { u: 100, v: 400 };
  const headTop = { u: 130, v: 300 };

  it('covers the head from chin to crown', () => {
    const { centre, radius } = faceCircle({ midShoulder, headTop })!;
    const reach = (share: number) =>
      Math.hypot(
        midShoulder.u + share * (headTop.u - midShoulder.u) - centre.u,
        midShoulder.v + share * (headTop.v - midShoulder.v) - centre.v,
      );
    // Chin at 0.870 of stature, crown at 1, mid-shoulder at 0.818 (Drillis & Contini 1966): the chin is 0.29 of the way up.
    expect(reach(0.29)).toBeLessThan(radius);
    expect(reach(1)).toBeLessThan(radius);
  });

  it('is unknown without both marks', () => {
    expect(faceCircle({ headTop })).toBeNull();
    expect(faceCircle({ midShoulder })).toBeNull();
  });
});

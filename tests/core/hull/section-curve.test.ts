import { describe, expect, it } from 'vitest';
import { type SectionCurve, sectionCurve } from '../../../core/hull/section-curve.ts';

const DEG = Math.PI / 180;
/** Points on a circle of radius 0.3 m about (0, 0.3), from the keel up, so many degrees apart. */
const arc = (degrees: number, upTo = 80) =>
  Array.from(
    { length: upTo / degrees + 1 },
    (_, k) => [0.3 * Math.sin(k * degrees * DEG), 0.3 - 0.3 * Math.cos(k * degrees * DEG)] as const,
  );
const radiusAt = (curve: SectionCurve, place: number) => {
  const [y, z] = curve(place);
  return Math.hypot(y, z - 0.3);
};

describe('a fair curve through a half-section', () => {
  it('passes through every given point exactly, and ends at the sheer', () => {
    const points = arc(20);
    const curve = sectionCurve(points);
    for (const [k, point] of points.entries()) expect(curve(k)).toEqual(point);
    expect(curve(9)).toEqual(points.at(-1));
  });

  it.each([5, 10, 20])(
    'is the circle itself between points on one, %i° apart, keel and sheer included',
    (step) => {
      const points = arc(step);
      const curve = sectionCurve(points);
      // A chord lies r·(1 − cos(step/2)) inside: 2.9e-4 m at 5°. The cubic is nearer by a factor of a thousand and more.
      for (let k = 0; k < points.length - 1; k++)
        expect(Math.abs(radiusAt(curve, k + 0.5) - 0.3), `piece ${k}`).toBeLessThan(5e-7 * (step / 5) ** 4);
    },
  );

  it('keeps a V straight, and a wall side', () => {
    const curve = sectionCurve([
      [0, 0],
      [0.1, 0.05],
      [0.2, 0.1],
      [0.2, 0.3],
    ]);
    expect(curve(0.5)[1]).toBeCloseTo(0.025, 12);
    expect(curve(1.25)[1] / curve(1.25)[0]).toBeCloseTo(0.5, 12);
    expect(curve(2.5)).toEqual([0.2, 0.2]);
  });

  it('keeps a knuckle that is given twice, however small its turn', () => {
    const curve = sectionCurve([
      [0, 0],
      [0.1, 0.02],
      [0.2, 0.06],
      [0.2, 0.06],
      [0.26, 0.2],
      [0.27, 0.3],
    ]);
    expect(curve(2.5)).toEqual([0.2, 0.06]);
    const before = curve(1.999);
    const after = curve(3.001);
    const turn = Math.atan2(after[1] - 0.06, after[0] - 0.2) - Math.atan2(0.06 - before[1], 0.2 - before[0]);
    expect(turn).toBeGreaterThan(20 * DEG);
  });

  it('never crosses the centreline, and scales with the section', () => {
    const points = arc(20);
    const [one, ten] = [sectionCurve(points), sectionCurve(points.map(([y, z]) => [10 * y, 10 * z]))];
    for (let place = 0; place <= 4; place += 0.1) {
      const [y, z] = one(place);
      expect(y).toBeGreaterThanOrEqual(0);
      expect(ten(place)[0]).toBeCloseTo(10 * y, 9);
      expect(ten(place)[1]).toBeCloseTo(10 * z, 9);
    }
  });
});

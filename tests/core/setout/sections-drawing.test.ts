import { describe, expect, it } from 'vitest';
import { pointsOf } from '../../../core/graphics/shape.ts';
import { halfBreadth } from '../../../core/hull/section-at.ts';
import { sectionsDrawing } from '../../../core/setout/sections-drawing.ts';
import { english } from '../../english.ts';
import { notEmpty } from '../../not-empty.ts';
import { sampleHull } from '../../reference/hydro-sample-hulls.ts';

describe('the sections at full size', () => {
  const hull = sampleHull('single');
  const { shapes } = sectionsDrawing(hull, { words: english, units: 'mm' });
  const curves = shapes.flatMap((shape) =>
    shape.kind === 'line' && shape.role === 'hull' ? shape.lines.map(pointsOf) : [],
  );
  const texts = shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));

  it('lie on the hull, aft on the left and fore on the right, amidships on both', () => {
    const stations = Array.from({ length: 11 }, (_, k) => k).filter(
      (k) => Math.max(...[0.05, 0.1, 0.2].map((z) => halfBreadth(hull, xOf(k), hull.lowestZ + z) ?? 0)) > 0,
    );
    expect(curves).toHaveLength(stations.length + 1);
    for (const [k, curve] of notEmpty(curves).entries()) {
      const side = Math.sign(curve.at(-1)![0]);
      const station = stations[side < 0 ? k : k - 1]!;
      expect(side).toBe(station < 5 ? -1 : station > 5 ? 1 : side);
      for (const [right, up] of curve.filter((_, i) => i % 7 === 3)) {
        const half = halfBreadth(hull, xOf(station), hull.lowestZ + up / 1000);
        expect(Math.abs(right) / 1000).toBeCloseTo(half!, 4);
      }
    }
  });

  it('have names on a grid of waterlines and buttocks every 50 mm', () => {
    expect(texts).toEqual(
      expect.arrayContaining(['W1  50', 'W2  100', 'B1  50', 'B2  100', 'B3  150', 'B4  200']),
    );
    expect(texts.some((text) => /^5: 26\d\d from the stern/.test(text))).toBe(true);
  });

  it('have their stations named over the grid, where no line of it runs, none on another', () => {
    const top = Math.max(
      ...shapes.flatMap((shape) =>
        shape.kind === 'line' && shape.role === 'depthLine'
          ? shape.lines.flatMap((each) => pointsOf(each).map(([, up]) => up))
          : [],
      ),
    );
    const names = shapes.flatMap((shape) =>
      shape.kind === 'text' && / from the stern/.test(shape.text) ? [shape] : [],
    );
    expect(names).toHaveLength(curves.length);
    for (const { at, turnDeg } of notEmpty(names)) {
      expect(at[1]).toBeGreaterThan(top);
      expect(turnDeg).toBe(90);
    }
    const across = names.map(({ at }) => at[0]).sort((a, b) => a - b);
    for (const [k, x] of across.slice(1).entries()) expect(x - across[k]!).toBeGreaterThan(3.9);
  });

  const xOf = (station: number) => hull.aftX + (hull.length * station) / 10;
});

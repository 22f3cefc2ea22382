import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dot, norm, subtract, type Vec3 } from '../../../../core/frame/vec3.ts';
import { angleArc, arcToward } from '../../../../renderer/drawing/view/angle-arc.ts';

const SEED = 31;
const metre = fc.double({ min: -1, max: 1, noNaN: true });
const point = fc.record({ x: metre, y: metre, z: metre });
const between = (a: Vec3, b: Vec3) => Math.acos(Math.min(1, Math.max(-1, dot(a, b) / norm(a) / norm(b))));

describe('an arc is drawn in space', () => {
  it('lies on its radius, starts and ends on the two limbs, and spans their true angle', () => {
    fc.assert(
      fc.property(point, point, point, (corner, from, to) => {
        const arc = angleArc({ corner, from, to }, 0.2);
        fc.pre(arc !== null && between(subtract(from, corner), subtract(to, corner)) < 3.1);
        const rays = arc!.points.map((p) => subtract(p, corner));
        for (const ray of rays) expect(norm(ray)).toBeCloseTo(0.2, 9);
        expect(between(rays[0]!, subtract(from, corner))).toBeLessThan(1e-5);
        expect(between(rays.at(-1)!, subtract(to, corner))).toBeLessThan(1e-5);
        const steps = rays.slice(1).reduce((sum, ray, k) => sum + between(rays[k]!, ray), 0);
        expect(steps).toBeCloseTo(between(subtract(from, corner), subtract(to, corner)), 5);
      }),
      { seed: SEED },
    );
  });

  it('is not drawn where a limb has no length', () => {
    const at = { x: 1, y: 2, z: 3 };
    expect(angleArc({ corner: at, from: at, to: { x: 0, y: 0, z: 0 } }, 0.1)).toBeNull();
  });
});

describe('an arc near a half-turn', () => {
  const corner = { x: 0, y: 0, z: 0 };
  const from = { x: 0, y: 0, z: 1 };
  const toward = { x: 1, y: 0, z: 0 };

  it('keeps to its side as the angle passes 180°', () => {
    for (const degrees of [170, 179.9, 180.1, 200]) {
      const angle = (degrees * Math.PI) / 180;
      const arc = arcToward({ corner, from, toward, angle }, 1)!;
      expect(arc.middle.x).toBeGreaterThan(0.98);
      expect(arc.points.at(-1)!.x).toBeCloseTo(Math.sin(angle), 9);
      expect(arc.points.at(-1)!.z).toBeCloseTo(Math.cos(angle), 9);
    }
  });
});

import { describe, expect, it } from 'vitest';
import { cross, dot, norm } from '../../../core/frame/vec3.ts';
import {
  axesOf,
  type Camera,
  cameraAim,
  depthOf,
  movedCamera,
  projectPoint,
} from '../../../core/photograph/camera.ts';

/** Looks from starboard to port, 5 m off the centreline, 1 m up; 1000 pixels of focal length. */
const abeam: Camera = {
  ...axesOf({ azimuth: Math.PI / 2, pitch: 0, roll: 0 }),
  position: { x: 0, y: -5, z: 1 },
  focalPx: 1000,
  radial: 0,
  centre: { u: 500, v: 400 },
  image: { width: 1000, height: 800 },
};

describe('a pinhole camera', () => {
  it('sees by similar triangles', () => {
    expect(projectPoint(abeam, { x: 0.5, y: 0, z: 1 })).toEqual({ u: 600, v: 400 });
    const low = projectPoint(abeam, { x: 0, y: 0, z: 0 });
    expect(low.u).toBeCloseTo(500, 9);
    expect(low.v).toBeCloseTo(600, 9);
    expect(depthOf(abeam, { x: 3, y: 1, z: 0 })).toBeCloseTo(6, 12);
  });

  it('bends by its radial term as r(1 + k₁r²)', () => {
    const bent = projectPoint({ ...abeam, radial: 0.2 }, { x: 0.5, y: 0, z: 1 });
    expect(bent.u).toBeCloseTo(500 + 1000 * 0.1 * (1 + 0.2 * 0.01), 9);
  });

  it('never folds back where a barrel term has its greatest value', () => {
    const barrel = { ...abeam, radial: -0.5 };
    const across = [0, 1, 2, 4, 8, 16].map((x) => projectPoint(barrel, { x, y: 0, z: 1 }).u);
    expect([...across].sort((a, b) => a - b)).toEqual(across);
  });

  it('stays finite for a point behind it', () => {
    const { u, v } = projectPoint(abeam, { x: 1, y: -9, z: 0 });
    expect(Number.isFinite(u) && Number.isFinite(v)).toBe(true);
    expect(depthOf(abeam, { x: 1, y: -9, z: 0 })).toBeLessThan(0);
  });

  it('has axes square to one another, whatever way it is held', () => {
    for (const aim of [
      { azimuth: 0.4, pitch: -0.3, roll: 0.1 },
      { azimuth: -2.8, pitch: 0.7, roll: 1.4 },
      { azimuth: 3, pitch: -1.2, roll: -2 },
    ]) {
      const { right, down, forward } = axesOf(aim);
      expect(norm(right)).toBeCloseTo(1, 12);
      expect(dot(right, down)).toBeCloseTo(0, 12);
      const third = cross(right, down);
      expect(norm({ x: third.x - forward.x, y: third.y - forward.y, z: third.z - forward.z })).toBeLessThan(
        1e-12,
      );
      const again = cameraAim({ right, down, forward });
      for (const name of ['azimuth', 'pitch', 'roll'] as const)
        expect(again[name]).toBeCloseTo(aim[name], 12);
    }
  });

  it('turns and shifts by small unknowns, and keeps the corner’s bend with the focal length', () => {
    const moved = movedCamera({ ...abeam, radial: 0.1 }, [0, 0, 0.1, 1, 2, 3, Math.log(2), 0]);
    expect(cameraAim(moved).azimuth).toBeCloseTo(Math.PI / 2 + 0.1, 12);
    expect(moved.position).toEqual({ x: 1, y: -3, z: 4 });
    expect(moved.focalPx).toBeCloseTo(2000, 9);
    expect(moved.radial).toBeCloseTo(0.4, 12);
  });
});

import { describe, expect, it } from 'vitest';
import { norm, subtract } from '../../../core/frame/vec3.ts';
import { axesOf, type Camera, cameraAim, projectPoint } from '../../../core/photograph/camera.ts';
import { type SolvedCamera, solveCamera } from '../../../core/photograph/solve-camera.ts';
import { cases } from '../../cases.ts';
import { notEmpty } from '../../not-empty.ts';
import { BOAT_POINTS, IMAGE, markedBoat, randomCamera, seeded } from './synthetic-picture.ts';

/** Half a turn short of abeam, 6 m off, a lens of 50 mm. */
function sideCamera(more: Partial<Camera> = {}): Camera {
  const axes = axesOf({ azimuth: 1.3, pitch: -0.1, roll: 0.02 });
  return {
    ...axes,
    position: { x: -1.6, y: -5.8, z: 1.2 },
    focalPx: 5500,
    radial: 0,
    centre: { u: 2000, v: 1500 },
    image: IMAGE,
    ...more,
  };
}

const near = BOAT_POINTS.slice(2);
const seenBy = (camera: Camera, points = near) =>
  points.map((world) => ({ world, pixel: projectPoint(camera, world) }));

function solved(result: SolvedCamera) {
  if (result.kind !== 'solved') throw new Error(`not solved: ${result.kind}`);
  return result;
}

describe('a camera solved from points of the boat', () => {
  it('comes back exactly from exact points, with its focal length and radial term', () => {
    const camera = sideCamera({ radial: 0.05 });
    const found = solved(solveCamera({ points: seenBy(camera), image: IMAGE }));
    expect(found.model).toBe('full');
    expect(found.residualPx).toBeLessThan(0.5);
    expect(norm(subtract(found.camera.position, camera.position))).toBeLessThan(0.15);
    expect(found.camera.focalPx / camera.focalPx).toBeCloseTo(1, 1);
    expect(found.bad).toEqual([]);
  });

  it('is found however the camera was held', () => {
    for (const roll of [Math.PI / 2, Math.PI, -Math.PI / 2]) {
      const axes = axesOf({ azimuth: 1.3, pitch: -0.1, roll });
      const camera = sideCamera({ ...axes, focalPx: 3000 });
      const found = solved(solveCamera({ points: seenBy(camera), image: IMAGE }));
      expect(found.residualPx).toBeLessThan(0.5);
    }
  });

  it('is found from points in one plane, as a boat’s centreline is from the side', () => {
    const flat = BOAT_POINTS.map((p) => ({ ...p, y: 0 }));
    const camera = sideCamera({ focalPx: 3000 });
    const found = solved(solveCamera({ points: seenBy(camera, flat), image: IMAGE }));
    expect(found.residualPx).toBeLessThan(0.5);
    expect(norm(subtract(found.camera.position, camera.position))).toBeLessThan(0.5);
  });

  it('stands within its own doubt of where it stood, over random cameras', () => {
    const random = seeded(7);
    const off: number[] = [];
    for (let i = 0; i < cases(5, 120); i++) {
      const camera = randomCamera(random, { oblique: 35 });
      const points = markedBoat(camera, random);
      if (points.length < 6) continue;
      const found = solved(solveCamera({ points, image: IMAGE }));
      const variance = (k: number) => found.camera.covariance![k]![k]!;
      off.push(Math.abs(found.camera.position.x - camera.position.x) / Math.sqrt(variance(3)));
      off.push(Math.abs(Math.log(found.camera.focalPx / camera.focalPx)) / Math.sqrt(variance(6)));
    }
    expect(off.filter((z) => z < 1.96).length / off.length).toBeGreaterThan(0.88);
    expect(Math.max(...off)).toBeLessThan(6);
  });

  it('names a bad point and says by how much it lies off', () => {
    const points = seenBy(sideCamera());
    points[3] = { ...points[3]!, pixel: { u: points[3]!.pixel.u + 90, v: points[3]!.pixel.v - 40 } };
    const found = solved(solveCamera({ points, image: IMAGE }));
    expect(found.bad.map(({ index }) => index)).toEqual([3]);
    expect(found.bad[0]!.px).toBeGreaterThan(90);
    expect(found.bad[0]!.px).toBeLessThan(107);
    expect(found.bad[0]!.mm / found.bad[0]!.px).toBeCloseTo((1000 * 5.9) / found.camera.focalPx, 0);
    expect(found.residualPx).toBeLessThan(0.5);
  });

  it('is constrained from two ends of a known length: level, square, at the right scale', () => {
    const camera = sideCamera({
      ...axesOf({ azimuth: -Math.PI / 2, pitch: 0, roll: 0 }),
      position: { x: 0, y: 9, z: 0.6 },
    });
    const ends = [
      { x: 2.6, y: 0, z: 0.3 },
      { x: -2.6, y: 0, z: 0.3 },
    ];
    const found = solved(solveCamera({ points: seenBy(camera, ends), image: IMAGE }));
    expect(found.model).toBe('constrained');
    expect(found.residualPx).toBeLessThan(2);
    expect(Math.abs(cameraAim(found.camera).azimuth)).toBeCloseTo(Math.PI / 2, 1);
    // Between the ends a length is seen at its scale, whatever lens was taken.
    const up =
      projectPoint(found.camera, { x: 0, y: 0, z: 1.3 }).v -
      projectPoint(found.camera, { x: 0, y: 0, z: 0.3 }).v;
    expect(up).toBeCloseTo(-5500 / 9, -1);
  });

  it('tells port from starboard and ahead from astern by the order of two points', () => {
    const ends = [
      { x: 1, y: 0, z: 0.3 },
      { x: -1, y: 0, z: 0.3 },
    ];
    const sides = [
      { x: 0, y: 0.2, z: 0.3 },
      { x: 0, y: -0.2, z: 0.3 },
    ];
    const views = [
      { azimuth: Math.PI / 2, position: { x: 0, y: -6, z: 1 }, points: ends },
      { azimuth: -Math.PI / 2, position: { x: 0, y: 6, z: 1 }, points: ends },
      { azimuth: 0, position: { x: -6, y: 0, z: 1 }, points: sides },
      { azimuth: Math.PI, position: { x: 6, y: 0, z: 1 }, points: sides },
    ];
    for (const { azimuth, position, points } of notEmpty(views)) {
      const camera = sideCamera({ ...axesOf({ azimuth, pitch: -0.05, roll: 0 }), position });
      const found = solved(solveCamera({ points: seenBy(camera, points), image: IMAGE }));
      expect(Math.cos(cameraAim(found.camera).azimuth - azimuth)).toBeGreaterThan(0.99);
    }
  });

  it('says why it cannot be told', () => {
    const points = seenBy(sideCamera());
    const image = IMAGE;
    expect(solveCamera({ points: points.slice(0, 1), image })).toEqual({
      kind: 'tooFew',
      points: 1,
      needed: 2,
    });
    const one = points.map(() => points[0]!);
    expect(solveCamera({ points: one, image })).toEqual({ kind: 'degenerate', why: 'onePlace' });
    const line = seenBy(
      sideCamera({ focalPx: 2000 }),
      [0, 1, 2, 3, 4, 5, 6].map((i) => ({ x: i / 4, y: 0, z: 0.3 })),
    );
    expect(solveCamera({ points: line, image })).toEqual({ kind: 'degenerate', why: 'oneLine' });
    const odd = [{ ...points[0]!, pixel: { u: Number.NaN, v: 0 } }, ...points.slice(1)];
    expect(solveCamera({ points: odd, image })).toEqual({ kind: 'invalid' });
    const mixed = points.map((p, i) => ({ ...p, pixel: points[(i * 7 + 3) % points.length]!.pixel }));
    expect(solveCamera({ points: mixed, image }).kind).toBe('inconsistent');
  });
});

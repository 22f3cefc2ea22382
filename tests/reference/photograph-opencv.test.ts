import { describe, expect, it } from 'vitest';
import { dot, norm, scale, subtract, type Vec3 } from '../../core/frame/vec3.ts';
import type { Camera } from '../../core/photograph/camera.ts';
import type { MarkedPoint } from '../../core/photograph/camera-problem.ts';
import { solveCamera } from '../../core/photograph/solve-camera.ts';
import { cases } from '../cases.ts';
import { IMAGE, markedBoat, randomCamera, seeded } from '../core/photograph/synthetic-picture.ts';
import { type OpenCv, openCv } from './photograph-opencv.ts';

/**
 * Pose by `cv::solvePnP` (iterative, Levenberg–Marquardt on the reprojection error) of OpenCV 4.5 (Apache-2.0), given our focal length
 * and radial term: the same points must put the camera in the same place, looking the same way.
 */
function poseByOpenCv(cv: OpenCv, points: readonly MarkedPoint[], lens: Camera) {
  const world = cv.matFromArray(
    points.length,
    3,
    cv.CV_64F,
    points.flatMap(({ world: w }) => [w.x, w.y, w.z]),
  );
  const pixels = cv.matFromArray(
    points.length,
    2,
    cv.CV_64F,
    points.flatMap(({ pixel }) => [pixel.u, pixel.v]),
  );
  const f = lens.focalPx;
  const matrix = cv.matFromArray(3, 3, cv.CV_64F, [f, 0, lens.centre.u, 0, f, lens.centre.v, 0, 0, 1]);
  const bend = cv.matFromArray(1, 4, cv.CV_64F, [lens.radial, 0, 0, 0]);
  const [turn, shift, rotation] = [new cv.Mat(), new cv.Mat(), new cv.Mat()];
  expect(cv.solvePnP(world, pixels, matrix, bend, turn, shift, false, cv.SOLVEPNP_ITERATIVE)).toBe(true);
  cv.Rodrigues(turn, rotation);
  const r = rotation.data64F;
  const t = shift.data64F;
  const row = (i: number): Vec3 => ({ x: r[3 * i]!, y: r[3 * i + 1]!, z: r[3 * i + 2]! });
  const [right, down, forward] = [row(0), row(1), row(2)];
  const position = [right, down, forward].reduce((sum, axis, i) => subtract(sum, scale(axis, t[i]!)), {
    x: 0,
    y: 0,
    z: 0,
  });
  return { position, forward };
}

describe('the camera, against solvePnP of OpenCV', () => {
  it('stands and looks as it does there, with noisy marks', async () => {
    const cv = await openCv();
    const random = seeded(41);
    let compared = 0;
    for (let i = 0; i < cases(4, 80); i++) {
      const points = markedBoat(randomCamera(random, { oblique: 35 }), random);
      if (points.length < 6) continue;
      const ours = solveCamera({ points, image: IMAGE });
      if (ours.kind !== 'solved' || ours.bad.length > 0) continue;
      const theirs = poseByOpenCv(cv, points, ours.camera);
      const distance = norm(ours.camera.position);
      expect(norm(subtract(theirs.position, ours.camera.position)) / distance).toBeLessThan(0.002);
      expect(dot(theirs.forward, ours.camera.forward)).toBeGreaterThan(Math.cos(0.001));
      compared += 1;
    }
    expect(compared).toBeGreaterThanOrEqual(cases(3, 60));
  });
});

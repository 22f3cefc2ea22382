import { dot, type Vec3 } from '../frame/vec3.ts';
import { toRadians } from '../units/angle.ts';
import { axesOf, type Camera, type CameraAim, depthOf, type ImageSize, projectPoint } from './camera.ts';
import type { CameraProblem, MarkedPoint } from './camera-problem.ts';

/** Aims and focal lengths from which a camera is looked for, whatever way it was held. Degrees, and longer sides of the picture. */
const AZIMUTHS = Array.from({ length: 24 }, (_, i) => 15 * i);
const PITCHES = [10, -15, -45, -80];
const ROLLS = [0, 90, 180, 270];
const FOCALS = [0.7, 1.3, 2.5, 5];

/** As many of the starts are gone on from. */
const KEPT = 6;

/**
 * Cameras to begin the search from, the best first: for each aim and focal length of a grid the place that meets the points best
 * is linear, and comes from three equations. Starts are ranked by the sum of how far the points lie off (not squared: one bad
 * point does not rule). Unlike a direct linear transform it holds for points in one plane, as a boat's are from the side.
 */
export function cameraStarts({ points, image, prior }: CameraProblem): Camera[] {
  const aims = gridOf(prior.azimuth?.at, prior.pitch?.at);
  const longer = Math.max(image.width, image.height);
  const found: { camera: Camera; off: number }[] = [];
  for (const aim of aims) {
    const axes = axesOf(aim);
    for (const focal of FOCALS) {
      const camera = placed({ ...axes, focalPx: focal * longer }, points, image);
      if (camera) found.push({ camera, off: offOf(camera, points) });
    }
  }
  return found
    .sort((a, b) => a.off - b.off)
    .slice(0, KEPT)
    .map(({ camera }) => camera);
}

/** Every way a camera may be held; or, where its azimuth is taken as known, held level and aimed so. */
function gridOf(azimuth: number | undefined, pitch: number | undefined): CameraAim[] {
  if (azimuth !== undefined) return [{ azimuth, pitch: pitch ?? 0, roll: 0 }];
  const rolls = pitch === undefined ? ROLLS : [0];
  return AZIMUTHS.flatMap((a) =>
    PITCHES.flatMap((p) =>
      rolls.map((r) => ({ azimuth: toRadians(a), pitch: toRadians(p), roll: toRadians(r) })),
    ),
  );
}

/** A camera before it is put in its place. */
type Aimed = Pick<Camera, 'right' | 'down' | 'forward' | 'focalPx'>;

/** The place from which an aimed camera sees the points most nearly where they are marked; null where there is none before it. */
function placed(aimed: Aimed, points: readonly MarkedPoint[], image: ImageSize): Camera | null {
  const centre = { u: image.width / 2, v: image.height / 2 };
  const normal = [0, 0, 0, 0, 0, 0];
  const right = [0, 0, 0];
  const addRow = (row: Vec3, world: Vec3) => {
    const a = [row.x, row.y, row.z];
    const b = dot(row, world);
    for (let i = 0, at = 0; i < 3; i++) {
      right[i]! += a[i]! * b;
      for (let j = 0; j <= i; j++, at++) normal[at]! += a[i]! * a[j]!;
    }
  };
  for (const { world, pixel } of points) {
    addRow(across(aimed.right, aimed, (pixel.u - centre.u) / aimed.focalPx), world);
    addRow(across(aimed.down, aimed, (pixel.v - centre.v) / aimed.focalPx), world);
  }
  const position = solvedThree(normal, right);
  if (!position) return null;
  const camera: Camera = { ...aimed, position, radial: 0, centre, image };
  return points.every(({ world }) => depthOf(camera, world) > 0.1) ? camera : null;
}

/** The row that says a point lies at this tangent along one axis. */
function across(axis: Vec3, { forward }: Aimed, tangent: number): Vec3 {
  return {
    x: axis.x - tangent * forward.x,
    y: axis.y - tangent * forward.y,
    z: axis.z - tangent * forward.z,
  };
}

/** Solves a symmetric system of three by its determinants; lower triangle row by row. Null where it is singular. */
function solvedThree(m: readonly number[], r: readonly number[]): Vec3 | null {
  const [a, b, c, d, e, f] = m as [number, number, number, number, number, number];
  const [p, q, s] = r as [number, number, number];
  const whole = a * (c * f - e * e) - b * (b * f - e * d) + d * (b * e - c * d);
  if (!(Math.abs(whole) > 1e-9)) return null;
  return {
    x: (p * (c * f - e * e) - b * (q * f - e * s) + d * (q * e - c * s)) / whole,
    y: (a * (q * f - s * e) - p * (b * f - e * d) + d * (b * s - q * d)) / whole,
    z: (a * (c * s - e * q) - b * (b * s - q * d) + p * (b * e - c * d)) / whole,
  };
}

/** Sum of the distances between marks and where the camera sees their points, pixels. */
function offOf(camera: Camera, points: readonly MarkedPoint[]): number {
  let sum = 0;
  for (const { world, pixel } of points) {
    const seen = projectPoint(camera, world);
    sum += Math.hypot(seen.u - pixel.u, seen.v - pixel.v);
  }
  return sum;
}

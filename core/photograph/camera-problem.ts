import type { Vec3 } from '../frame/vec3.ts';
import { type Minimum, minimise } from '../posture/minimise.ts';
import {
  CAMERA_UNKNOWNS,
  type Camera,
  type CameraAim,
  cameraAim,
  cornerSquare,
  type ImageSize,
  movedCamera,
  type Pixel,
  projectPoint,
} from './camera.ts';
import { byDifferences, cauchyFactor, covarianceAt, type Residuals } from './differences.ts';

/** A point of the boat (metres, boat frame) and where it is seen in the picture. */
export interface MarkedPoint {
  /** Boat frame, metres. */
  readonly world: Vec3;
  /** As the person set it. */
  readonly pixel: Pixel;
}

/** A value that is expected, and by how much it may differ: one standard deviation. */
export interface Expected {
  /** Expected value, in its own unit. */
  readonly at: number;
  /** One standard deviation, same unit. */
  readonly sd: number;
}

/** Assumptions about a camera before anything is marked. Angles in radians; left out where nothing is assumed. */
export interface CameraPrior {
  /** Natural logarithm of the focal length over the longer side of the picture. */
  readonly logFocal: Expected;
  /** Share by which the radial term moves the corner of the picture. */
  readonly corner: Expected;
  /** Which way it looks, from forward toward port. */
  readonly azimuth?: Expected;
  /** How far it looks up. */
  readonly pitch?: Expected;
  /** How far the picture is turned clockwise. */
  readonly roll?: Expected;
}

/** A camera to be solved: points, and what is assumed of the camera. `sdPx` is the standard deviation of a mark, pixels. */
export interface CameraProblem {
  /** What was marked, in the order in which residuals name it. */
  readonly points: readonly MarkedPoint[];
  readonly image: ImageSize;
  /** Keeps the camera realistic where there are few points. */
  readonly prior: CameraPrior;
  readonly sdPx: number;
}

/** A camera and how well it meets its problem. */
export interface CameraFit {
  readonly camera: Camera;
  /** What the search for it brought down, in squared spreads: less is better. */
  readonly cost: number;
}

/** Focal length, radial term and the three angles. */
const PRIOR_TERMS = 5;
/** A point that lies farther off than this many spreads pulls less and less (Cauchy's loss). */
const ROBUST_AT = 3;
/** Turns, metres and logarithms beyond which no camera is looked for. */
const FARTHEST = 400;
/** A step under this ends the search: radians, metres, logarithms. */
const LEAST_STEP = 1e-6;

/** Number of terms: two for each point, then those of the prior. */
export function termsOf({ points }: CameraProblem): number {
  return 2 * points.length + PRIOR_TERMS;
}

/**
 * Residuals of a problem about a start, in standard deviations. With `robust`, gross errors count less: their square is
 * replaced by Cauchy's loss, shared between u and v.
 */
export function cameraResiduals(problem: CameraProblem, start: Camera, robust: boolean): Residuals {
  const { points, sdPx, prior, image } = problem;
  return (q, into) => {
    const camera = movedCamera(start, q);
    points.forEach(({ world, pixel }, i) => {
      const seen = projectPoint(camera, world);
      const across = (seen.u - pixel.u) / sdPx;
      const down = (seen.v - pixel.v) / sdPx;
      const share = robust ? cauchyFactor(Math.hypot(across, down) / ROBUST_AT) : 1;
      into[2 * i] = across * share;
      into[2 * i + 1] = down * share;
    });
    writePrior(camera, { prior, image }, into.subarray(2 * points.length));
  };
}

/** How far a camera lies from its prior, in standard deviations; 0 where nothing is assumed. */
function writePrior(
  camera: Camera,
  { prior, image }: Pick<CameraProblem, 'prior' | 'image'>,
  into: Float64Array,
): void {
  const aim = cameraAim(camera);
  const longer = Math.max(image.width, image.height);
  const off = (expected: Expected | undefined, value: number) =>
    expected ? (value - expected.at) / expected.sd : 0;
  const offAngle = (name: keyof CameraAim) =>
    prior[name] ? wrapped(aim[name] - prior[name].at) / prior[name].sd : 0;
  into[0] = off(prior.logFocal, Math.log(camera.focalPx / longer));
  into[1] = off(prior.corner, camera.radial * cornerSquare(image, camera.focalPx));
  into[2] = offAngle('azimuth');
  into[3] = offAngle('pitch');
  into[4] = offAngle('roll');
}

/** An angle as it lies between −π and π. */
const wrapped = (angle: number) => Math.atan2(Math.sin(angle), Math.cos(angle));

/** The camera that meets a problem best, from a start (Levenberg–Marquardt). */
export function leastSquaresCamera(problem: CameraProblem, start: Camera, robust: boolean): CameraFit {
  const residuals = cameraResiduals(problem, start, robust);
  const least: Minimum = minimise(byDifferences(residuals, termsOf(problem)), {
    start: CAMERA_UNKNOWNS.map(() => 0),
    farthest: FARTHEST,
    leastStep: LEAST_STEP,
  });
  return { camera: movedCamera(start, least.q), cost: least.cost };
}

/** The camera with the covariance that its points and its prior leave; marks' spreads are multiplied by `scale`. */
export function withCovariance(problem: CameraProblem, camera: Camera, scale: number): Camera {
  const n = CAMERA_UNKNOWNS.length;
  const widened = { ...problem, sdPx: problem.sdPx * scale };
  const residuals = cameraResiduals(widened, camera, false);
  const flat = covarianceAt(residuals, new Float64Array(n), termsOf(widened));
  const covariance = CAMERA_UNKNOWNS.map((_, i) => Array.from(flat.subarray(i * n, (i + 1) * n)));
  return { ...camera, covariance };
}

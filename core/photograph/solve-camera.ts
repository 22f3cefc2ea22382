import { cross, norm, scale, subtract } from '../frame/vec3.ts';
import { toRadians } from '../units/angle.ts';
import { type Camera, depthOf, type ImageSize, projectPoint } from './camera.ts';
import {
  type CameraFit,
  type CameraPrior,
  type CameraProblem,
  leastSquaresCamera,
  type MarkedPoint,
  withCovariance,
} from './camera-problem.ts';
import { cameraStarts } from './camera-starts.ts';

/** How far one marked point lies from where the camera sees it: pixels, and millimetres at its distance. */
export interface PointResidual {
  /** Its place in the list of points. */
  readonly index: number;
  /** Distance in the picture. */
  readonly px: number;
  /** The same at the point's distance from the camera. */
  readonly mm: number;
}

/** Where a camera stood, or why that cannot be told. */
export type SolvedCamera =
  | {
      readonly kind: 'solved';
      readonly camera: Camera;
      /** Root mean square over the points that count, pixels and millimetres. */
      readonly residualPx: number;
      readonly residualMm: number;
      /** `full` from six points on; `constrained` where a level horizon and a square view had to be taken. */
      readonly model: 'full' | 'constrained';
      /** Of every point, in the order given. */
      readonly residuals: readonly PointResidual[];
      /** Points that do not agree with the others, the worst first; they do not count. */
      readonly bad: readonly PointResidual[];
    }
  /** Fewer than two points. */
  | { readonly kind: 'tooFew'; readonly points: number; readonly needed: number }
  /** The points lie on one another, in the boat or in the picture; or six and more lie on one line. */
  | { readonly kind: 'degenerate'; readonly why: 'onePlace' | 'oneLine' }
  /** A coordinate is no finite number, or the picture has no size. */
  | { readonly kind: 'invalid' }
  /** No camera sees the points so: `residualPx` is the best that was found. */
  | { readonly kind: 'inconsistent'; readonly residualPx: number };

/** What `solveCamera` is given: points in metres (boat frame) and pixels. */
export interface CameraInput {
  /** At least two. */
  readonly points: readonly MarkedPoint[];
  readonly image: ImageSize;
  /** How truly a point is marked, one standard deviation, pixels; 3 unless said otherwise. */
  readonly sdPx?: number;
}

/** Spread of a mark set by hand with a magnifier, pixels (estimate). */
export const MARK_SD_PX = 3;
/** From this many points on nothing is taken of the way the camera was held. */
const FULL_FROM = 6;
/** Fewer points tell no camera. */
const LEAST_POINTS = 2;
/** Points nearer to one another than this count as one place: metres, and share of the picture's diagonal. */
const ONE_PLACE_M = 0.02;
/** Share of the picture's diagonal. */
const ONE_PLACE_SHARE = 0.005;
/** Points nearer to a line than this share of their extent lie on it. */
const ONE_LINE_SHARE = 0.01;
/**
 * Squared distance from the place that the others predict, in spreads, past which a point is bad: one in a thousand of good
 * ones.
 */
const BAD_POINT = 13.8;
/** As many points are tried as the bad one. */
const SUSPECTS = 5;
/** A cost over this many times the expected one has the search begin again from its grid. */
const FAR_OFF = 4;
/** One point in so many may be bad; at least one, where it leaves enough. */
const BAD_SHARE = 5;
/** A root mean square over this share of the diagonal is no picture of these points. */
const NO_PICTURE_SHARE = 0.03;
/** How many good residuals the spread given is worth, when it is held against what is found. */
const SPREAD_WORTH = 8;

/**
 * Where a camera stood and how it looked, from points of the boat marked in a picture. Six and more give the whole pinhole
 * camera with its focal length and one radial term; two to five a constrained one, for which a level horizon and a view square to
 * the boat are taken as likely. Levenberg–Marquardt from a grid of starts. A point that disagrees with the others is left out and
 * named, up to one in five. The camera carries its covariance. Pixels, metres of the boat frame; expected failures are kinds.
 */
export function solveCamera(input: CameraInput): SolvedCamera {
  const { points, image, sdPx = MARK_SD_PX } = input;
  const failure = failureOf(points, image);
  if (failure) return failure;
  const problem: CameraProblem = { points, image, sdPx, prior: priorOf(points) };
  const { fit, left } = withoutBad(problem);
  if (!fit) return { kind: 'inconsistent', residualPx: Number.POSITIVE_INFINITY };
  const residuals = points.map((point, index) => residualOf(fit.camera, point, index));
  const good = residuals.filter(({ index }) => !left.includes(index));
  const residualPx = rms(good.map(({ px }) => px));
  if (residualPx > NO_PICTURE_SHARE * Math.hypot(image.width, image.height))
    return { kind: 'inconsistent', residualPx };
  const kept = { ...problem, points: points.filter((_, i) => !left.includes(i)) };
  return {
    kind: 'solved',
    camera: withCovariance(kept, fit.camera, spreadScale(kept, fit.camera)),
    residualPx,
    residualMm: rms(good.map(({ mm }) => mm)),
    model: points.length < FULL_FROM ? 'constrained' : 'full',
    residuals,
    bad: left.map((i) => residuals[i]!).sort((a, b) => b.px - a.px),
  };
}

/** Why a camera cannot be told from these points before it is tried; null where it may be. */
function failureOf(points: readonly MarkedPoint[], image: ImageSize): SolvedCamera | null {
  if (points.length < LEAST_POINTS) return { kind: 'tooFew', points: points.length, needed: LEAST_POINTS };
  const numbers = [
    image.width,
    image.height,
    ...points.flatMap(({ world: w, pixel: p }) => [w.x, w.y, w.z, p.u, p.v]),
  ];
  if (!numbers.every(Number.isFinite) || image.width <= 0 || image.height <= 0) return { kind: 'invalid' };
  const diagonal = Math.hypot(image.width, image.height);
  const first = points[0]!;
  const apartM = Math.max(...points.map(({ world }) => norm(subtract(world, first.world))));
  const apartPx = Math.max(
    ...points.map(({ pixel: p }) => Math.hypot(p.u - first.pixel.u, p.v - first.pixel.v)),
  );
  if (apartM < ONE_PLACE_M || apartPx < ONE_PLACE_SHARE * diagonal)
    return { kind: 'degenerate', why: 'onePlace' };
  if (points.length >= FULL_FROM && onOneLine(points)) return { kind: 'degenerate', why: 'oneLine' };
  return null;
}

/** Whether all points lie on one line in the boat: the camera may then turn about it. */
function onOneLine(points: readonly MarkedPoint[]): boolean {
  const first = points[0]!.world;
  const directions = points.map(({ world }) => subtract(world, first));
  const longest = directions.reduce((a, b) => (norm(b) > norm(a) ? b : a));
  const extent = norm(longest);
  const unit = scale(longest, 1 / extent);
  return directions.every((direction) => norm(cross(direction, unit)) < ONE_LINE_SHARE * extent);
}

/**
 * What is taken of a camera. Any lens between 24 and 200 mm (on 36 mm), barrel or cushion of a few hundredths at the corner. With
 * few points also a picture held level, looking a little down, and nearly square to the boat; with two, squarer still (estimates).
 */
function priorOf(points: readonly MarkedPoint[]): CameraPrior {
  const few = points.length < FULL_FROM;
  const lens = {
    logFocal: few ? { at: Math.log(1.2), sd: 0.5 } : { at: Math.log(1.9), sd: 0.9 },
    corner: { at: 0, sd: few ? 0.005 : 0.04 },
  };
  if (!few) return lens;
  const sd = toRadians(points.length === 2 ? 6 : 15);
  return {
    ...lens,
    azimuth: { at: squareTo(points), sd },
    pitch: { at: toRadians(-5), sd: toRadians(points.length === 2 ? 5 : 10) },
    roll: { at: 0, sd: toRadians(4) },
  };
}

/** Azimuth of the view square to the boat that the two points farthest apart in the picture were taken from, radians. */
function squareTo(points: readonly MarkedPoint[]): number {
  let best = { u: 0, x: 0, y: 0 };
  for (const a of points)
    for (const b of points) {
      const u = b.pixel.u - a.pixel.u;
      if (u > best.u) best = { u, x: b.world.x - a.world.x, y: b.world.y - a.world.y };
    }
  // The camera's right is the way that u grows: forward seen from starboard, aft from port, starboard from behind.
  const alongBoat = Math.abs(best.x) >= Math.abs(best.y);
  if (alongBoat) return best.x >= 0 ? Math.PI / 2 : -Math.PI / 2;
  return best.y <= 0 ? 0 : Math.PI;
}

/** The best camera from all starts; null where none sees the points before it. */
function bestFit(problem: CameraProblem, starts: readonly Camera[], robust: boolean): CameraFit | null {
  let best: CameraFit | null = null;
  for (const start of starts) {
    const fit = leastSquaresCamera(problem, start, robust);
    if (problem.points.some(({ world }) => depthOf(fit.camera, world) <= 0)) continue;
    if (!best || fit.cost < best.cost) best = fit;
  }
  return best;
}

/**
 * Leaves out one bad point after the other: that without which the rest agrees best, as long as it is much better. Looked for among
 * those that lie farthest off for the robust camera.
 */
function withoutBad(problem: CameraProblem): { fit: CameraFit | null; left: number[] } {
  const robust = bestFit(problem, cameraStarts(problem), true);
  const left: number[] = [];
  if (!robust) return { fit: null, left };
  let fit = leastSquaresCamera(problem, robust.camera, false);
  const most = problem.points.length < 4 ? 0 : Math.max(1, Math.floor(problem.points.length / BAD_SHARE));
  while (left.length < most && fit.cost > BAD_POINT) {
    const starts = [fit.camera, robust.camera];
    const tried = farthestOff(problem, robust.camera, left).map((index) => {
      const rest = withoutPoints(problem, [...left, index]);
      return { index, rest, fit: fitFrom(rest, starts) };
    });
    const best = tried.reduce((a, b) => (costOf(b.fit) < costOf(a.fit) ? b : a));
    if (!best.fit) break;
    if ((fit.cost - best.fit.cost) / spreadScale(best.rest, best.fit.camera) ** 2 < BAD_POINT) break;
    left.push(best.index);
    fit = best.fit;
  }
  return { fit, left };
}

/** Infinite where there is no camera. */
const costOf = (fit: CameraFit | null) => fit?.cost ?? Number.POSITIVE_INFINITY;

/** Places in the list of the points farthest off, `SUSPECTS` of them, less those left out already. */
function farthestOff({ points }: CameraProblem, camera: Camera, left: readonly number[]): number[] {
  return points
    .map((point, index) => residualOf(camera, point, index))
    .filter(({ index }) => !left.includes(index))
    .sort((a, b) => b.px - a.px)
    .slice(0, SUSPECTS)
    .map(({ index }) => index);
}

/** The problem without some of its points. */
function withoutPoints(problem: CameraProblem, left: readonly number[]): CameraProblem {
  return { ...problem, points: problem.points.filter((_, i) => !left.includes(i)) };
}

/** The best camera from what is known; where even that lies far off, from the whole grid as well. */
function fitFrom(problem: CameraProblem, starts: readonly Camera[]): CameraFit | null {
  const near = bestFit(problem, starts, false);
  const expected = FAR_OFF * 2 * problem.points.length;
  if (near && near.cost < expected) return near;
  const robust = bestFit(problem, cameraStarts(problem).slice(0, 2), true);
  return bestFit(problem, robust ? [robust.camera, ...starts] : starts, false);
}

/** How many times the spread given the residuals are, held against it as `SPREAD_WORTH` good ones: never under a half. */
function spreadScale({ points, sdPx }: CameraProblem, camera: Camera): number {
  const squares = points.reduce((sum, point, i) => sum + (residualOf(camera, point, i).px / sdPx) ** 2, 0);
  const free = Math.max(0, 2 * points.length - 8);
  return Math.max(0.5, Math.sqrt((SPREAD_WORTH + squares) / (SPREAD_WORTH + free)));
}

/** How far one point lies off, in the picture and at its distance. */
function residualOf(camera: Camera, { world, pixel }: MarkedPoint, index: number): PointResidual {
  const seen = projectPoint(camera, world);
  const px = Math.hypot(seen.u - pixel.u, seen.v - pixel.v);
  return { index, px, mm: (1000 * px * Math.max(0, depthOf(camera, world))) / camera.focalPx };
}

/** Root mean square. */
const rms = (values: readonly number[]) =>
  Math.sqrt(values.reduce((sum, v) => sum + v * v, 0) / Math.max(1, values.length));

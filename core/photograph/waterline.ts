import { dot, scale, type Vec3 } from '../frame/vec3.ts';
import type { Radians } from '../units/angle.ts';
import { CAMERA_UNKNOWNS, type Camera, movedCamera, type Pixel } from './camera.ts';
import { differenceSlopes } from './differences.ts';
import { MARK_SD_PX } from './solve-camera.ts';

/** Where the water meets both ends of the boat: told in a picture, and no ruler, for nobody knows them before. */
export const WATER_MARKS = ['waterBow', 'waterStern'] as const;
/** Where the water meets an end of the boat. */
export type WaterMark = (typeof WATER_MARKS)[number];

/** How a boat was seen to float. */
export interface SeenWaterline {
  /** Positive bow up, radians. */
  readonly trim: Radians;
  /** One standard deviation, radians. */
  readonly trimSd: Radians;
  /** The water over the lowest point of the keel line amidships, metres. */
  readonly draft: number;
  /** One standard deviation, metres. */
  readonly draftSd: number;
}

/** A ray that meets the centre plane under a smaller sine than this tells nothing of it. */
const LEAST_SINE = 0.2;
/** The ripple at the stem: how far the water there stands off the plane, metres (estimate). */
const RIPPLE_SD_M = 0.01;
/** Rounds in which the radial term is taken out of a pixel. */
const ROUNDS = 8;

/**
 * Trim and draft from marks where the water meets bow and stern, with the doubt of marks, ripple and camera. The marks lie in the
 * boat's centre plane. Null from too near to ahead or astern, where that plane is seen edge on, or with a mark missing.
 */
export function seenWaterline(
  camera: Camera,
  marks: Readonly<Partial<Record<WaterMark, Pixel | undefined>>>,
): SeenWaterline | null {
  const { waterBow, waterStern } = marks;
  if (!waterBow || !waterStern) return null;
  const read = (by: ArrayLike<number>): { trim: number; draft: number } | null => {
    const moved = movedCamera(camera, by);
    const off = (pixel: Pixel, at: number) => ({ u: pixel.u + by[at]!, v: pixel.v + by[at + 1]! });
    const bow = inCentrePlane(moved, off(waterBow, N));
    const stern = inCentrePlane(moved, off(waterStern, N + 2));
    return (
      bow && stern && lineThrough({ ...bow, z: bow.z + by[N + 4]! }, { ...stern, z: stern.z + by[N + 5]! })
    );
  };
  const here = read(new Float64Array(N + 6));
  if (!here) return null;
  const slopes = differenceSlopes(
    (by, into) => {
      const { trim, draft } = read(by) ?? here;
      into.set([trim, draft]);
    },
    new Float64Array(N + 6),
    { terms: 2 },
  );
  const [trimSd, draftSd] = [0, 1].map((term) => spreadOf(camera, (i) => slopes[2 * i + term]!)) as [
    number,
    number,
  ];
  return { ...here, trimSd, draftSd };
}

/** Unknowns of a camera. */
const N = CAMERA_UNKNOWNS.length;

/** Spread of a value with these slopes along the camera's unknowns, two marks (u, v) and two ripples. */
function spreadOf({ covariance }: Camera, slope: (i: number) => number): number {
  let variance = 0;
  covariance?.forEach((row, i) => {
    row.forEach((value, j) => {
      variance += slope(i) * value * slope(j);
    });
  });
  for (let i = N; i < N + 4; i++) variance += (slope(i) * MARK_SD_PX) ** 2;
  for (let i = N + 4; i < N + 6; i++) variance += (slope(i) * RIPPLE_SD_M) ** 2;
  return Math.sqrt(Math.max(0, variance));
}

/**
 * Trim and draft of the water through two places on the hull; null where bow and stern are the wrong way round.
 */
function lineThrough(bow: Vec3, stern: Vec3): { trim: number; draft: number } | null {
  const length = bow.x - stern.x;
  if (!(length > 0)) return null;
  const slope = (stern.z - bow.z) / length;
  return { trim: Math.atan(slope), draft: bow.z + slope * bow.x };
}

/** Where the ray of a pixel meets the plane y = 0; null where it hardly does, or behind the camera. */
function inCentrePlane(camera: Camera, pixel: Pixel): Vec3 | null {
  const direction = rayOf(camera, pixel);
  if (Math.abs(direction.y) < LEAST_SINE * Math.sqrt(dot(direction, direction))) return null;
  const reach = -camera.position.y / direction.y;
  if (reach <= 0) return null;
  const { x, y, z } = scale(direction, reach);
  return { x: camera.position.x + x, y: camera.position.y + y, z: camera.position.z + z };
}

/** The way in which a camera looks at a pixel: the inverse of `projectPoint`, the radial term taken out step by step. */
function rayOf({ right, down, forward, focalPx, centre, radial }: Camera, { u, v }: Pixel): Vec3 {
  const bent = { x: (u - centre.u) / focalPx, y: (v - centre.v) / focalPx };
  let { x, y } = bent;
  for (let i = 0; i < ROUNDS; i++) {
    const bend = 1 + radial * (x * x + y * y);
    [x, y] = [bent.x / bend, bent.y / bend];
  }
  return {
    x: forward.x + x * right.x + y * down.x,
    y: forward.y + x * right.y + y * down.y,
    z: forward.z + x * right.z + y * down.z,
  };
}

import { add, cross, dot, norm, plus, scale, subtract, type Vec3 } from '../frame/vec3.ts';

/** A place in a picture, pixels: u to the right, v down, from the upper left corner. */
export interface Pixel {
  /** To the right. */
  readonly u: number;
  /** Down. */
  readonly v: number;
}

/** Size of a picture, pixels. */
export interface ImageSize {
  /** To the right. */
  readonly width: number;
  /** Down. */
  readonly height: number;
}

/**
 * A pinhole camera with one radial term, in the boat frame (metres). `right`, `down` and `forward` are unit vectors, square to
 * one another: the picture's two axes and the way that the camera looks.
 */
export interface Camera {
  /** Where its pinhole is. */
  readonly position: Vec3;
  /** To the right in the picture. */
  readonly right: Vec3;
  /** Down in the picture. */
  readonly down: Vec3;
  /** Away from the camera, along its axis. */
  readonly forward: Vec3;
  /** Focal length in pixels. A lens of 50 mm on a frame 36 mm wide has 1.39 widths of the picture. */
  readonly focalPx: number;
  /** k₁ of the radial term: a point at r (tangent of the angle off the axis) is seen at r(1 + k₁r²). */
  readonly radial: number;
  /** Where the axis meets the picture. */
  readonly centre: Pixel;
  /** The picture that its pixels count in. */
  readonly image: ImageSize;
  /** How surely the camera is known: covariance of its `CAMERA_UNKNOWNS`. Without it the camera counts as exact. */
  readonly covariance?: readonly (readonly number[])[];
}

/**
 * What a camera is solved for: a small turn about the boat's axes (radians), a shift (metres), the logarithm of the focal
 * length, and the radial term as the share by which the corner of the picture is moved.
 */
export const CAMERA_UNKNOWNS = ['turnX', 'turnY', 'turnZ', 'x', 'y', 'z', 'logFocal', 'corner'] as const;

/** Nearest depth that a point is projected from, metres: what lies behind the camera falls far outside the picture. */
const NEAREST = 1e-3;

/**
 * Where a camera sees a point of the boat frame (metres), pixels. Always finite: a point in or behind the camera's plane is
 * taken as 1 mm before it and falls far outside the picture (`depthOf` tells). The radial term stops growing where it would
 * turn back on itself.
 */
export function projectPoint(camera: Camera, world: Vec3): Pixel {
  const direction = subtract(world, camera.position);
  const depth = Math.max(NEAREST, dot(direction, camera.forward));
  const x = dot(direction, camera.right) / depth;
  const y = dot(direction, camera.down) / depth;
  const bend = radialFactor(camera.radial, x * x + y * y);
  return { u: camera.centre.u + camera.focalPx * bend * x, v: camera.centre.v + camera.focalPx * bend * y };
}

/** 1 + k₁r², for r up to where r(1 + k₁r²) has its greatest value. */
function radialFactor(k: number, square: number): number {
  return 1 + k * (k < 0 ? Math.min(square, -1 / (3 * k)) : square);
}

/** How far before the camera a point lies along its axis, metres; negative behind it. */
export function depthOf({ position, forward }: Camera, world: Vec3): number {
  return dot(subtract(world, position), forward);
}

/** A camera moved by its `CAMERA_UNKNOWNS`. Its covariance stays behind. */
export function movedCamera(camera: Camera, by: ArrayLike<number>): Camera {
  const turn = { x: by[0]!, y: by[1]!, z: by[2]! };
  const turned = (axis: Vec3) => rotated(axis, turn);
  const focalPx = camera.focalPx * Math.exp(by[6]!);
  const corner = camera.radial * cornerSquare(camera.image, camera.focalPx) + by[7]!;
  return {
    position: add(camera.position, { x: by[3]!, y: by[4]!, z: by[5]! }),
    right: turned(camera.right),
    down: turned(camera.down),
    forward: turned(camera.forward),
    focalPx,
    radial: corner / cornerSquare(camera.image, focalPx),
    centre: camera.centre,
    image: camera.image,
  };
}

/** r² at the corner of the picture. */
export function cornerSquare({ width, height }: ImageSize, focalPx: number): number {
  return (width ** 2 + height ** 2) / (4 * focalPx ** 2);
}

/** A vector turned about `turn` by its length, radians: the formula of Rodrigues. */
function rotated(vector: Vec3, turn: Vec3): Vec3 {
  const angle = norm(turn);
  if (angle < 1e-15) return vector;
  const axis = scale(turn, 1 / angle);
  const along = scale(axis, dot(axis, vector) * (1 - Math.cos(angle)));
  return plus(plus(along, Math.cos(angle), vector), Math.sin(angle), cross(axis, vector));
}

/** Which way a camera looks: `azimuth` of its axis from forward toward port, `pitch` of it above the level, `roll` clockwise. */
export interface CameraAim {
  /** 0 looks forward along the boat, a quarter turn to port. */
  readonly azimuth: number;
  /** Negative looks down. */
  readonly pitch: number;
  /** Turn about the camera's own axis. */
  readonly roll: number;
}

/** The axes of a camera that is aimed so, radians. Aimed to port without pitch and roll, its right is the boat's forward. */
export function axesOf({ azimuth, pitch, roll }: CameraAim): Pick<Camera, 'right' | 'down' | 'forward'> {
  const forward = {
    x: Math.cos(azimuth) * Math.cos(pitch),
    y: Math.sin(azimuth) * Math.cos(pitch),
    z: Math.sin(pitch),
  };
  const level = { x: Math.sin(azimuth), y: -Math.cos(azimuth), z: 0 };
  const down = cross(forward, level);
  return {
    right: plus(scale(level, Math.cos(roll)), Math.sin(roll), down),
    down: plus(scale(down, Math.cos(roll)), -Math.sin(roll), level),
    forward,
  };
}

/** How a camera is aimed, radians: the inverse of `axesOf`. */
export function cameraAim({ right, down, forward }: Pick<Camera, 'right' | 'down' | 'forward'>): CameraAim {
  const azimuth = Math.atan2(forward.y, forward.x);
  const pitch = Math.asin(Math.max(-1, Math.min(1, forward.z)));
  return { azimuth, pitch, roll: Math.atan2(-right.z, -down.z) };
}

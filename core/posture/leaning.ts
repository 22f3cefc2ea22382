import { dot, plus, scale, type Vec3 } from '../frame/vec3.ts';

/** A unit vector that leans, and how it changes with its pitch and with its roll (per radian). */
export interface Leaning {
  readonly up: Vec3;
  readonly byPitch: Vec3;
  readonly byRoll: Vec3;
}

/** Keeps a direction lying flat both ways from dividing by nothing. */
const LEAST = 1e-12;

/**
 * The unit vector whose side view leans forward by `pitch` and whose view from behind leans toward +y by `roll`, radians:
 * (tan pitch, tan roll, 1) made a unit vector, written so that it holds past the level too. (0, 0) is straight up.
 */
export function leaning(pitch: number, roll: number): Leaning {
  const sinP = Math.sin(pitch);
  const cosP = Math.cos(pitch);
  const sinR = Math.sin(roll);
  const cosR = Math.cos(roll);
  const way = { x: sinP * cosR, y: cosP * sinR, z: cosP * cosR };
  const length = Math.sqrt(dot(way, way) + LEAST);
  const up = scale(way, 1 / length);
  const slope = (change: Vec3) => scale(plus(change, -dot(up, change), up), 1 / length);
  return {
    up,
    byPitch: slope({ x: cosP * cosR, y: -sinP * sinR, z: -sinP * cosR }),
    byRoll: slope({ x: -sinP * sinR, y: cosP * cosR, z: -cosP * sinR }),
  };
}

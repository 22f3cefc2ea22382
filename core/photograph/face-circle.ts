import type { FigurePoint } from '../posture/stance.ts';
import type { Pixel } from './camera.ts';

/** A circle in a picture, pixels. */
export interface FaceCircle {
  /** Middle of the head. */
  readonly centre: Pixel;
  /** Pixels. */
  readonly radius: number;
}

/** From mid-shoulder to the crown: where the middle of the head lies, and its radius with some room, shares of that way (estimates). */
const MIDDLE_SHARE = 0.68;
const RADIUS_SHARE = 0.52;

/**
 * The circle that covers a head in a picture, from the marks of the base of the neck and the top of the head, pixels. Null where one
 * is not marked.
 */
export function faceCircle(
  joints: Readonly<Partial<Record<FigurePoint, Pixel | undefined>>>,
): FaceCircle | null {
  const { midShoulder, headTop } = joints;
  if (!midShoulder || !headTop) return null;
  const [across, down] = [headTop.u - midShoulder.u, headTop.v - midShoulder.v];
  return {
    centre: { u: midShoulder.u + MIDDLE_SHARE * across, v: midShoulder.v + MIDDLE_SHARE * down },
    radius: RADIUS_SHARE * Math.hypot(across, down),
  };
}

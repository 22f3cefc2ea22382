import type { BoatPoint } from '../frame/vec3.ts';
import type { WaterPlane } from '../hull/water-plane.ts';
import type { Attitude } from './afloat.ts';

/** Trim and heel must stay below this, radians (85°): the water plane is given by its height over the boat's floor. */
export const STEEPEST = (85 * Math.PI) / 180;

/** Whether an attitude is finite and less steep than `STEEPEST`. */
export function isAttitude({ draft, trim, heel }: Attitude): boolean {
  return Number.isFinite(draft) && Math.abs(trim) <= STEEPEST && Math.abs(heel) <= STEEPEST;
}

/** The water plane of an attitude: z = draft − x·tan(trim) − y·tan(heel). */
export function waterPlane({ draft, trim, heel }: Attitude): WaterPlane {
  return { draft, alongSlope: Math.tan(trim), acrossSlope: Math.tan(heel) };
}

/** Height of a point of the boat frame above the water, metres, measured plumb; negative below it. */
export function heightAboveWater(point: BoatPoint, attitude: Attitude): number {
  const { draft, alongSlope: k, acrossSlope: t } = waterPlane(attitude);
  return (point.z - draft + k * point.x + t * point.y) / Math.hypot(1, k, t);
}

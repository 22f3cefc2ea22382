import type { Vec3 } from '../../../core/frame/vec3.ts';
import type { InPlan } from '../../../core/support/support-triangle.ts';
import type { ScreenPoint } from './screen-point.ts';

/** Corners in plan (metres, boat frame) as they stand on the screen. */
export function supportRing(corners: readonly InPlan[], to: (p: Vec3) => ScreenPoint): ScreenPoint[] {
  return corners.map(({ x, y }) => to({ x, y, z: 0 }));
}

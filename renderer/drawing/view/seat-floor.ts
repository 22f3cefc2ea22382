import { floorHeightAt } from '../../../core/parts/floor-height.ts';
import type { Scene } from './scene.ts';

/** Height of the floorboard at the mark of the seat that is looked at, metres, boat frame. */
export function seatFloor({ picture: { fit }, seat }: Pick<Scene, 'picture' | 'seat'>): number {
  return floorHeightAt(fit.boat.floorboard, fit.boat.seats[seat]?.stationM ?? 0);
}

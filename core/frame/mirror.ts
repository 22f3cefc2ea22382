import type { BoatPoint, PaddlerPoint } from './vec3.ts';

/** A side of the boat, facing forward: left is port. */
export type Side = 'left' | 'right';

/** Sign of y in the boat frame for a side: left (port) is +1, right (starboard) is −1. */
export function sideSign(side: Side): 1 | -1 {
  return side === 'left' ? 1 : -1;
}

/** The other side. */
export function otherSide(side: Side): Side {
  return side === 'left' ? 'right' : 'left';
}

/** Position of a paddler's frame in the boat. */
export interface SeatFrame {
  /** x of the seat's datum in the boat frame, metres. */
  readonly stationX: number;
  /** z of the floorboard's top in the boat frame, metres. */
  readonly floorZ: number;
  /** The kneeling side; y of the paddler's frame points there. */
  readonly side: Side;
}

/** A paddler-frame point in the boat frame, both in metres. Exact mirror for the other side. */
export function toBoatFrame(point: PaddlerPoint, seat: SeatFrame): BoatPoint {
  return {
    x: point.x + seat.stationX,
    y: point.y * sideSign(seat.side),
    z: point.z + seat.floorZ,
  };
}

/** The inverse of `toBoatFrame`. */
export function toPaddlerFrame(point: BoatPoint, seat: SeatFrame): PaddlerPoint {
  return {
    x: point.x - seat.stationX,
    y: point.y * sideSign(seat.side),
    z: point.z - seat.floorZ,
  };
}

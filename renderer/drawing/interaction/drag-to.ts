import { COORDINATES, type FittingCoordinate } from '../../../core/document/coordinates.ts';
import { coordinateOf } from '../../../core/document/fitting-coordinate.ts';
import { sideSign } from '../../../core/frame/mirror.ts';
import { dot, norm, subtract, type Vec3 } from '../../../core/frame/vec3.ts';
import { toDegrees } from '../../../core/units/angle.ts';
import { type Grip, HANDLES } from '../view/handle.ts';
import { bearingPoint, type SeatPlace } from '../view/handle-places.ts';
import type { ViewName } from '../view/view-geometry.ts';

/** Values that a drag asks for, before limits and holes, in each coordinate's own unit (metres or degrees). */
export type WantedCoordinates = Partial<Record<FittingCoordinate, number>>;

/** If less than this share of its length is seen, a shaft points at the viewer and the grip cannot slide along it. */
const LEAST_SEEN = 0.2;

/**
 * The values that a drag asks for. `from` and `to` are the points of the boat under the pointer at the start and now (along
 * the view's line of sight they agree); the fitting follows by the difference, so that it never jumps to the pointer.
 */
export function wantedBy(
  grip: Grip,
  start: SeatPlace,
  { from, to }: { from: Vec3; to: Vec3 },
): WantedCoordinates {
  const { motion } = HANDLES[grip.handle];
  if (motion === 'turn') return turned(grip, start, { from, to });
  if (motion === 'shaft') return slid(grip.view, start, subtract(to, from));
  const asked: WantedCoordinates = {};
  const moved = subtract(to, from);
  for (const coordinate of HANDLES[grip.handle].views[grip.view] ?? []) {
    asked[coordinate] = coordinateOf(start.seat, coordinate) + partOf(coordinate, moved, start);
  }
  return asked;
}

/** How much of a movement in the boat frame goes into a coordinate of place. */
function partOf(coordinate: FittingCoordinate, moved: Vec3, { frame }: SeatPlace): number {
  const { axis, sign } = COORDINATES[coordinate];
  if (axis === 'forward') return sign * moved.x;
  return axis === 'across' ? moved.y * sideSign(frame.side) : moved.z;
}

function turned(
  { handle, view }: Grip,
  start: SeatPlace,
  { from, to }: { from: Vec3; to: Vec3 },
): WantedCoordinates {
  const coordinate = HANDLES[handle].views[view]![0]!;
  const pivot = bearingPoint(start, handle);
  const sign = sideSign(start.frame.side);
  const bearing = (p: Vec3) => Math.atan2((p.y - pivot.y) * sign, p.x - pivot.x);
  const turn = wrapped(bearing(to) - bearing(from));
  return {
    [coordinate]: coordinateOf(start.seat, coordinate) + toDegrees(turn) * COORDINATES[coordinate].sign,
  };
}

/** An angle brought to −π … π. */
function wrapped(angle: number): number {
  return Math.atan2(Math.sin(angle), Math.cos(angle));
}

function slid(view: ViewName, start: SeatPlace, moved: Vec3): WantedCoordinates {
  if (!start.hands) return {};
  const whole = subtract(start.hands.lower, start.hands.top);
  const shaft = { ...whole, [view === 'profile' ? 'y' : 'x']: 0 };
  const seen = norm(shaft);
  if (seen < LEAST_SEEN * norm(whole)) return {};
  const { lowerHandM } = start.seat.paddle;
  return { 'paddle.lowerHandM': lowerHandM + (dot(moved, shaft) / (seen * seen)) * norm(whole) };
}

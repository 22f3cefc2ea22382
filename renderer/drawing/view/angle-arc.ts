import { cross, dot, norm, plus, scale, subtract, type Vec3 } from '../../../core/frame/vec3.ts';

/** Points of an arc drawn in space; seen in a view it is the true projection of the angle it measures. */
export interface AngleArc {
  readonly corner: Vec3;
  /** Points of the arc, boat frame, metres. */
  readonly points: readonly Vec3[];
  /** The middle of the arc, where its value is written. */
  readonly middle: Vec3;
}

const STEPS = 24;

/**
 * The arc at `corner` from the direction of `from` to that of `to`, the short way round, with a radius in metres.
 * Null where one of the two lies on the corner, or where they point opposite ways and the plane is not known.
 */
export function angleArc(
  { corner, from, to }: { corner: Vec3; from: Vec3; to: Vec3 },
  radius: number,
): AngleArc | null {
  const u = unit(subtract(from, corner));
  const v = unit(subtract(to, corner));
  if (!u || !v) return null;
  const axis = unit(cross(u, v));
  if (!axis) return null;
  const across = cross(axis, u);
  const angle = Math.atan2(norm(cross(u, v)), dot(u, v));
  const at = (turn: number) =>
    plus(plus(corner, radius * Math.cos(turn), u), radius * Math.sin(turn), across);
  return {
    corner,
    points: Array.from({ length: STEPS + 1 }, (_, k) => at((angle * k) / STEPS)),
    middle: at(angle / 2),
  };
}

/**
 * The arc of a given angle (radians, more than a half-turn too) from the direction of `from`, turning first toward
 * `toward`. For angles near a half-turn, whose own plane would flip from one side to the other.
 */
export function arcToward(
  { corner, from, toward, angle }: { corner: Vec3; from: Vec3; toward: Vec3; angle: number },
  radius: number,
): AngleArc | null {
  const u = unit(subtract(from, corner));
  const aim = u && subtract(toward, scale(u, dot(toward, u)));
  const across = aim && unit(aim);
  if (!u || !across) return null;
  const at = (turn: number) =>
    plus(plus(corner, radius * Math.cos(turn), u), radius * Math.sin(turn), across);
  return {
    corner,
    points: Array.from({ length: STEPS + 1 }, (_, k) => at((angle * k) / STEPS)),
    middle: at(angle / 2),
  };
}

function unit(v: Vec3): Vec3 | null {
  const length = norm(v);
  return length > 1e-9 ? scale(v, 1 / length) : null;
}

import type { Paddle } from '../document/seat-schema.ts';
import { add, cross, norm, scale, subtract, type Vec3 } from '../frame/vec3.ts';
import { fairRows } from '../graphics/fair.ts';

/** A paddle in space, boat frame, metres. Seen from any side its outline is a true projection. */
export interface PaddleShape {
  /** From the top of the grip to the blade's throat. */
  readonly shaft: readonly [Vec3, Vec3];
  /** Where the shaft, tapering, dies away in the blade. */
  readonly spine: Vec3;
  /** Its two ends, across the shaft. */
  readonly grip: readonly [Vec3, Vec3];
  /** Outline of the blade in its own plane. */
  readonly blade: readonly Vec3[];
}

/** Greatest breadth of a sprint canoe blade, metres (drawing only; estimate from the trade's usual 20–21 cm). */
const BLADE_BREADTH = 0.205;
/** Breadth of the grip across the shaft, metres (drawing only, estimate). */
const GRIP_BREADTH = 0.115;

/** Share of the blade's length from its throat, and of its breadth. */
const BLADE = fairRows(
  [
    [0, 0.07],
    [0.07, 0.1],
    [0.16, 0.3],
    [0.28, 0.62],
    [0.42, 0.88],
    [0.56, 1],
    [0.78, 1],
    [0.92, 0.93],
    [0.98, 0.78],
    [1, 0.5],
  ],
  2,
);

/** The paddle held by these two hands; its blade stands square to the boat's way, turned about the shaft by nothing else. */
export function paddleShape(paddle: Paddle, { top, lower }: { top: Vec3; lower: Vec3 }): PaddleShape | null {
  const down = subtract(lower, top);
  const length = norm(down);
  if (length < 1e-6) return null;
  const along = scale(down, 1 / length);
  const square = cross(along, { x: 1, y: 0, z: 0 });
  const width = norm(square);
  const across = width > 1e-6 ? scale(square, 1 / width) : { x: 0, y: 1, z: 0 };
  const at = (reach: number, out: number) => add(add(top, scale(along, reach)), scale(across, out));
  const throat = paddle.lengthM - paddle.bladeLengthM;
  const edge = (side: number) =>
    BLADE.map(([share, breadth]) =>
      at(throat + share! * paddle.bladeLengthM, (side * breadth! * BLADE_BREADTH) / 2),
    );
  return {
    shaft: [at(0, 0), at(throat, 0)],
    spine: at(throat + paddle.bladeLengthM * 0.5, 0),
    grip: [at(0, -GRIP_BREADTH / 2), at(0, GRIP_BREADTH / 2)],
    blade: [...edge(1), ...edge(-1).reverse()],
  };
}

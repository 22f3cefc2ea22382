import type { Hull } from '../hull/hull.ts';
import type { WaterPlane } from '../hull/water-plane.ts';

/**
 * A sheer narrower than this, metres, is the top of a stem or of a closed body: no water enters there. A hull with no
 * open sheer at all (a closed body) is measured everywhere.
 */
const OPEN_SHEER = 1e-3;

/**
 * Least height of the sheer above the water, metres plumb, and its x, over every station and midway between. The low side
 * counts where the boat heels. A box 0.4 m deep at a draft of 0.15 m has 0.25 m.
 */
export function leastFreeboard(hull: Hull, plane: WaterPlane): { value: number; x: number } {
  return openFreeboard(hull, plane) ?? leastWhere(hull, plane, -1);
}

/** The same where water could come in; null for a hull that has no open sheer, which cannot be swamped. */
export function openFreeboard(hull: Hull, plane: WaterPlane): { value: number; x: number } | null {
  const open = leastWhere(hull, plane, OPEN_SHEER);
  return Number.isFinite(open.value) ? open : null;
}

/** Height of the lowest open sheer above the boat's floor, metres; the top of a hull that has none. */
export function lowestSheer({ rows, highestZ }: Hull): number {
  let lowest = Number.POSITIVE_INFINITY;
  for (let row = 0; row < rows.count; row++) {
    const sheer = (row + 1) * rows.points - 1;
    if (rows.y[sheer]! > OPEN_SHEER) lowest = Math.min(lowest, rows.z[sheer]!);
  }
  return Number.isFinite(lowest) ? lowest : highestZ;
}

/** Least plumb height of the sheer over the rows whose sheer is broader than a limit; infinite when none is. */
function leastWhere({ rows }: Hull, plane: WaterPlane, halfBreadth: number): { value: number; x: number } {
  const { draft, alongSlope, acrossSlope } = plane;
  const low = Math.abs(acrossSlope);
  let value = Number.POSITIVE_INFINITY;
  let at = 0;
  for (let row = 0; row < rows.count; row++) {
    const sheer = (row + 1) * rows.points - 1;
    if (rows.y[sheer]! <= halfBreadth) continue;
    const height = rows.z[sheer]! - low * rows.y[sheer]! - draft + alongSlope * rows.x[row]!;
    if (height < value) {
      value = height;
      at = rows.x[row]!;
    }
  }
  return { value: value / Math.hypot(1, alongSlope, acrossSlope), x: at };
}

/** Height of the sheer above the water at the foremost and aftmost stations, low side, metres plumb. */
export function endFreeboards({ rows }: Hull, plane: WaterPlane): { bow: number; stern: number } {
  const { draft, alongSlope, acrossSlope } = plane;
  const at = (row: number) => {
    const sheer = (row + 1) * rows.points - 1;
    const height =
      rows.z[sheer]! - Math.abs(acrossSlope) * rows.y[sheer]! - draft + alongSlope * rows.x[row]!;
    return height / Math.hypot(1, alongSlope, acrossSlope);
  };
  return { bow: at(rows.count - 1), stern: at(0) };
}

import type { Vec3 } from '../frame/vec3.ts';
import type { HullFace } from './broader-face.ts';
import { type LoftedSection, loftedInto } from './section-at.ts';

/**
 * Distance of a point (boat frame, metres) to the hull's inner face, positive inside and negative in the skin and beyond it.
 */
export type InnerSkin = (point: Vec3) => number;

/**
 * Measures distances to a hull's inner face. The distance is the least one in the section across the boat at the point, square
 * to the skin, bottom and side alike; at the ends also along the boat. Above the sheer the side continues straight up. The
 * value exceeds the true distance in space because of the section's slope along the boat: by 0.4 % where the side runs at 5° to
 * the centreline. Smooth except at creases of the section. In a box 50 cm wide with a skin of 4 mm a point 10 cm off the
 * centreline and well up has 14.6 cm.
 */
export function innerSkin(hull: HullFace, skin: number): InnerSkin {
  const { points } = hull.loft;
  const section = { y: new Float64Array(points), z: new Float64Array(points) };
  let at = Number.NaN;
  return ({ x, y, z }) => {
    if (x !== at) loftedInto(hull, x, section);
    at = x;
    const across = insideSection(section, Math.abs(y), z);
    return Math.min(across, x - hull.aftX, hull.foreX - x) - skin;
  };
}

/** Signed distance in the plane of a half-section from (y, z), y ≥ 0, to its outer face; positive inside. Metres. */
function insideSection({ y: ys, z: zs }: LoftedSection, y: number, z: number): number {
  const last = ys.length - 1;
  // The flat of a bottom that does not come to the centreline, and the side's way on up from the sheer.
  const beside = Math.max(0, y - ys[0]!);
  let least = beside * beside + (z - zs[0]!) ** 2;
  const over = z - zs[last]!;
  if (over > 0) least = Math.min(least, (y - ys[last]!) ** 2);
  let inside = over >= 0 && y < ys[last]!;
  // A hundred thousand edges a second under a moving hand: plain arithmetic, no records.
  for (let j = 1; j <= last; j++) {
    const y0 = ys[j - 1]!;
    const z0 = zs[j - 1]!;
    const dz = zs[j]! - z0;
    // An edge wholly above or below, and farther than the nearest so far, decides nothing.
    const off =
      z < z0 && z < zs[j]! ? Math.min(z0, zs[j]!) - z : z > z0 && z > zs[j]! ? z - Math.max(z0, zs[j]!) : 0;
    if (off * off > least) continue;
    const dy = ys[j]! - y0;
    const length = dy * dy + dz * dz;
    const along = (y - y0) * dy + (z - z0) * dz;
    const share = along <= 0 || length === 0 ? 0 : along >= length ? 1 : along / length;
    const ay = y - y0 - share * dy;
    const az = z - z0 - share * dz;
    least = Math.min(least, ay * ay + az * az);
    // A ray to the side crosses the skin once more for each edge that spans its height.
    if (z0 <= z !== zs[j]! <= z && y0 + ((z - z0) / dz) * dy > y) inside = !inside;
  }
  return inside ? Math.sqrt(least) : -Math.sqrt(least);
}

/** A distance in a section changes by no more than this for each metre along the boat: sides to 20° to the centreline. */
const ALONG_SHARE = 0.36;

/** Least distances are true to half of this, metres: finer than wood is fitted. */
const STEP = 0.002;

/** Corners, and the straight edges between them as places in their list. */
export interface Wire {
  /** Boat frame, metres. */
  readonly vertices: readonly Vec3[];
  /** Places in `vertices`. */
  readonly edges: readonly (readonly [from: number, to: number])[];
}

/**
 * Least distance of straight edges to the inner face, metres, boat frame, right to 1 mm. A distance changes no faster than its
 * place, so a stretch whose ends are far enough away is skipped and others are halved. Valid where the sides run at up to 20°
 * to the centreline; only a boat's very ends exceed that.
 */
export function leastInside(distance: InnerSkin, { vertices, edges }: Wire): number {
  const at = vertices.map(distance);
  let least = Math.min(...at);
  for (const [from, to] of edges) {
    const stretch = { a: vertices[from]!, b: vertices[to]!, atA: at[from]!, atB: at[to]! };
    least = leastBetween(distance, stretch, least);
  }
  return least;
}

/** Part of an edge: its two ends, and the distance to the skin at each, metres. */
interface Stretch {
  /** One end, boat frame, metres. */
  readonly a: Vec3;
  /** The other end. */
  readonly b: Vec3;
  /** Distance from `a` to the skin, metres. */
  readonly atA: number;
  /** The same at `b`. */
  readonly atB: number;
}

/** The least distance between two places where it is known, or `least` where nothing there is less. */
function leastBetween(distance: InnerSkin, { a, b, atA, atB }: Stretch, least: number): number {
  const [dy, dz] = [b.y - a.y, b.z - a.z];
  const change = Math.sqrt(dy * dy + dz * dz) + ALONG_SHARE * Math.abs(b.x - a.x);
  if (change < STEP || (atA + atB - change) / 2 >= least - STEP / 2) return least;
  const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2, z: (a.z + b.z) / 2 };
  const there = distance(middle);
  const first = leastBetween(distance, { a, b: middle, atA, atB: there }, Math.min(least, there));
  return leastBetween(distance, { a: middle, b, atA: there, atB }, first);
}

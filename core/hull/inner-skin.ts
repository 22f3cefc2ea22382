import type { Vec3 } from '../frame/vec3.ts';
import type { Hull } from './hull.ts';
import { type LoftedSection, loftedSection } from './section-at.ts';

/**
 * Distance of a point (boat frame, metres) to the hull's inner face, positive inside and negative in the skin and beyond it.
 */
export type InnerSkin = (point: Vec3) => number;

/**
 * Measures distances to a hull's inner face. The distance is the least one in the section across the boat at the point, square to
 * the skin, bottom and side alike; at the ends also along the boat. Over the sheer the side is taken as going straight up. It
 * passes the true distance in space by the section's slope along the boat only: by 0.4 % where the side runs 5° to the
 * centreline. Smooth but at creases of the section. In a box 50 cm wide with a skin of 4 mm a point 10 cm off the centreline and well up
 * has 14.6 cm.
 */
export function innerSkin(hull: Hull, skin: number): InnerSkin {
  let at = Number.NaN;
  let section: LoftedSection | null = null;
  return ({ x, y, z }) => {
    if (x !== at || section === null) {
      section = loftedSection(hull, x);
      at = x;
    }
    const across = insideSection(section, Math.abs(y), z);
    return Math.min(across, x - hull.aftX, hull.foreX - x) - skin;
  };
}

/** Signed distance in the plane of a half-section from (y, z), y ≥ 0, to its outer face; positive inside. Metres. */
function insideSection({ y: ys, z: zs }: LoftedSection, y: number, z: number): number {
  const last = ys.length - 1;
  // The flat of a bottom that does not come to the centreline, and the side's way on up from the sheer.
  let least = square(y, z, { y0: 0, z0: zs[0]!, y1: ys[0]!, z1: zs[0]! });
  const over = z - zs[last]!;
  if (over > 0) least = Math.min(least, (y - ys[last]!) ** 2);
  let inside = over >= 0 && y < ys[last]!;
  for (let j = 1; j <= last; j++) {
    const edge = { y0: ys[j - 1]!, z0: zs[j - 1]!, y1: ys[j]!, z1: zs[j]! };
    least = Math.min(least, square(y, z, edge));
    // A ray to the side crosses the skin once more for each edge that spans its height.
    if (edge.z0 <= z !== edge.z1 <= z) {
      const crossing = edge.y0 + ((z - edge.z0) / (edge.z1 - edge.z0)) * (edge.y1 - edge.y0);
      if (crossing > y) inside = !inside;
    }
  }
  return inside ? Math.sqrt(least) : -Math.sqrt(least);
}

interface Edge {
  readonly y0: number;
  readonly z0: number;
  readonly y1: number;
  readonly z1: number;
}

/** Squared distance of a place to an edge. */
function square(y: number, z: number, { y0, z0, y1, z1 }: Edge): number {
  const [dy, dz] = [y1 - y0, z1 - z0];
  const length = dy * dy + dz * dz;
  const share = length === 0 ? 0 : Math.min(1, Math.max(0, ((y - y0) * dy + (z - z0) * dz) / length));
  const [ay, az] = [y - y0 - share * dy, z - z0 - share * dz];
  return ay * ay + az * az;
}

/** Places are tried at most so far apart along an edge, metres: across the boat and up, where the skin may bend sharply. */
const SPACING = 0.03;
/** Along the boat the skin bends little: 8 cm between places miss 0.4 mm where its radius is 2 m. */
const ALONG_SPACING = 0.08;
/** Round the nearest of these places the spacing is halved so many times. */
const HALVINGS = 5;

/**
 * Least distance of straight edges to the inner face, metres, boat frame: at their ends and at places between them, 3 cm apart at
 * most (8 cm along the boat), and nearer and nearer round the least. Where the skin is hollow seen from inside, as hulls are, an
 * edge comes nearest at one of its ends, and the answer is that of the ends; at a knuckle that points inward it is true to 1 mm.
 */
export function leastInside(distance: InnerSkin, edges: readonly (readonly [a: Vec3, b: Vec3])[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (const [a, b] of edges) least = Math.min(least, leastOnEdge(distance, a, b));
  return least;
}

function leastOnEdge(distance: InnerSkin, a: Vec3, b: Vec3): number {
  const [dx, dy, dz] = [b.x - a.x, b.y - a.y, b.z - a.z];
  const at = (t: number) => distance({ x: a.x + t * dx, y: a.y + t * dy, z: a.z + t * dz });
  const across = Math.hypot(dy, dz) / SPACING;
  const spans = Math.max(1, Math.ceil(Math.abs(dx) / ALONG_SPACING), Math.ceil(across));
  let [best, least] = [0, at(0)];
  for (let k = 1; k <= spans; k++) {
    const here = at(k / spans);
    if (here < least) [best, least] = [k / spans, here];
  }
  if (best === 0 || best === 1) return least;
  for (let step = 0.5 / spans, k = 0; k < HALVINGS; k++, step /= 2) {
    for (const t of [best - step, best + step]) {
      const here = at(t);
      if (here < least) [best, least] = [t, here];
    }
  }
  return least;
}

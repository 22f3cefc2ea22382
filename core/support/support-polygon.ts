import { planeNorm } from '../frame/vec3.ts';
import { CONTACTS, type Contact } from './support.ts';
import type { PolygonCorner } from './support-patches.ts';
import { type InPlan, twiceArea } from './support-triangle.ts';

/**
 * The convex hull of the corners, counter-clockwise seen from above: the support polygon. Metres, boat frame. Its near side is
 * gone along from aft forward and its far side back, each without the corners that turn to the wrong hand (Andrew 1979).
 */
export function supportPolygon(corners: readonly PolygonCorner[]): PolygonCorner[] {
  const sorted = corners.toSorted(fromAft);
  const polygon: PolygonCorner[] = [];
  for (const corner of sorted) addCorner(polygon, corner, 0);
  polygon.pop();
  const farSide = polygon.length;
  for (let i = sorted.length - 1; i >= 0; i--) addCorner(polygon, sorted[i]!, farSide);
  polygon.pop();
  return polygon;
}

/** Orders corners from aft forward, and from starboard to port. Whole numbers: a fraction would be an object for each look. */
function fromAft(a: InPlan, b: InPlan): number {
  if (a.x !== b.x) return a.x < b.x ? -1 : 1;
  return Math.sign(a.y - b.y);
}

/** Adds a corner to a side that begins at `from`, and takes those before it away that would stand inside. */
function addCorner(polygon: PolygonCorner[], corner: PolygonCorner, from: number): void {
  for (let n = polygon.length; n > from + 1; n--) {
    if (twiceArea(polygon[n - 2]!, polygon[n - 1]!, corner) > 0) break;
    polygon.pop();
  }
  polygon.push(corner);
}

/**
 * Signed distance from `at` to the polygon's edge, metres: positive inside, negative outside, and the contacts of that edge's
 * two ends (twice the same where it is a patch's own side).
 */
export function polygonMargin(polygon: readonly PolygonCorner[], at: InPlan) {
  let distance = Number.POSITIVE_INFINITY;
  let nearestEdge: readonly [Contact, Contact] = ['knee', 'knee'];
  let inside = polygon.length > 2;
  polygon.forEach((p, i) => {
    const q = polygon[(i + 1) % polygon.length]!;
    if (twiceArea(p, q, at) < 0) inside = false;
    const away = toEdge(at, p, q);
    if (away < distance) {
      distance = away;
      nearestEdge = [p.contact, q.contact];
    }
  });
  return { margin: inside ? distance : -distance, nearestEdge, inside };
}

/** An edge of the polygon: its corners, counter-clockwise. */
export type PolygonEdge = readonly [PolygonCorner, PolygonCorner];

/** The polygon's edges whose lines are nearest to `at`, or farthest on its wrong side: at most `count`, the first leading. */
export function nearestEdges(polygon: readonly PolygonCorner[], at: InPlan, count: number): PolygonEdge[] {
  return polygon
    .map((p, i) => [p, polygon[(i + 1) % polygon.length]!] as const)
    .toSorted((a, b) => edgeDistance(a, at) - edgeDistance(b, at))
    .slice(0, count);
}

/** Signed distance from `at` to the line through an edge, metres: positive on the polygon's side. */
export function edgeDistance([p, q]: readonly [InPlan, InPlan], at: InPlan): number {
  return twiceArea(p, q, at) / Math.max(planeNorm(q.x - p.x, q.y - p.y), 1e-9);
}

/** Area of the polygon, m² (shoelace formula). */
export function polygonArea(polygon: readonly InPlan[]): number {
  return polygon.reduce((sum, p, i) => {
    const q = polygon[(i + 1) % polygon.length]!;
    return sum + (p.x * q.y - q.x * p.y) / 2;
  }, 0);
}

/** A share that is not known more closely, 0 to 1. */
export interface ShareRange {
  /** 0 where it may bear nothing. */
  readonly least: number;
  /** 1 where it may bear all. */
  readonly most: number;
}

/** Slack of a barycentric coordinate for rounding. */
const ROUNDING = 1e-9;

/** Areas this small, m², have no side: far over the slack of any triangle on a floorboard. */
const NO_SIDE = 1e-7;

/**
 * The least and the greatest share that each contact may carry of a weight over `at`, wherever in its patch it bears: the
 * extremes of a linear programme (forces at the corners at least 0, their sum the weight, their moments balanced), which lie at
 * its basic solutions, three corners each. Null where the weight is outside all of them: then nothing at rest carries it.
 */
export function shareRanges(
  corners: readonly PolygonCorner[],
  at: InPlan,
): Record<Contact, ShareRange> | null {
  const { x, y } = at;
  const own = corners.map(({ contact }) => CONTACTS.indexOf(contact));
  // Typed: a plain array would keep each number as an object of its own.
  const least = new Float64Array(3).fill(1);
  const most = new Float64Array(3);
  const sums = new Float64Array(3);
  let found = false;
  for (let i = 0; i < corners.length; i++)
    for (let j = i + 1; j < corners.length; j++)
      for (let k = j + 1; k < corners.length; k++) {
        // Barycentric coordinates, without records: there are some hundred triples.
        const p = corners[i]!;
        const q = corners[j]!;
        const r = corners[k]!;
        // The weight is on different sides of two edges in most triples: it is outside, whatever the triangle's area.
        // Written out: a call for each would leave its number behind, 60 KB in each step of a drag.
        const overR = (q.x - p.x) * (y - p.y) - (q.y - p.y) * (x - p.x);
        const overP = (r.x - q.x) * (y - q.y) - (r.y - q.y) * (x - q.x);
        const overQ = (p.x - r.x) * (y - r.y) - (p.y - r.y) * (x - r.x);
        const left = overP > NO_SIDE || overQ > NO_SIDE || overR > NO_SIDE;
        const right = overP < -NO_SIDE || overQ < -NO_SIDE || overR < -NO_SIDE;
        if (left && right) continue;
        const whole = (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
        if (Math.abs(whole) < 1e-12) continue;
        const a = overP / whole;
        const b = overQ / whole;
        const c = overR / whole;
        if (!(a >= -ROUNDING && b >= -ROUNDING && c >= -ROUNDING)) continue;
        found = true;
        sums.fill(0);
        sums[own[i]!]! += a;
        sums[own[j]!]! += b;
        sums[own[k]!]! += c;
        for (let contact = 0; contact < 3; contact++) {
          const share = Math.min(1, Math.max(0, sums[contact]!));
          if (share < least[contact]!) least[contact] = share;
          if (share > most[contact]!) most[contact] = share;
        }
      }
  if (!found) return null;
  const range = (contact: number) => ({ least: least[contact]!, most: most[contact]! });
  return { knee: range(0), rearFoot: range(1), frontFoot: range(2) };
}

/** Distance from a point to a stretch between two others, metres. */
function toEdge(at: InPlan, p: InPlan, q: InPlan): number {
  const along = { x: q.x - p.x, y: q.y - p.y };
  const squared = along.x ** 2 + along.y ** 2;
  const reach = squared > 0 ? ((at.x - p.x) * along.x + (at.y - p.y) * along.y) / squared : 0;
  const share = Math.min(1, Math.max(0, reach));
  return planeNorm(at.x - p.x - share * along.x, at.y - p.y - share * along.y);
}

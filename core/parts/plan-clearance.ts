import { planeNorm } from '../frame/vec3.ts';
import type { PlanPoint } from './part.ts';

/**
 * Least distance in plan between two convex outlines, metres; negative where they overlap, by the depth of the
 * overlap (the shortest push that would part them).
 */
export function planClearance(a: readonly PlanPoint[], b: readonly PlanPoint[]): number {
  const overlap = Math.max(separation(a, b), separation(b, a));
  return overlap < 0 ? overlap : Math.min(cornerDistance(a, b), cornerDistance(b, a));
}

/** Greatest signed gap along any of a's edge normals (separating-axis test; either winding). */
function separation(a: readonly PlanPoint[], b: readonly PlanPoint[]): number {
  let best = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < a.length; i++) {
    const p = a[i]!;
    const q = a[(i + 1) % a.length]!;
    const length = planeNorm(q.x - p.x, q.y - p.y) || 1;
    // The normal's two parts, and without records: a drag asks for every pair of outlines in each step.
    const [x, y] = [(q.y - p.y) / length, (p.x - q.x) / length];
    let own = 0;
    for (const o of a) own += (o.x - p.x) * x + (o.y - p.y) * y;
    const inward = Math.sign(own) || 1;
    let gap = Number.POSITIVE_INFINITY;
    for (const o of b) gap = Math.min(gap, -inward * ((o.x - p.x) * x + (o.y - p.y) * y));
    best = Math.max(best, gap);
  }
  return best;
}

/** Least distance from any corner of `b` to any edge of `a`. */
function cornerDistance(a: readonly PlanPoint[], b: readonly PlanPoint[]): number {
  let best = Number.POSITIVE_INFINITY;
  for (let i = 0; i < a.length; i++) {
    for (const o of b) best = Math.min(best, edgeDistance(a[i]!, a[(i + 1) % a.length]!, o));
  }
  return best;
}

/** Distance of a point from a stretch between two others. */
function edgeDistance(p: PlanPoint, q: PlanPoint, o: PlanPoint): number {
  const dx = q.x - p.x;
  const dy = q.y - p.y;
  const t = ((o.x - p.x) * dx + (o.y - p.y) * dy) / (dx * dx + dy * dy || 1);
  const clamped = Math.min(1, Math.max(0, t));
  return planeNorm(o.x - p.x - clamped * dx, o.y - p.y - clamped * dy);
}

type Point = readonly [number, number];

/** Points along each edge of a half-section, metres apart at most: so close that fairing leaves the edges straight. */
const APART = 0.005;

/** A half-section of straight edges, given so densely that the hull follows its edges and corners. Metres, keel to sheer. */
export function straightEdges(corners: readonly Point[]): [number, number][] {
  return corners.flatMap(([y, z], k): [number, number][] => {
    const next = corners[k + 1];
    if (!next) return [[y, z]];
    const count = Math.max(1, Math.ceil(Math.hypot(next[0] - y, next[1] - z) / APART));
    return Array.from({ length: count }, (_, i) => [
      y + ((next[0] - y) * i) / count,
      z + ((next[1] - z) * i) / count,
    ]);
  });
}

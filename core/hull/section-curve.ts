import type { SectionPoint } from './hull.ts';

/** A turn of the section at a point from this on, radians (60°), is a knuckle (a chine), whatever its neighbours do. */
const KNUCKLE_TURN = Math.PI / 3;

/** A turn under this, radians (2°), or under this share of a neighbour's, leaves the edges beside it straight. */
const STRAIGHT_TURN = Math.PI / 90;
/** Share of the larger turn beside it. */
const STRAIGHT_SHARE = 0.1;

/** A half-section as one curve: the place p runs from 0 at the keel; a whole number k is the given point k, exactly. */
export type SectionCurve = (place: number) => SectionPoint;

/**
 * A fair curve through every point of a half-section, keel to sheer. Metres. Between two points it is a cubic with the
 * tangents kept here: at a point the mean direction of the two edges, the shorter edge counting more; at the keel the
 * tangent of the arc through the first three points, so that a round bottom is level there and a V stays a V.
 *
 * What is straight stays straight: edges beside a turn of under 2° (a V, a flat bottom, a wall side), and a piece of two
 * points. A curve meets a straight run in its direction. A knuckle is kept where two straight runs meet, where the turn
 * is 60° or more, and where a point is given twice in succession.
 */
export function sectionCurve(section: readonly SectionPoint[]): SectionCurve {
  const edges = fairEdges(section);
  const last = section.length - 1;
  return (place) => {
    const k = Math.min(last, Math.max(0, Math.floor(place)));
    const edge = edges[k];
    return k === place || !edge
      ? section[k]!
      : pointOnEdge({ from: section[k]!, to: section[k + 1]!, ...edge }, place - k);
  };
}

/** One edge: its length and directions, metres and radians from the horizontal; the tangents at both ends. */
interface Edge {
  /** Metres. */
  readonly length: number;
  /** Radians from the horizontal, counter-clockwise. */
  readonly direction: number;
  /** Tangent where it begins, radians. */
  start: number;
  /** Tangent where it ends, radians. */
  end: number;
}

/** The point at a share of an edge: Hermite's cubic, with the tangents of a circular arc where both bend one way. */
function pointOnEdge(e: Edge & { from: SectionPoint; to: SectionPoint }, t: number): SectionPoint {
  const [[y0, z0], [y1, z1]] = [e.from, e.to];
  if (e.start === e.direction && e.end === e.direction) return [y0 + (y1 - y0) * t, z0 + (z1 - z0) * t];
  const turn = Math.abs(e.end - e.start);
  const pull = turn > 1e-6 ? (2 * e.length * Math.tan(turn / 4)) / Math.sin(turn / 2) : e.length;
  const u = 1 - t;
  const [f0, f1, g0, g1] = [u * u * (1 + 2 * t), t * t * (1 + 2 * u), pull * t * u * u, -pull * t * t * u];
  return [
    Math.max(0, f0 * y0 + f1 * y1 + g0 * Math.cos(e.start) + g1 * Math.cos(e.end)),
    f0 * z0 + f1 * z1 + g0 * Math.sin(e.start) + g1 * Math.sin(e.end),
  ];
}

/** Edges with their tangents, piece by piece between knuckles. */
function fairEdges(section: readonly SectionPoint[]): Edge[] {
  const edges = section.slice(1).map(([y, z], k): Edge => {
    const [dy, dz] = [y - section[k]![0], z - section[k]![1]];
    const direction = Math.atan2(dz, dy);
    return { length: Math.hypot(dy, dz), direction, start: direction, end: direction };
  });
  let from = 0;
  for (let k = 0; k <= edges.length; k++) {
    if (k < edges.length && edges[k]!.length > 0) continue;
    fairRun(edges.slice(from, k), from === 0 && section[0]![0] === 0);
    from = k + 1;
  }
  return edges;
}

/** Fairs a run of edges without repeated points; `keel` when it starts on the centreline, where the hull's other half meets it. */
function fairRun(run: Edge[], keel: boolean): void {
  if (run.length < 2) return;
  const turns = run.slice(1).map((edge, k) => wrapped(edge.direction - run[k]!.direction));
  const isStraight = (k: number) => {
    const size = Math.abs(turns[k]!);
    const most = Math.max(Math.abs(turns[k - 1] ?? 0), Math.abs(turns[k + 1] ?? 0));
    return size < Math.max(STRAIGHT_TURN, STRAIGHT_SHARE * most);
  };
  const straight = run.map((_, k) => (k > 0 && isStraight(k - 1)) || (k < turns.length && isStraight(k)));
  if (keel && 2 * Math.abs(run[0]!.direction) < STRAIGHT_TURN) straight[0] = true;
  let from = 0;
  for (let k = 1; k <= run.length; k++) {
    const corner =
      k < run.length && (Math.abs(turns[k - 1]!) >= KNUCKLE_TURN || (straight[k - 1] && straight[k]));
    if (k < run.length && !corner) continue;
    fairPiece(run.slice(from, k), straight.slice(from, k), keel && from === 0);
    from = k;
  }
}

/** Tangents within one piece: along a straight run, else between the two edges; arcs carry on to the free ends. */
function fairPiece(piece: Edge[], straight: readonly (boolean | undefined)[], keel: boolean): void {
  for (let k = 1; k < piece.length; k++) {
    const [before, after] = [piece[k - 1]!, piece[k]!];
    const turn = wrapped(after.direction - before.direction);
    const [a, b] = [Math.sqrt(before.length), Math.sqrt(after.length)];
    const share = straight[k - 1] ? 0 : straight[k] ? 1 : a / (a + b);
    before.end = before.direction + share * turn;
    after.start = after.direction - (1 - share) * turn;
  }
  const [first, last] = [piece[0]!, piece[piece.length - 1]!];
  if (piece.length < 2) return;
  if (!straight[0]) first.start = keel ? keelTangent(first, piece[1]!) : 2 * first.direction - first.end;
  if (!straight[piece.length - 1]) last.end = endTangent(last);
}

/** Of the arc through the first three points, but never downward from the keel nor past the vertical. */
function keelTangent(first: Edge, second: Edge): number {
  const turn = wrapped(second.direction - first.direction);
  const arc = first.direction - (turn * first.length) / (first.length + second.length);
  return first.direction < 0
    ? first.direction
    : Math.min(Math.max(0, arc), Math.max(Math.PI / 2, first.direction));
}

/** The arc continued to the sheer. A side that does not fall inward stays so. */
function endTangent({ direction, start }: Edge): number {
  const arc = 2 * direction - start;
  return direction <= Math.PI / 2 && direction >= 0 ? Math.min(arc, Math.PI / 2) : arc;
}

/** An angle brought to within half a turn of 0, radians. */
function wrapped(angle: number): number {
  return angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));
}

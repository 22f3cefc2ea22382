import type { Vec3 } from '../frame/vec3.ts';
import { inView, nearness, type ViewName, type ViewPoint } from '../graphics/view.ts';

/** What is needed of a piece to tell its place before or behind another. Metres. */
export interface Ordered {
  /** The pair of names decides where depth alone cannot: a hand lies over the shaft that it holds. */
  readonly name: string;
  /** Straight lines inside the part, end by end, metres. */
  readonly bones: readonly (readonly [Vec3, Vec3])[];
  /** How far the part reaches from those lines, metres. */
  readonly girth: number;
}

/** How much the middles of two pieces count beside the place where their bones pass each other. */
const MIDDLES = 0.5;
/** Pieces that lie this far beside each other still count as meeting, metres. */
const BESIDE = 0.02;

/**
 * Pieces from the far to the near. Two pieces are compared where their bones pass each other in the view, and by their
 * middles; pieces that do not reach each other are not compared. `after` names pieces that must follow another.
 */
export function drawOrder<T extends Ordered>(
  pieces: readonly T[],
  view: ViewName,
  after: readonly (readonly [late: string, early: string])[],
): T[] {
  const flat = pieces.map((piece) => flatten(piece, view));
  const count = pieces.length;
  const place = new Map(pieces.map(({ name }, k) => [name, k]));
  const given = new Int8Array(count * count);
  for (const [late, early] of after) {
    const [i, j] = [place.get(late), place.get(early)];
    if (i === undefined || j === undefined) continue;
    given[i * count + j] = 1;
    given[j * count + i] = -1;
  }
  /** behind[i] holds what must be drawn before i. */
  const behind: number[][] = pieces.map(() => []);
  for (let i = 0; i < count; i++) {
    for (let j = i + 1; j < count; j++) {
      const sign = given[i * count + j] || nearer(flat[i]!, flat[j]!);
      if (sign > 0) behind[i]!.push(j);
      else if (sign < 0) behind[j]!.push(i);
    }
  }
  return sorted(
    pieces,
    behind,
    flat.map(({ middle }) => middle),
  );
}

/** Takes again and again the farthest of what has nothing left behind it; a round of pieces is broken at its farthest. */
function sorted<T>(
  pieces: readonly T[],
  behind: readonly (readonly number[])[],
  middle: readonly number[],
): T[] {
  const left = new Set(pieces.keys());
  const made: T[] = [];
  while (left.size > 0) {
    const free = [...left].filter((i) => behind[i]!.every((j) => !left.has(j)));
    const from = free.length > 0 ? free : [...left];
    const next = from.reduce((a, b) => (middle[b]! < middle[a]! ? b : a));
    left.delete(next);
    made.push(pieces[next]!);
  }
  return made;
}

/** A part as one view sees it: bones in the picture's plane, with how near each end is to the eye. */
interface Flat {
  readonly bones: readonly FlatBone[];
  /** Mean nearness of all ends: it decides between parts that do not cross. */
  readonly middle: number;
  /** How far flesh reaches from the bones, metres. */
  readonly girth: number;
}

/** One bone in the picture, metres. */
interface FlatBone {
  /** Near end. */
  readonly from: ViewPoint;
  /** Far end. */
  readonly to: ViewPoint;
  /** How near its two ends are to the eye, metres along the line of sight. */
  readonly near: readonly [number, number];
}

/** Projects a part's bones into a view. */
function flatten({ bones, girth }: Ordered, view: ViewName): Flat {
  const flat = bones.map(([from, to]) => ({
    from: inView(view, from),
    to: inView(view, to),
    near: [nearness(view, from), nearness(view, to)] as const,
  }));
  const middle = flat.reduce((sum, { near }) => sum + (near[0] + near[1]) / 2, 0) / flat.length;
  return { bones: flat, middle, girth };
}

/** Positive where the first is nearer the eye, negative where the second is, 0 where they do not meet. */
function nearer(a: Flat, b: Flat): number {
  let least = a.girth + b.girth + BESIDE;
  let apart = 0;
  for (const one of a.bones) {
    for (const other of b.bones) {
      if (gap(one, other) >= least) continue;
      const passed = passing(one, other);
      if (passed.apart >= least) continue;
      least = passed.apart;
      apart = passed.deeper + MIDDLES * (a.middle - b.middle);
    }
  }
  return apart;
}

/** A distance that two bones are at least apart in the view: that of their boxes along one axis. */
function gap(a: FlatBone, b: FlatBone): number {
  let most = 0;
  for (const axis of [0, 1] as const) {
    const [p, q, r, s] = [a.from[axis], a.to[axis], b.from[axis], b.to[axis]];
    most = Math.max(most, Math.min(p, q) - Math.max(r, s), Math.min(r, s) - Math.max(p, q));
  }
  return most;
}

/** Where two bones pass each other in the view: how far apart they are there, and how much nearer the first is. */
function passing(a: FlatBone, b: FlatBone): { apart: number; deeper: number } {
  const best = { apart: Number.POSITIVE_INFINITY, s: 0, t: 0 };
  const [ax, ay] = [a.to[0] - a.from[0], a.to[1] - a.from[1]];
  const [bx, by] = [b.to[0] - b.from[0], b.to[1] - b.from[1]];
  const [rx, ry] = [a.from[0] - b.from[0], a.from[1] - b.from[1]];
  const [aa, bb, ab] = [ax * ax + ay * ay, bx * bx + by * by, ax * bx + ay * by];
  const [ar, br] = [ax * rx + ay * ry, bx * rx + by * ry];
  const within = (value: number) => (Number.isFinite(value) ? Math.min(1, Math.max(0, value)) : 0.5);
  const take = (s: number, t: number) => {
    const apart = Math.sqrt((rx + ax * s - bx * t) ** 2 + (ry + ay * s - by * t) ** 2);
    if (apart >= best.apart) return;
    best.apart = apart;
    best.s = s;
    best.t = t;
  };
  const cross = aa * bb - ab * ab;
  const s = within((ab * br - bb * ar) / cross);
  take(s, within((ab * s + br) / bb));
  for (const end of [0, 1]) {
    take(end, within((ab * end + br) / bb));
    take(within((ab * end - ar) / aa), end);
  }
  const depth = ({ near }: FlatBone, share: number) => near[0] + (near[1] - near[0]) * share;
  return { apart: best.apart, deeper: depth(a, best.s) - depth(b, best.t) };
}

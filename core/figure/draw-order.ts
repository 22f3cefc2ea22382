import { add, scale, type Vec3 } from '../frame/vec3.ts';
import { inView, nearness, type ViewName, type ViewPoint } from '../graphics/view.ts';

/** What is needed of a piece to tell its place before or behind another. Metres. */
export interface Ordered {
  readonly name: string;
  readonly bone: readonly [Vec3, Vec3];
  readonly girth: number;
}

/** How much the middles of two pieces count beside the place where their bones pass each other. */
const MIDDLES = 0.5;

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
  const late = new Map(after.map(([a, b]) => [`${a} ${b}`, true]));
  /** behind[i] holds what must be drawn before i. */
  const behind: number[][] = pieces.map(() => []);
  for (let i = 0; i < count; i++) {
    for (let j = i + 1; j < count; j++) {
      const [a, b] = [pieces[i]!.name, pieces[j]!.name];
      const sign = late.has(`${a} ${b}`) ? 1 : late.has(`${b} ${a}`) ? -1 : nearer(flat[i]!, flat[j]!);
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

interface Flat {
  readonly from: ViewPoint;
  readonly to: ViewPoint;
  readonly near: readonly [number, number];
  readonly middle: number;
  readonly girth: number;
}

function flatten({ bone: [from, to], girth }: Ordered, view: ViewName): Flat {
  return {
    from: inView(view, from),
    to: inView(view, to),
    near: [nearness(view, from), nearness(view, to)],
    middle: nearness(view, scale(add(from, to), 0.5)),
    girth,
  };
}

/** Positive where the first is nearer the eye, negative where the second is, 0 where they do not meet. */
function nearer(a: Flat, b: Flat): number {
  const [s, t, apart] = closest(a, b);
  if (apart > a.girth + b.girth + 0.02) return 0;
  const depth = (flat: Flat, share: number) => flat.near[0] + (flat.near[1] - flat.near[0]) * share;
  return depth(a, s) - depth(b, t) + MIDDLES * (a.middle - b.middle);
}

/** Where two bones pass each other in the view: shares along both, and how far apart they are there. */
function closest(a: Flat, b: Flat): [number, number, number] {
  let best: [number, number, number] = [0, 0, Number.POSITIVE_INFINITY];
  const [ax, ay] = [a.to[0] - a.from[0], a.to[1] - a.from[1]];
  const [bx, by] = [b.to[0] - b.from[0], b.to[1] - b.from[1]];
  const [rx, ry] = [a.from[0] - b.from[0], a.from[1] - b.from[1]];
  const [aa, bb, ab] = [ax * ax + ay * ay, bx * bx + by * by, ax * bx + ay * by];
  const [ar, br] = [ax * rx + ay * ry, bx * rx + by * ry];
  const within = (value: number) => (Number.isFinite(value) ? Math.min(1, Math.max(0, value)) : 0.5);
  const take = (s: number, t: number) => {
    const apart = Math.hypot(rx + ax * s - bx * t, ry + ay * s - by * t);
    if (apart < best[2]) best = [s, t, apart];
  };
  const cross = aa * bb - ab * ab;
  const s = within((ab * br - bb * ar) / cross);
  take(s, within((ab * s + br) / bb));
  for (const end of [0, 1]) {
    take(end, within((ab * end + br) / bb));
    take(within((ab * end - ar) / aa), end);
  }
  return best;
}

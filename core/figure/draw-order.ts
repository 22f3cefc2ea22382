import type { Vec3 } from '../frame/vec3.ts';
import { nearness, VIEW_AXES, type ViewName } from '../graphics/view.ts';

/** The parts of a piece that decide its place before or behind another. Metres. */
export interface Ordered {
  /** The pair of names decides where depth alone cannot: a hand lies over the shaft that it holds. */
  readonly name: string;
  /** Straight lines inside the part, end by end, metres. */
  readonly bones: readonly (readonly [Vec3, Vec3])[];
  /** How far the part reaches from those lines, metres. */
  readonly girth: number;
}

/** Weight of the middles of two pieces against the place where their bones pass each other (chosen by eye). */
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
  /** Row by row: positive where the piece of the row is drawn after that of the column. */
  const order = new Int8Array(count * count);
  for (const [late, early] of after) {
    const i = pieces.findIndex(({ name }) => name === late);
    const j = pieces.findIndex(({ name }) => name === early);
    if (i < 0 || j < 0) continue;
    order[i * count + j] = 1;
    order[j * count + i] = -1;
  }
  for (let i = 0; i < count; i++) {
    for (let j = i + 1; j < count; j++) {
      if (order[i * count + j] !== 0) continue;
      const sign = Math.sign(nearer(flat[i]!, flat[j]!));
      order[i * count + j] = sign;
      order[j * count + i] = -sign;
    }
  }
  return sorted(flat, order).map((k) => pieces[k]!);
}

/** Repeatedly takes the farthest piece that has none left behind it; a cycle of pieces is broken at its farthest. */
function sorted(flat: readonly Flat[], order: Int8Array): number[] {
  const count = flat.length;
  const made: number[] = [];
  const isLeft = new Array<boolean>(count).fill(true);
  const isFree = (i: number) => {
    for (let j = 0; j < count; j++) if (isLeft[j] && order[i * count + j]! > 0) return false;
    return true;
  };
  while (made.length < count) {
    let next = -1;
    let free = false;
    for (let i = 0; i < count; i++) {
      if (!isLeft[i]) continue;
      const now = isFree(i);
      const isFarther = now === free && (next < 0 || flat[i]!.middle < flat[next]!.middle);
      if (!isFarther && (free || !now)) continue;
      next = i;
      free = now;
    }
    isLeft[next] = false;
    made.push(next);
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

/** One bone in the picture, metres: where it begins, the way to its end, and how near the two are to the eye. */
interface FlatBone {
  readonly x: number;
  readonly y: number;
  readonly wayX: number;
  readonly wayY: number;
  readonly near: number;
  readonly nearEnd: number;
}

/** Projects a part's bones into a view. */
function flatten({ bones, girth }: Ordered, view: ViewName): Flat {
  const { right, rightSign, up } = VIEW_AXES[view];
  let sum = 0;
  const flat = bones.map((bone): FlatBone => {
    const from = bone[0];
    const to = bone[1];
    const near = nearness(view, from);
    const nearEnd = nearness(view, to);
    sum += (near + nearEnd) / 2;
    const x = from[right] * rightSign;
    const y = from[up];
    return { x, y, wayX: to[right] * rightSign - x, wayY: to[up] - y, near, nearEnd };
  });
  return { bones: flat, middle: sum / flat.length, girth };
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
  return Math.max(
    0,
    Math.min(a.x, a.x + a.wayX) - Math.max(b.x, b.x + b.wayX),
    Math.min(b.x, b.x + b.wayX) - Math.max(a.x, a.x + a.wayX),
    Math.min(a.y, a.y + a.wayY) - Math.max(b.y, b.y + b.wayY),
    Math.min(b.y, b.y + b.wayY) - Math.max(a.y, a.y + a.wayY),
  );
}

/** A share of a bone's length; that of a point is its middle. */
const within = (share: number) => (Number.isFinite(share) ? Math.min(1, Math.max(0, share)) : 0.5);

/** Where two bones pass each other in the view: how far apart they are there, and how much nearer the first is. */
function passing(a: FlatBone, b: FlatBone): { apart: number; deeper: number } {
  const [ax, ay, bx, by] = [a.wayX, a.wayY, b.wayX, b.wayY];
  const [rx, ry] = [a.x - b.x, a.y - b.y];
  const [aa, bb, ab] = [ax * ax + ay * ay, bx * bx + by * by, ax * bx + ay * by];
  const [ar, br] = [ax * rx + ay * ry, bx * rx + by * ry];
  let apart = Number.POSITIVE_INFINITY;
  let deeper = 0;
  // Where the whole lines are nearest, then each end of the one beside the other.
  for (let k = 0; k < 5; k++) {
    const end = (k - 1) >> 1;
    const cross = aa * bb - ab * ab;
    let s = k === 0 ? within((ab * br - bb * ar) / cross) : end;
    let t = end;
    if (k % 2 === 0 && k > 0) s = within((ab * end - ar) / aa);
    else t = within((ab * s + br) / bb);
    const here = Math.sqrt((rx + ax * s - bx * t) ** 2 + (ry + ay * s - by * t) ** 2);
    if (here >= apart) continue;
    apart = here;
    deeper = a.near + (a.nearEnd - a.near) * s - (b.near + (b.nearEnd - b.near) * t);
  }
  return { apart, deeper };
}

import type { ScreenDisc } from './inside-ring.ts';
import type { ScreenPoint, ScreenRect } from './screen-point.ts';

/** A label to be placed. */
export interface LabelWish {
  readonly id: string;
  /** What it speaks of. */
  readonly anchor: ScreenPoint;
  readonly width: number;
  readonly height: number;
  /** It must stay inside this. */
  readonly bounds: ScreenRect;
  /** Preferred direction, radians, 0 to the right, π/2 **down** the screen. */
  readonly toward: number;
  /** Least gap between anchor and label, pixels. */
  readonly gap: number;
}

/** Where a label is placed, and its leader line if it is far from its anchor. */
export interface PlacedLabel {
  readonly id: string;
  readonly rect: ScreenRect;
  readonly leader: readonly [ScreenPoint, ScreenPoint] | null;
  /** Where it lies from its anchor, what that place costs by itself, and what it cost in all when it was looked for. */
  readonly found: { readonly dx: number; readonly dy: number; readonly own: number; readonly cost: number };
}

export interface Obstacles {
  /** Never covered. */
  readonly hard: readonly ScreenRect[];
  /** Covered only where there is nothing better: the figure. */
  readonly soft: readonly ScreenDisc[];
}

/** An anchor is a disc this wide, pixels; other labels avoid it if there is a better place. */
const ANCHOR_PX = 6;
/** Labels are kept this far from one another, pixels. */
export const LABEL_MARGIN = 3;
/** A label farther than this beyond its own gap gets a leader line, pixels. */
const LEADER_FROM = 9;
const DIRECTIONS = 16;
const DISTANCES = [0, 7, 15, 25, 38, 54, 74, 98, 128];
const COST_OF_TURN = 16;
const COST_OF_COVER = 32;
/** The figure farther than this from an anchor is not weighed, pixels: the farthest place in the ring of candidates. */
const SOFT_REACH = 180;
/** A label stays where it was unless another place is better by this much, so that labels do not flicker in a drag. */
const STAYING_BONUS = 28;
const LATTICE = 10;

interface Placement {
  readonly rect: ScreenRect;
  readonly leader: readonly [ScreenPoint, ScreenPoint] | null;
  /** Cost of the place by itself, and with what it covers. */
  readonly own: number;
  readonly cost: number;
}

/** While the hand moves a label follows its anchor until its place has become worse by this much. */
const FOLLOWING_SLACK = 12;

/** Places of the drawing before, and whether labels keep to them while the hand moves. */
export interface EarlierPlaces {
  readonly placed: ReadonlyMap<string, PlacedLabel>;
  readonly following: boolean;
}

const NOTHING_BEFORE: EarlierPlaces = { placed: new Map(), following: false };

/**
 * Finds places for labels, first come first served: no label ever covers another, a hard obstacle, or a leader line.
 * Deterministic. Places of the drawing before are kept while they are nearly as good. A label that finds no place near
 * its anchor goes to the nearest free place in its bounds, with a leader; where handles take up all of them it may lie
 * under one. Only a label larger than its bounds, or bounds full of labels, leave one out.
 */
export function placeLabels(
  wishes: readonly LabelWish[],
  obstacles: Obstacles,
  before: EarlierPlaces = NOTHING_BEFORE,
): PlacedLabel[] {
  const placed: PlacedLabel[] = [];
  const anchors = wishes.map(({ anchor }) => ({ ...anchor, radius: ANCHOR_PX }));
  const allSoft = [...obstacles.soft, ...anchors];
  for (const [k, wish] of wishes.entries()) {
    const was = before.placed.get(wish.id) ?? null;
    const soft = allSoft.filter((disc) => disc !== anchors[k] && isNear(disc, wish));
    const ground: Ground = {
      obstacles: { ...obstacles, soft },
      placed,
      was: was?.rect ?? null,
      leaders: 'apart',
    };
    const followed = was && before.following ? following(wish, was, ground) : null;
    if (followed) {
      placed.push({ ...followed, found: was!.found });
      continue;
    }
    const best =
      bestNear(wish, ground) ??
      nearestOnLattice(wish, ground) ??
      nearestOnLattice(wish, { ...ground, leaders: 'may meet' }) ??
      nearestOnLattice(wish, { ...ground, leaders: 'may meet', obstacles: NO_OBSTACLES }) ??
      nearestOnLattice(wish, { ...ground, leaders: 'none', obstacles: NO_OBSTACLES });
    if (best) placed.push(placedLabel(wish, best));
  }
  return placed;
}

const NO_OBSTACLES: Obstacles = { hard: [], soft: [] };

/** Whether a disc can matter to a label at all. */
function isNear({ x, y, radius }: ScreenDisc, { anchor, width }: LabelWish): boolean {
  const reach = SOFT_REACH + width + radius;
  const dx = x - anchor.x;
  const dy = y - anchor.y;
  return dx * dx + dy * dy < reach * reach;
}

function placedLabel({ id, anchor }: LabelWish, { rect, leader, own, cost }: Placement): PlacedLabel {
  return { id, rect, leader, found: { dx: rect.left - anchor.x, dy: rect.top - anchor.y, own, cost } };
}

/** The label as far from its anchor as it was; null where that has become a worse place, or none. */
function following(
  wish: LabelWish,
  { id, found }: PlacedLabel,
  ground: Ground,
): Omit<PlacedLabel, 'found'> | null {
  const { width, height, anchor } = wish;
  const rect = { left: anchor.x + found.dx, top: anchor.y + found.dy, width, height };
  const most = found.cost + FOLLOWING_SLACK;
  const now = weigh(wish, rect, { ground: { ...ground, was: null }, cost: found.own, most });
  if (!now || now.cost > most) return null;
  return { id, rect: now.rect, leader: now.leader };
}

interface Ground {
  readonly obstacles: Obstacles;
  readonly placed: readonly PlacedLabel[];
  readonly was: ScreenRect | null;
  /** If there are very many labels, leader lines may cross one another, never a label; if that fails too, there is none. */
  readonly leaders: 'apart' | 'may meet' | 'none';
}

function bestNear(wish: LabelWish, ground: Ground): Placement | null {
  let best: Placement | null = null;
  for (const distance of DISTANCES) {
    if (best && distance > best.cost + STAYING_BONUS) break;
    for (let k = 0; k < DIRECTIONS; k++) {
      const turn = turnOf(k);
      const cost = distance + Math.abs(turn) * COST_OF_TURN;
      if (best && cost - STAYING_BONUS >= best.cost) continue;
      const candidate = weigh(wish, rectToward(wish, distance, turn), { ground, cost, most: best?.cost });
      if (candidate && (!best || candidate.cost < best.cost)) best = candidate;
    }
  }
  return best;
}

/** 0, +1, −1, +2, −2 … steps of the circle. */
function turnOf(k: number): number {
  const step = Math.ceil(k / 2) * (k % 2 ? 1 : -1);
  return (step * 2 * Math.PI) / DIRECTIONS;
}

/** The label's rectangle lying `distance` beyond its gap in its direction turned by `turn`. */
function rectToward(wish: LabelWish, distance: number, turn: number): ScreenRect {
  const dx = Math.cos(wish.toward + turn);
  const dy = Math.sin(wish.toward + turn);
  const reach =
    wish.gap +
    distance +
    Math.min(wish.width / 2 / Math.abs(dx || 1e-9), wish.height / 2 / Math.abs(dy || 1e-9));
  return {
    left: wish.anchor.x + dx * reach - wish.width / 2,
    top: wish.anchor.y + dy * reach - wish.height / 2,
    width: wish.width,
    height: wish.height,
  };
}

/** The placement with its cost; null where it would collide. A place that costs more than `most` is not weighed to the end. */
function weigh(
  wish: LabelWish,
  rect: ScreenRect,
  { ground, cost, most = Number.POSITIVE_INFINITY }: { ground: Ground; cost: number; most?: number },
): Placement | null {
  if (!contains(wish.bounds, rect)) return null;
  const roomy = grown(rect, LABEL_MARGIN);
  if (ground.obstacles.hard.some((other) => overlap(rect, other))) return null;
  const leader = ground.leaders === 'none' ? null : leaderTo(wish, rect);
  for (const other of ground.placed) {
    if (overlap(roomy, other.rect)) return null;
    if (other.leader && crosses(other.leader, roomy)) return null;
    if (leader && crosses(leader, other.rect)) return null;
    if (leader && other.leader && ground.leaders === 'apart' && meet(leader, other.leader)) return null;
  }
  const staying = ground.was && sameShift(wish, rect, ground.was) ? STAYING_BONUS : 0;
  const covered = cover(rect, ground.obstacles.soft, (most - cost + staying) / COST_OF_COVER);
  return { rect, leader, own: cost, cost: cost + covered * COST_OF_COVER - staying };
}

/** Whether the label stood at about this place before (its anchor may have moved a little since). */
function sameShift(wish: LabelWish, rect: ScreenRect, was: ScreenRect): boolean {
  return Math.abs(rect.left - was.left) < wish.height / 2 && Math.abs(rect.top - was.top) < wish.height / 2;
}

/** Last resort: the nearest free place anywhere in the bounds. */
function nearestOnLattice(wish: LabelWish, ground: Ground): Placement | null {
  const { left, top, width, height } = wish.bounds;
  let best: Placement | null = null;
  for (let y = top; y + wish.height <= top + height; y += LATTICE) {
    for (let x = left; x + wish.width <= left + width; x += LATTICE) {
      const rect = { left: x, top: y, width: wish.width, height: wish.height };
      const away = Math.hypot(x + wish.width / 2 - wish.anchor.x, y + wish.height / 2 - wish.anchor.y);
      if (best && away >= best.cost) continue;
      best = weigh(wish, rect, { ground, cost: away }) ?? best;
    }
  }
  return best;
}

/** From the anchor to the nearest point of the label; null when the label stands close by. */
function leaderTo(wish: LabelWish, rect: ScreenRect): readonly [ScreenPoint, ScreenPoint] | null {
  const end = {
    x: Math.min(rect.left + rect.width, Math.max(rect.left, wish.anchor.x)),
    y: Math.min(rect.top + rect.height, Math.max(rect.top, wish.anchor.y)),
  };
  const away = Math.hypot(end.x - wish.anchor.x, end.y - wish.anchor.y);
  return away > wish.gap + LEADER_FROM ? [wish.anchor, end] : null;
}

function contains(outer: ScreenRect, inner: ScreenRect): boolean {
  return (
    inner.left >= outer.left &&
    inner.top >= outer.top &&
    inner.left + inner.width <= outer.left + outer.width &&
    inner.top + inner.height <= outer.top + outer.height
  );
}

function grown({ left, top, width, height }: ScreenRect, by: number): ScreenRect {
  return { left: left - by, top: top - by, width: width + 2 * by, height: height + 2 * by };
}

/** Whether two rectangles share any area. */
export function overlap(a: ScreenRect, b: ScreenRect): boolean {
  return (
    a.left < b.left + b.width &&
    b.left < a.left + a.width &&
    a.top < b.top + b.height &&
    b.top < a.top + a.height
  );
}

/** How much soft ground a label covers: 0 to about 1 for each disc, by how deep it lies in it. It stops counting at `most`. */
function cover(rect: ScreenRect, discs: readonly ScreenDisc[], most: number): number {
  let sum = 0;
  for (const { x, y, radius } of discs) {
    const dx = x < rect.left ? rect.left - x : Math.max(0, x - rect.left - rect.width);
    if (dx >= radius) continue;
    const dy = y < rect.top ? rect.top - y : Math.max(0, y - rect.top - rect.height);
    if (dy >= radius) continue;
    const away = Math.sqrt(dx * dx + dy * dy);
    if (away >= radius) continue;
    sum += 0.35 + (radius - away) / radius;
    if (sum > most) break;
  }
  return sum;
}

/** Whether a segment passes through a rectangle (Liang and Barsky's clipping test). */
export function crosses([a, b]: readonly [ScreenPoint, ScreenPoint], rect: ScreenRect): boolean {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  let from = 0;
  let to = 1;
  const edges: [number, number][] = [
    [-dx, a.x - rect.left],
    [dx, rect.left + rect.width - a.x],
    [-dy, a.y - rect.top],
    [dy, rect.top + rect.height - a.y],
  ];
  for (const [toward, room] of edges) {
    if (toward === 0) {
      if (room < 0) return false;
      continue;
    }
    const at = room / toward;
    if (toward < 0) from = Math.max(from, at);
    else to = Math.min(to, at);
  }
  return from < to;
}

/** Whether two segments cross each other between their ends. */
function meet(
  [a, b]: readonly [ScreenPoint, ScreenPoint],
  [c, d]: readonly [ScreenPoint, ScreenPoint],
): boolean {
  const side = (p: ScreenPoint, q: ScreenPoint, r: ScreenPoint) =>
    (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}

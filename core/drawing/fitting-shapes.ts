import type { Seat } from '../document/seat-schema.ts';
import { type SeatFrame, sideSign } from '../frame/mirror.ts';
import type { Vec3 } from '../frame/vec3.ts';
import { convexRing } from '../graphics/convex-ring.ts';
import { fairRows } from '../graphics/fair.ts';
import { flatOval, hullRing, type Oval } from '../graphics/oval.ts';
import { areaOf, type Line, lineThrough, ringThrough, type Shape } from '../graphics/shape.ts';
import { inView, type ViewName, type ViewPoint } from '../graphics/view.ts';
import { onPart, type Part, topOf } from '../parts/part.ts';
import { sectionOfPart } from '../parts/part-section.ts';
import type { SeatParts } from '../parts/seat-parts.ts';

/** A seat's fittings in place, boat frame, metres. */
export interface DrawnFittings {
  /** The fittings as documented. */
  readonly seat: Pick<Seat, 'kneePad' | 'rearRest' | 'frontFoot'>;
  /** Where the seat stands in the boat. */
  readonly frame: SeatFrame;
  /** The same fittings as solids in the boat's frame, metres. */
  readonly parts: SeatParts;
}

/** What lies under the paddler, and what lies over: from behind the rest, and the strap over the foot. */
export interface FittingShapes {
  /** Painted before the paddler. */
  readonly under: readonly Shape[];
  /** Painted after the paddler: what holds the foot. */
  readonly over: readonly Shape[];
}

/** Directions in which the recess's outline is sampled. */
const DIRECTIONS = 48;
const WOOD = { role: 'wood', outline: 'woodLine' } as const;
/** Half-breadth of the recess as a share of the pad's width, and of its trough for the shin where it leaves the pad. */
const RECESS = 0.34;
/** The shin is narrower than the knee, and so is its trough. */
const TROUGH = 0.22;
/** A front foot's sheet thinner than this is not seen, metres. */
const THINNEST_SEEN = 0.003;

/** Pad with its recess, rest with its strap and what is under the front foot, as a view shows them. */
export function fittingShapes(fittings: DrawnFittings, view: ViewName): FittingShapes {
  const { rearRest, frontFoot } = fittings.parts;
  const rest = areaOf('rearRest', WOOD, [silhouette(rearRest, view)]);
  const strap = strapShapes(fittings, view);
  if (view === 'plan') {
    const top = areaOf('rearRest', WOOD, [topRing(rearRest)]);
    return { under: [...padFromAbove(fittings), footprint(frontFoot), top, edgeOf(rearRest)], over: strap };
  }
  const { foreHeight, aftHeight } = frontFoot.shape;
  const foot =
    Math.max(foreHeight, aftHeight) > THINNEST_SEEN
      ? [areaOf('frontFoot', WOOD, [silhouette(frontFoot, view)])]
      : [];
  const pad = areaOf('kneePad', WOOD, [view === 'profile' ? padAlong(fittings) : padAcross(fittings)]);
  if (view === 'profile') return { under: [pad, rest, ...foot], over: strap };
  return { under: [...foot, pad], over: [...strap, rest] };
}

/** A solid's outline in a view: all its parts are convex. */
function silhouette({ vertices }: Part, view: ViewName): Line {
  return ringThrough(convexRing(vertices.map((corner) => inView(view, corner))));
}

/** A block's top from above. */
function topRing(part: Part): Line {
  return ringThrough(topOf(part).map((corner) => inView('plan', corner)));
}

/** A level disc. */
const flat = (at: Vec3, radius: number): Oval => ({
  at,
  axes: [
    { x: radius, y: 0, z: 0 },
    { x: 0, y: radius, z: 0 },
    { x: 0, y: 0, z: 0 },
  ],
});

/** The pad with the hollow that knee and shin lie in, and a line half way down it. */
function padFromAbove({ seat, parts }: DrawnFittings): Shape[] {
  const { place, shape } = parts.kneePad;
  const { widthM } = seat.kneePad;
  const hollow = (share: number): Line => {
    const knee = flat({ x: place.x, y: place.y, z: 0 }, RECESS * widthM * share);
    const end = onPart(place, shape.topAft, 0);
    const half = TROUGH * widthM * share;
    const across = { x: -Math.sin(place.turn) * half, y: Math.cos(place.turn) * half, z: 0 };
    const nothing = { x: 0, y: 0, z: 0 };
    const trough: Oval = { at: { ...end, z: 0 }, axes: [across, nothing, nothing] };
    return hullRing(
      [knee, trough].map((oval) => flatOval(oval, 'plan')),
      DIRECTIONS,
    );
  };
  const inner = hollow(0.6);
  return [
    areaOf('kneePad', WOOD, [topRing(parts.kneePad)]),
    areaOf('kneePad', { role: 'recess', outline: 'woodLine' }, [hollow(1)]),
    { kind: 'line', of: 'kneePad', role: 'woodLine', weight: 'detail', lines: [inner] },
  ];
}

/** Round a sole from heel to toe: share of the foot's length, and half-breadth as a share of it. */
const SOLE = fairRows(
  [
    [0, 0.02],
    [0.02, 0.08],
    [0.1, 0.12],
    [0.3, 0.11],
    [0.5, 0.125],
    [0.7, 0.17],
    [0.82, 0.165],
    [0.93, 0.12],
    [1, 0.03],
  ],
  2,
);

/** The place of the front foot's sole. */
function footprint({ place, shape }: Part): Shape {
  const length = shape.topFore - shape.topAft;
  const edge = (side: number): ViewPoint[] =>
    SOLE.map(([along, across]) => {
      const { x, y } = onPart(place, shape.topAft + along! * length, side * across! * length);
      return [x, y];
    });
  const ring = [...edge(1), ...edge(-1).toReversed()];
  return {
    kind: 'line',
    of: 'frontFoot',
    role: 'woodLine',
    weight: 'contour',
    lines: [lineThrough([...ring, ring[0]!])],
  };
}

/** The rest's bearing edge, that the foot stands against. */
function edgeOf(rest: Part): Shape {
  const [a, b] = topOf(rest) as [Vec3, Vec3];
  return {
    kind: 'line',
    of: 'rearRest',
    role: 'woodLine',
    weight: 'contour',
    lines: [lineThrough([inView('plan', a), inView('plan', b)])],
  };
}

/** From the side the pad is cut along its recess, so that the knee in it is visible. */
function padAlong({ seat, frame, parts }: DrawnFittings): Line {
  const { kneePad } = seat;
  const xs = parts.kneePad.vertices.map(({ x }) => x);
  return blockRing({
    ends: [Math.min(...xs), Math.max(...xs)],
    dip: { at: frame.stationX - kneePad.aftM, half: kneePad.lengthM * RECESS, depth: kneePad.recessDepthM },
    floor: Math.min(...parts.kneePad.vertices.map(({ z }) => z)),
    low: frame.floorZ + kneePad.heightM,
  });
}

/** From behind it is cut at the knee's bearing point: its true section there. */
function padAcross({ seat, frame, parts }: DrawnFittings): Line {
  const { kneePad } = seat;
  const ys = sectionOfPart(parts.kneePad, parts.kneePad.place.x).map(({ y }) => -y);
  return blockRing({
    ends: [Math.min(...ys), Math.max(...ys)],
    dip: { at: -parts.kneePad.place.y, half: kneePad.widthM * RECESS, depth: kneePad.recessDepthM },
    floor: Math.min(...parts.kneePad.vertices.map(({ z }) => z)),
    low: frame.floorZ + kneePad.heightM,
  });
}

/** A block cut square, with the dip of its recess. */
function blockRing(given: {
  ends: readonly [number, number];
  dip: { at: number; half: number; depth: number };
  floor: number;
  low: number;
}): Line {
  const { ends, dip, floor, low } = given;
  const top = low + dip.depth;
  const curve = Array.from({ length: 25 }, (_, k): ViewPoint => {
    const share = k / 12 - 1;
    return [dip.at + share * dip.half, low + (dip.depth * (1 - Math.cos(Math.PI * share))) / 2];
  });
  return ringThrough([[ends[0], floor], [ends[0], top], ...curve, [ends[1], top], [ends[1], floor]]);
}

/** How far a strap stands out ahead of the rest's edge, over the foot; its breadth; and over the rest's edge, metres. */
const STRAP = { ahead: 0.062, half: 0.011, over: 0.012 };

/** The strap over the rear foot, from one end of the rest's edge to the other: a band, a line where it is seen on edge. */
function strapShapes({ seat, frame, parts }: DrawnFittings, view: ViewName): Shape[] {
  const { rearRest } = seat;
  if (rearRest.strap === 'none') return [];
  const z = frame.floorZ + rearRest.heightM + STRAP.over;
  const points = Array.from({ length: 17 }, (_, k): Vec3 => {
    const share = k / 8 - 1;
    const at = onPart(
      parts.rearRest.place,
      STRAP.ahead * Math.sqrt(1 - share ** 2),
      share * rearRest.widthM * 0.42 * sideSign(frame.side),
    );
    return { ...at, z };
  });
  const line = points.map((point) => inView(view, point));
  if (view === 'plan') {
    return [{ kind: 'line', of: 'rearRest', role: 'strap', weight: 'contour', lines: [lineThrough(line)] }];
  }
  const xs = line.map(([x]) => x);
  const [low, high] = [Math.min(...xs), Math.max(...xs)];
  const band = ringThrough([
    [low, z - STRAP.half],
    [high, z - STRAP.half],
    [high, z + STRAP.half],
    [low, z + STRAP.half],
  ]);
  return [areaOf('rearRest', { role: 'strap', outline: 'woodLine' }, [band])];
}

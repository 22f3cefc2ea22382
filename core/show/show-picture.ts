import { type Disc, discHull } from '../figure/disc-hull.ts';
import { figureSolids, JOINTS, type Limb, type Solid } from '../figure/figure-solids.ts';
import { paddleShape } from '../figure/paddle-shape.ts';
import { along, type Vec3 } from '../frame/vec3.ts';
import type { Hull } from '../hull/hull.ts';
import { halfBreadth, keelHeight, sectionAt, sheerHeight } from '../hull/section-at.ts';
import { type Board, boardHalfWidthAt, boardStations, boardTopAt } from '../parts/board.ts';
import type { Part } from '../parts/part.ts';
import { sectionOfPart } from '../parts/part-section.ts';
import { seatParts } from '../parts/seat-parts.ts';
import { convexRing } from '../setout/convex-ring.ts';
import type { ShowScene } from './show-scene.ts';

/** From where the paddler is seen. From the side the bow is to the right; from behind port is on the left. */
export type ShowView = 'side' | 'behind' | 'above';

/** What a shape is, for its colour. */
export const SHOW_TONES = [
  'water',
  'hull',
  'board',
  'wood',
  'limbFar',
  'trunk',
  'limbNear',
  'shaft',
  'blade',
  'joint',
  'hullLine',
  'waterLine',
] as const;
/** A shape's kind: paper and screen give each their own colour. */
export type ShowTone = (typeof SHOW_TONES)[number];

/** Metres to the right and up in the view, from the seat's mark at the hull's lowest point. */
export type ViewPoint = readonly [right: number, up: number];

/** An area (its rings are one shape) or an open line. */
export interface ShowShape {
  readonly tone: ShowTone;
  readonly kind: 'area' | 'line';
  readonly rings: readonly (readonly ViewPoint[])[];
}

/** Boat shown on each side of the paddler, metres. */
const BOAT_EACH_WAY = 1.45;
const READINGS = 41;
/** How deep the water is drawn under the hull, metres. */
const WATER_DEPTH = 1;
/** Radius of a joint's circle, share of stature. */
const JOINT_SHARE = 0.0075;
const SHAFT_RADIUS = 0.013;

/** The picture of a scene in a hull, from the far to the near. Metres in the view. */
export function showPicture(scene: ShowScene, hull: Hull, view: ShowView): ShowShape[] {
  const see = projection(scene, view);
  const water = waterShapes(scene, view);
  return [
    ...water.filter(({ tone }) => tone === 'water'),
    ...hullShapes(scene, hull, view),
    // Over the hull: how the boat floats is seen.
    ...water.filter(({ tone }) => tone === 'waterLine'),
    ...fittingShapes(scene, view, see),
    ...figureShapes(scene, view, see),
    ...jointShapes(scene, view, see),
  ];
}

type See = (point: Vec3) => ViewPoint;

function projection({ frame }: ShowScene, view: ShowView): See {
  if (view === 'behind') return ({ y, z }) => [-y, z];
  if (view === 'above') return ({ x, y }) => [x - frame.stationX, y];
  return ({ x, z }) => [x - frame.stationX, z];
}

/** How far a point is from the eye in a view, metres; only differences matter. */
function depth({ x, y, z }: Vec3, view: ShowView): number {
  return view === 'side' ? y : view === 'behind' ? x : -z;
}

const area = (tone: ShowTone, ...rings: (readonly ViewPoint[])[]): ShowShape => ({
  tone,
  kind: 'area',
  rings,
});
const open = (tone: ShowTone, ...rings: (readonly ViewPoint[])[]): ShowShape => ({
  tone,
  kind: 'line',
  rings,
});

function waterShapes({ water, frame }: ShowScene, view: ShowView): ShowShape[] {
  if (!water || view === 'above') return [];
  const wide = BOAT_EACH_WAY + 0.15;
  const rise = view === 'side' ? Math.tan(water.trim) : 0;
  const level = (right: number) => water.draft - (right + (view === 'side' ? frame.stationX : 0)) * rise;
  const surface: ViewPoint[] = [
    [-wide, level(-wide)],
    [wide, level(wide)],
  ];
  return [
    area('water', [...surface, [wide, -WATER_DEPTH], [-wide, -WATER_DEPTH]]),
    open('waterLine', surface),
  ];
}

function hullShapes({ frame, board, seat }: ShowScene, hull: Hull, view: ShowView): ShowShape[] {
  if (view === 'behind') {
    const at = frame.stationX - seat.kneePad.aftM;
    const port = sectionAt(hull, at).map(({ y, z }): ViewPoint => [-y, z]);
    const ring = [...[...port].reverse(), ...port.map(([y, z]): ViewPoint => [-y, z])];
    const half = boardHalfWidthAt(board, at);
    const top = boardTopAt(board, at);
    return [
      area('hull', ring),
      open('hullLine', ring),
      boardShape(board, [
        [-half, top],
        [half, top],
      ]),
    ];
  }
  const low = Math.max(hull.aftX, frame.stationX - BOAT_EACH_WAY);
  const high = Math.min(hull.foreX, frame.stationX + BOAT_EACH_WAY);
  const xs = Array.from({ length: READINGS }, (_, k) => low + ((high - low) * k) / (READINGS - 1));
  const upper = xs.map((x): ViewPoint => {
    const sheer = sheerHeight(hull, x);
    return [x - frame.stationX, view === 'side' ? sheer : (halfBreadth(hull, x, sheer) ?? 0)];
  });
  const lower = xs.map(
    (x, k): ViewPoint => [upper[k]![0], view === 'side' ? keelHeight(hull, x) : -upper[k]![1]],
  );
  const whole = area('hull', [...upper, ...[...lower].reverse()]);
  const edges = open('hullLine', upper, lower);
  return view === 'side' ? [whole, edges, boardFromSide(board, frame, [low, high])] : [whole, edges];
}

/** The board from its after to its fore end, as far as the picture goes. */
function boardFromSide(
  board: Board,
  { stationX }: ShowScene['frame'],
  [low, high]: readonly [number, number],
): ShowShape {
  const within = (x: number) => Math.min(high, Math.max(low, x));
  const top = boardStations(board).map((x): ViewPoint => {
    const at = within(x);
    return [at - stationX, boardTopAt(board, at)];
  });
  return boardShape(board, top);
}

/** A board under the line of its top. */
function boardShape({ thicknessM }: Board, top: readonly ViewPoint[]): ShowShape {
  return area('board', [...top, ...top.map(([right, up]): ViewPoint => [right, up - thicknessM]).reverse()]);
}

/** A front foot's sheet thinner than this is not seen in the picture, metres. */
const THINNEST_SEEN = 0.003;

/** Pad, rest and what is under the front foot; from behind the pad is cut at the knee's bearing point. */
function fittingShapes({ seat, frame, footLength, board }: ShowScene, view: ShowView, see: See): ShowShape[] {
  const { kneePad, rearRest, frontFoot } = seatParts(seat, {
    seat: 0,
    frame,
    footLength,
    board,
    padHolePitchM: null,
    restHolePitchM: null,
  });
  const silhouette = ({ vertices }: Part) => area('wood', convexRing(vertices.map(see)));
  const { foreHeight, aftHeight } = frontFoot.shape;
  const x = kneePad.place.x;
  const pad =
    view === 'behind'
      ? area(
          'wood',
          sectionOfPart(kneePad, x).map(({ y, z }) => see({ x, y, z })),
        )
      : silhouette(kneePad);
  return [
    pad,
    silhouette(rearRest),
    ...(Math.max(foreHeight, aftHeight) > THINNEST_SEEN ? [silhouette(frontFoot)] : []),
  ];
}

/** Limbs and paddle, the farthest from the eye first; a grip always lies over the shaft. */
function figureShapes(scene: ShowScene, view: ShowView, see: See): ShowShape[] {
  const solids = figureSolids(scene, scene.body);
  const near = nearLimbs(solids, view);
  const pieces = solids.map((solid) => ({
    depth: depth(solid.middle, view),
    shape: limbShape(solid, near, see),
  }));
  const paddle = paddlePieces(scene, view, see);
  const paddleDepth = paddle[0]?.depth ?? 0;
  const grips = solids.map(({ grips: held }) => held);
  const ordered = [
    ...pieces.map((piece, k) =>
      grips[k] ? { ...piece, depth: Math.min(piece.depth, paddleDepth - 1e-6) } : piece,
    ),
    ...paddle,
  ];
  return ordered.sort((a, b) => b.depth - a.depth).map(({ shape }) => shape);
}

/** Of each pair of limbs the one nearer the eye, with trunk and head. */
function nearLimbs(solids: readonly Solid[], view: ShowView): ReadonlySet<Limb> {
  const nearest = (limb: Limb) =>
    Math.min(...solids.filter((s) => s.limb === limb).map(({ middle }) => depth(middle, view)));
  const legs: Limb = nearest('kneelingLeg') <= nearest('frontLeg') ? 'kneelingLeg' : 'frontLeg';
  const arms: Limb = nearest('lowerArm') <= nearest('topArm') ? 'lowerArm' : 'topArm';
  return new Set<Limb>([legs, arms]);
}

function limbShape({ limb, hulls }: Solid, near: ReadonlySet<Limb>, see: See): ShowShape {
  const body = limb === 'trunk' || limb === 'head';
  const tone = body ? 'trunk' : near.has(limb) ? 'limbNear' : 'limbFar';
  const rings = hulls.map((balls) =>
    discHull(
      balls.map(({ at, radius }): Disc => {
        const [x, y] = see(at);
        return { x, y, radius };
      }),
    ),
  );
  return area(tone, ...rings);
}

function paddlePieces(scene: ShowScene, view: ShowView, see: See): { depth: number; shape: ShowShape }[] {
  const { topHand, lowerHand } = scene.points;
  const paddle = paddleShape(scene.seat.paddle, { top: topHand, lower: lowerHand });
  if (!paddle) return [];
  const at = depth(along(topHand, lowerHand, 0.5), view);
  const rod = (...ends: readonly (readonly [Vec3, number])[]) =>
    discHull(
      ends.map(([end, radius]): Disc => {
        const [x, y] = see(end);
        return { x, y, radius };
      }),
    );
  const [top, throat] = paddle.shaft;
  const [left, right] = paddle.grip;
  const shaft = [
    rod([top, SHAFT_RADIUS], [throat, SHAFT_RADIUS]),
    rod([throat, SHAFT_RADIUS], [paddle.spine, SHAFT_RADIUS / 3]),
    rod([left, SHAFT_RADIUS], [right, SHAFT_RADIUS]),
  ];
  return [
    { depth: at, shape: area('blade', paddle.blade.map(see)) },
    { depth: at, shape: area('shaft', ...shaft) },
  ];
}

function jointShapes(scene: ShowScene, view: ShowView, see: See): ShowShape[] {
  const near = nearLimbs(figureSolids(scene, scene.body), view);
  const radius = JOINT_SHARE * scene.body.stature;
  return JOINTS.filter(([, limb]) => near.has(limb)).map(([name]) => {
    const [x, y] = see(scene.points[name]);
    return area('joint', discHull([{ x, y, radius }]));
  });
}

import type { BoatPoint } from '../frame/vec3.ts';
import { type Board, boardTopAt } from './board.ts';

/** The parts that a seat stands on. */
export const PART_NAMES = ['kneePad', 'rearRest', 'frontFoot'] as const;
/** A part by its name. */
export type PartName = (typeof PART_NAMES)[number];

/** A place in plan, metres, boat frame. */
export interface PlanPoint {
  /** Forward of amidships. */
  readonly x: number;
  /** To port of the centreline. */
  readonly y: number;
}

/** A fixing hole as a straight cylinder over the whole length of its bolt or screw. Boat frame, metres. */
export interface FixingHole {
  /** Lower end: the underside of the head below the floorboard; on rails the top of the board, which has no hole. */
  readonly from: BoatPoint;
  /** Whether it goes through the floorboard: not where the part is bolted to rails. */
  readonly throughBoard: boolean;
  /** Upper end, in the wood. */
  readonly to: BoatPoint;
  /** Metres. */
  readonly diameterM: number;
}

/**
 * A part's side profile, drawn out across it: x forward along its own axis from its bearing point, metres. Heights count from
 * the floorboard's top at the seat's datum.
 */
export interface PartShape {
  /** Ends of the base, and of the top. */
  readonly baseFore: number;
  /** As `baseFore`, at the aft end. */
  readonly baseAft: number;
  /** Fore end of the top. */
  readonly topFore: number;
  /** Aft end of the top. */
  readonly topAft: number;
  /** Half of its width. */
  readonly half: number;
  /** Heights of the top at its fore end and at its aft end. */
  readonly foreHeight: number;
  /** As `foreHeight`, at the aft end. */
  readonly aftHeight: number;
}

/** Where a part's own frame stands: its bearing point's place and its turn, radians, counter-clockwise from above. */
export interface PartPlace {
  /** Forward of amidships, metres. */
  readonly x: number;
  /** To port of the centreline, metres. */
  readonly y: number;
  readonly turn: number;
}

/**
 * A part as a closed solid in the boat frame, metres. Eight corners: the base's fore port, fore starboard, aft starboard, aft
 * port; then the top's in the same order. The base lies on the floorboard's top (or in its plane, where the part overhangs it).
 */
export interface Part {
  /** Index of the seat, bow first. */
  readonly seat: number;
  readonly part: PartName;
  /** Eight corners, in the order above. */
  readonly vertices: readonly BoatPoint[];
  /** Places of corners in `vertices`, counter-clockwise as seen from outside. */
  readonly faces: readonly (readonly number[])[];
  /** Pairs of places in `vertices`. */
  readonly edges: readonly (readonly [number, number])[];
  readonly holes: readonly FixingHole[];
  readonly place: PartPlace;
  readonly shape: PartShape;
}

/** Faces of every part: base, top, fore, aft, port, starboard. */
const FACES = [
  [0, 1, 2, 3],
  [7, 6, 5, 4],
  [1, 0, 4, 5],
  [3, 2, 6, 7],
  [0, 3, 7, 4],
  [2, 1, 5, 6],
] as const;

/** Edges of every part: round the base, round the top, and the four between them. */
const EDGES: readonly (readonly [number, number])[] = [0, 1, 2, 3].flatMap((k) => {
  const next = (k + 1) % 4;
  return [[k, next] as const, [k + 4, next + 4] as const, [k, k + 4] as const];
});

/** Mean of some places in plan, metres. */
export function planMiddle(points: readonly PlanPoint[]): PlanPoint {
  const mean = (of: (point: PlanPoint) => number) =>
    points.reduce((sum, point) => sum + of(point), 0) / points.length;
  return { x: mean(({ x }) => x), y: mean(({ y }) => y) };
}

/** A place in a part's own frame (x along its axis, y to port) as a place in plan of the boat frame, metres. */
export function onPart({ x, y, turn }: PartPlace, along: number, across: number): PlanPoint {
  const cos = Math.cos(turn);
  const sin = Math.sin(turn);
  return { x: x + along * cos - across * sin, y: y + along * sin + across * cos };
}

/** The inverse of `onPart`: a place in plan in the part's own frame, metres. */
export function inPart({ x, y, turn }: PartPlace, at: PlanPoint): { along: number; across: number } {
  const [dx, dy] = [at.x - x, at.y - y];
  return {
    along: dx * Math.cos(turn) + dy * Math.sin(turn),
    across: dy * Math.cos(turn) - dx * Math.sin(turn),
  };
}

/** The solid of a profile at a place, without holes. `floorZ` is the floorboard's top at the seat's datum. */
export function solidPart(
  name: { readonly seat: number; readonly part: PartName },
  { place, shape }: Pick<Part, 'place' | 'shape'>,
  { board, floorZ }: { readonly board: Board; readonly floorZ: number },
): Part {
  const { baseFore, baseAft, topFore, topAft, half, foreHeight, aftHeight } = shape;
  const base = (along: number, across: number): BoatPoint => {
    const at = onPart(place, along, across);
    return { ...at, z: boardTopAt(board, at.x) };
  };
  const top = (along: number, across: number, height: number): BoatPoint => ({
    ...onPart(place, along, across),
    z: floorZ + height,
  });
  const vertices = [
    base(baseFore, half),
    base(baseFore, -half),
    base(baseAft, -half),
    base(baseAft, half),
    top(topFore, half, foreHeight),
    top(topFore, -half, foreHeight),
    top(topAft, -half, aftHeight),
    top(topAft, half, aftHeight),
  ];
  return { ...name, vertices, faces: FACES, edges: EDGES, holes: [], place, shape };
}

/** Corners of a part's base in plan: fore port, fore starboard, aft starboard, aft port. Metres, boat frame. */
export function footprintOf({ place, shape }: Pick<Part, 'place' | 'shape'>): PlanPoint[] {
  const { half, baseFore, baseAft } = shape;
  return [
    onPart(place, baseFore, half),
    onPart(place, baseFore, -half),
    onPart(place, baseAft, -half),
    onPart(place, baseAft, half),
  ];
}

/** The four corners of a part's top, in the same order. */
export function topOf({ vertices }: Pick<Part, 'vertices'>): BoatPoint[] {
  return vertices.slice(4);
}

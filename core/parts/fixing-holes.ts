import { type Board, boardHalfWidthAt, boardTopAt } from './board.ts';
import { type FixingHole, inPart, onPart, type PartPlace, type PartShape, type PlanPoint } from './part.ts';

/** Wood left between a bolt and the edge of its block, metres: three diameters of a 6 mm bolt (common practice). */
const EDGE = 0.02;
/** Board left between a hole's middle and the board's side, metres: two diameters of a 6 mm bolt (common practice). */
const BOARD_EDGE = 0.012;
/** Half the widest useful spacing of two bolts, metres (estimate): wider gains nothing. */
const WIDEST_HALF = 0.045;
/**
 * Half the least spacing of two bolts, metres (estimate): closer ones do not stop a block from turning, so one is used and the
 * builder is told.
 */
const NARROWEST_HALF = 0.015;

/**
 * How far a bolt's head and washer stand out below the board, metres: 4.0 + 1.6 mm for M6 (ISO 4017, ISO 7089, from memory).
 */
const BELOW_BOARD = 0.006;
/** How far a bolt's insert or a screw goes up into the block at most, metres (common practice, no source). */
const INTO_WOOD = 0.03;
/** Wood left above its point, metres (common practice, no source). */
const OVER_POINT = 0.008;

/** Clearance of a hole over its bolt, metres (ISO 273, fine to medium for M6: 6.4 to 6.6). */
export const BOLT_CLEARANCE = 0.0005;
/** Pilot hole for a wood screw, metres (common practice for a 4 to 5 mm screw in ply). */
export const PILOT = 0.003;

/** A part to be fixed, and the board under it. */
export interface Fixed {
  readonly place: PartPlace;
  readonly shape: PartShape;
  readonly board: Board;
  /** Height up to which the part is solid wood everywhere, metres: under a recess less than its top. */
  readonly solidM?: number;
  /** How high it stands on rails, metres; left out where it stands on the board. */
  readonly raisedM?: number;
}

/**
 * Bolts of a part for rows of holes at a pitch: a pair straight across the boat about a place on the part's axis, so that the
 * part moves from hole to hole; or one, where block or board is too narrow for two. Each bolt keeps its distance from the
 * block's edges and, where the block leaves room for that, from the board's side. Starboard bolt last.
 */
export function boltsAcross(
  { place, board }: Pick<Fixed, 'place' | 'board'>,
  base: { readonly along: number; readonly halfLength: number; readonly half: number },
): PlanPoint[] {
  const { x, y } = onPart(place, base.along, 0);
  const reach = Math.min(
    (base.half - EDGE) / Math.max(Math.abs(Math.cos(place.turn)), 1e-6),
    (base.halfLength - EDGE) / Math.max(Math.abs(Math.sin(place.turn)), 1e-6),
  );
  const side = boardHalfWidthAt(board, x) - BOARD_EDGE;
  const [low, high] = [Math.max(y - Math.max(0, reach), -side), Math.min(y + Math.max(0, reach), side)];
  if (high - low < 2 * NARROWEST_HALF) {
    return [{ x, y: low > high ? y : Math.min(high, Math.max(low, y)) }];
  }
  const port = Math.max(low + 2 * NARROWEST_HALF, Math.min(high, y + WIDEST_HALF));
  const starboard = Math.min(high - 2 * NARROWEST_HALF, Math.max(low, y - WIDEST_HALF));
  return [
    { x, y: port },
    { x, y: starboard },
  ];
}

/** Screws of a part at places of its own frame, each brought onto the board where the part leaves room for that. */
export function screwsAt(
  { place, shape, board }: Fixed,
  places: readonly { readonly along: number; readonly across: number }[],
): PlanPoint[] {
  return places.map(({ along, across }) => {
    const at = onPart(place, inward(along, shape), inwardAcross(across, shape.half));
    const side = boardHalfWidthAt(board, at.x) - BOARD_EDGE;
    const moved = { x: at.x, y: Math.min(side, Math.max(-side, at.y)) };
    return isWithin(place, shape, moved) ? moved : at;
  });
}

/** Whether a place in plan lies within a part's base by its edge distance (half of it in a small block). */
function isWithin(place: PartPlace, { baseFore, baseAft, half }: PartShape, at: PlanPoint): boolean {
  const { along, across } = inPart(place, at);
  const edge = Math.min(EDGE, half / 2, (baseFore - baseAft) / 4) - 1e-9;
  return along <= baseFore - edge && along >= baseAft + edge && Math.abs(across) <= half - edge;
}

/** A hole that would lie at an end of the base comes in from it. */
function inward(along: number, { baseFore, baseAft }: PartShape): number {
  if (along !== baseFore && along !== baseAft) return along;
  return inwardAcross(along, Math.abs(along));
}

/** A coordinate of an edge moved inward by the edge distance, or to half of it in a small block. */
function inwardAcross(edge: number, reach: number): number {
  return Math.sign(edge) * Math.max(Math.abs(edge) - EDGE, Math.min(Math.abs(edge), reach) / 2);
}

/** A hole at a place in plan over the whole length of its bolt or screw: from under the board, or in a rail, up into the wood. */
export function holeAt(
  { place, shape, board, solidM = Number.POSITIVE_INFINITY, raisedM }: Fixed,
  at: PlanPoint,
  diameterM: number,
): FixingHole {
  const top = boardTopAt(board, at.x);
  const throughBoard = raisedM === undefined;
  const raised = raisedM ?? 0;
  const wood = Math.min(solidM, heightAt(shape, inPart(place, at).along)) - raised;
  const into = raised + Math.max(0, Math.min(INTO_WOOD, wood - OVER_POINT));
  return {
    from: { ...at, z: throughBoard ? top - board.thicknessM - BELOW_BOARD : top },
    throughBoard,
    to: { ...at, z: top + into },
    diameterM,
  };
}

/** Height of a profile over its base at a place along its axis, metres. */
function heightAt(shape: PartShape, along: number): number {
  const { baseFore, topFore, topAft, foreHeight, aftHeight } = shape;
  if (along > topFore) return foreHeight * Math.max(0, (baseFore - along) / (baseFore - topFore || 1));
  return foreHeight + ((aftHeight - foreHeight) * (topFore - along)) / (topFore - topAft || 1);
}

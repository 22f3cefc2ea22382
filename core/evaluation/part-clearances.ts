import type { Boat } from '../document/boat-schema.ts';
import type { HullFace } from '../hull/broader-face.ts';
import { type InnerSkin, innerSkin, leastInside } from '../hull/inner-skin.ts';
import { type Board, insideBoard } from '../parts/board.ts';
import { type FixingHole, footprintOf, type Part } from '../parts/part.ts';
import { planClearance } from '../parts/plan-clearance.ts';
import type { SeatParts } from '../parts/seat-parts.ts';
import type { QuantityId } from './quantities.ts';

/** Room of a part without holes, metres: more than any real one. */
const NO_HOLES = 1;

/** The room that one part has, metres; negative where there is none, by how much is missing. */
export interface PartRoom {
  /** Least distance of its edges to the hull's inner face. */
  readonly insideHull: number;
  /** Least distances of its holes to the inner face, and in plan to the board's edges. */
  readonly holesToSkin: number;
  /** Counted from the middle of a hole. */
  readonly holesOnBoard: number;
  /** Board left all round its base; negative where the base overhangs. */
  readonly onBoard: number;
}

/** The room of a part in a hull and on a floorboard. */
export function partRoom(part: Part, { skin, board }: { skin: InnerSkin; board: Board }): PartRoom {
  return {
    insideHull: leastInside(skin, part),
    holesToSkin: holesToSkin(skin, part.holes),
    holesOnBoard: holesOnBoard(board, part.holes),
    onBoard: Math.min(...footprintOf(part).map((corner) => insideBoard(board, corner))),
  };
}

/**
 * Every clearance of a seat's parts, metres: to the hull's inner face along all their edges, of their fixing holes to the skin
 * and to the board's edges, how far their bases overhang the board, and between the parts. Distances are signed: negative where
 * there is no room, by how much is missing. A part without holes, in the board or at all, has no such distance.
 */
export function partClearances(
  { kneePad, rearRest, frontFoot }: SeatParts,
  roomOf: (part: Part) => PartRoom,
): Partial<Record<QuantityId, number>> {
  const pad = roomOf(kneePad);
  const rest = roomOf(rearRest);
  const { padToFrontHeel, ...foot } = footClearances({ kneePad, frontFoot }, roomOf);
  return {
    padInsideHull: pad.insideHull,
    padBevel: Math.max(0, -pad.insideHull),
    restInsideHull: rest.insideHull,
    restBevel: Math.max(0, -rest.insideHull),
    footInsideHull: foot.footInsideHull,
    ...(kneePad.holes.length > 0 && { padHolesToSkin: pad.holesToSkin }),
    ...(rearRest.holes.length > 0 && { restHolesToSkin: rest.holesToSkin }),
    ...(kneePad.holes.some(isInBoard) && { padHolesOnBoard: pad.holesOnBoard }),
    ...(rearRest.holes.some(isInBoard) && { restHolesOnBoard: rest.holesOnBoard }),
    padOverhang: -pad.onBoard,
    restOverhang: -rest.onBoard,
    footOverhang: foot.footOverhang,
    padToRest: planClearance(footprintOf(kneePad), footprintOf(rearRest)),
    padToFrontHeel,
  };
}

/** The clearances that also depend on the length of the foot. */
export function footClearances(
  { kneePad, frontFoot }: Pick<SeatParts, 'kneePad' | 'frontFoot'>,
  roomOf: (part: Part) => PartRoom,
) {
  const foot = roomOf(frontFoot);
  return {
    footInsideHull: foot.insideHull,
    footOverhang: -foot.onBoard,
    padToFrontHeel: planClearance(footprintOf(kneePad), footprintOf(frontFoot)),
  };
}

/** Measures the room of parts in one boat. */
export function roomIn({ boat, hull }: { boat: Boat; hull: HullFace }): (part: Part) => PartRoom {
  const place = { skin: innerSkin(hull, boat.skinM), board: boat.floorboard };
  return (part) => partRoom(part, place);
}

/** Least distance of a part's holes to the inner face over their whole length, metres; a hole's own radius is taken off. */
function holesToSkin(skin: InnerSkin, holes: readonly FixingHole[]): number {
  let least = NO_HOLES;
  for (const { from, to, diameterM } of holes) {
    const inside = leastInside(skin, { vertices: [from, to], edges: [[0, 1]] });
    least = Math.min(least, inside - diameterM / 2);
  }
  return least;
}

const isInBoard = ({ throughBoard }: FixingHole) => throughBoard;

/** Least distance of a part's holes in the floorboard to its edges, metres, from the hole's own edge. */
function holesOnBoard(board: Board, holes: readonly FixingHole[]): number {
  return holes
    .filter(isInBoard)
    .reduce(
      (least, { from, diameterM }) => Math.min(least, insideBoard(board, from) - diameterM / 2),
      NO_HOLES,
    );
}

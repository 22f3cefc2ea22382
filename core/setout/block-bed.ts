import type { Hull } from '../hull/hull.ts';
import { type InnerSkin, innerSkin } from '../hull/inner-skin.ts';
import { boardTopAt } from '../parts/board.ts';
import { onPart, type Part } from '../parts/part.ts';
import { millimetres } from '../text/sheet-length.ts';
import type { SeatWork } from './seat-work.ts';

/** A block that stands on the board. */
export type BlockName = 'kneePad' | 'rearRest';

/** Height of the rails that a block stands on over the floorboard, millimetres; 0 without rails. */
export function railsUnder({ boat }: Pick<SeatWork, 'boat'>, block: BlockName): number {
  const rails = boat.hardware.rails?.find(({ fitting }) => fitting === block);
  return millimetres(rails?.heightM ?? 0);
}

/**
 * Height of what a block stands on, at a place of the block's own frame (x along its axis, y to port, millimetres), over the
 * floorboard's top at the seat's mark, millimetres: the slope of the board and the rails. On a level board without rails 0.
 */
export function bedHeight(work: SeatWork, part: Pick<Part, 'part' | 'place'>, along: number): number {
  const { boat, frame } = work;
  const { x } = onPart(part.place, along / 1000, 0);
  const rails = part.part === 'frontFoot' ? 0 : railsUnder(work, part.part);
  return millimetres(boardTopAt(boat.floorboard, x) - frame.floorZ) + rails;
}

/** Steps in which a height inside the hull is looked for, metres. */
const STEP = 0.005;
/** Halvings of a step: to a thousandth of a millimetre. */
const HALVINGS = 13;

/**
 * Reads the hull's inner face under a block: the least height that lies within the hull at a place of the block, `most` where none up
 * to it does. Millimetres over the floorboard's top at the seat's mark.
 */
export type SkinUnder = (along: number, across: number, most: number) => number;

/**
 * The hull's inner face under a block of a seat, for scribing its base. `along` and `across` as in `bedHeight`. In a box of a
 * hull with a flat bottom 4 mm thick, on a board 30 mm over its outer face, the bottom lies at −26.
 */
export function skinUnder(work: SeatWork, { place }: Pick<Part, 'place'>, hull: Hull): SkinUnder {
  const distance = innerSkin(hull, work.boat.skinM);
  const floor = work.frame.floorZ;
  return (along, across, most) => {
    const at = onPart(place, along / 1000, across / 1000);
    return millimetres(lowestInside(distance, at, { low: hull.lowestZ, high: floor + most / 1000 }) - floor);
  };
}

/** The lowest height at a place in plan that lies inside, metres; `high` where none does. */
function lowestInside(
  distance: InnerSkin,
  at: { x: number; y: number },
  { low, high }: { low: number; high: number },
): number {
  const inside = (z: number) => distance({ ...at, z }) >= 0;
  let z = low;
  while (!inside(z)) {
    z += STEP;
    if (z >= high) return high;
  }
  let [under, over] = [z - STEP, z];
  for (let k = 0; k < HALVINGS; k++) {
    const middle = (under + over) / 2;
    if (inside(middle)) over = middle;
    else under = middle;
  }
  return over;
}

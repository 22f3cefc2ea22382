import { findQuantity } from '../evaluation/quantities.ts';
import type { Hull } from '../hull/hull.ts';
import type { Part } from '../parts/part.ts';
import { millimetres } from '../text/sheet-length.ts';
import { type BlockName, bedHeight, railsUnder, skinUnder } from './block-bed.ts';
import type { SeatWork } from './seat-work.ts';
import type { MillimetrePoint } from './template-drawing.ts';

/** A cut of less than this is lost in fitting, millimetres. */
export const FITTED_MM = 0.5;
/** Places across an end at which the skin is read. */
const ACROSS = 32;
/** Places along a block at which the deepest cut is looked for, its ends included. */
const ALONG = 8;

/** A block's base across one place of its axis. Points are [to port from the axis, over the floorboard at the seat's mark], mm. */
export interface BaseSection {
  /** Where on the axis, forward of the block's origin, millimetres. */
  readonly along: number;
  /** Height of what the block stands on there. */
  readonly bed: number;
  /** The hull's inner face under the block, as far as it comes under its top. */
  readonly skin: readonly MillimetrePoint[];
  /** The base as it is cut: the bed, or the skin where that is higher. */
  readonly base: readonly MillimetrePoint[];
}

/** The base of a block: what it stands on, and where it is cut to the hull's side. Millimetres. */
export interface BlockBase {
  /** Height of the rails between block and board; 0 where it stands on the board. */
  readonly railsMm: number;
  /** Cross-sections under the two ends. */
  readonly fore: BaseSection;
  readonly aft: BaseSection;
  /** At the block's origin: K of the pad, the bearing edge of the rest. */
  readonly middle: BaseSection;
  /** The most that is cut off the base, square to the hull's side (the report's bevel); 0 for a base that is left square. */
  readonly cutMm: number;
}

/** The base of one of a seat's blocks in its hull. */
export function blockBase(work: SeatWork, part: Part & { readonly part: BlockName }, hull: Hull): BlockBase {
  const { baseFore, baseAft } = part.shape;
  const [fore, aft] = [millimetres(baseFore), millimetres(baseAft)];
  const sections = Array.from({ length: ALONG + 1 }, (_, k) =>
    baseSection(work, part, { hull, along: aft + ((fore - aft) * k) / ALONG }),
  );
  const cut = Math.max(...sections.flatMap(({ base, bed }) => base.map(([, height]) => height - bed)));
  return {
    railsMm: railsUnder(work, part.part),
    fore: sections.at(-1)!,
    aft: sections[0]!,
    middle: baseSection(work, part, { hull, along: 0 }),
    cutMm: cut > FITTED_MM ? bevelOf(work, part.part) : 0,
  };
}

/** How far the hull's side cuts into a block, square to the skin, millimetres, as the report has it. */
function bevelOf({ report, index }: SeatWork, block: BlockName): number {
  const id = block === 'kneePad' ? 'padBevel' : 'restBevel';
  const byMm = millimetres(findQuantity(report.quantities, id, index)?.value ?? 0);
  return byMm > FITTED_MM ? byMm : 0;
}

/** The base of a block across a place of its axis. */
export function baseSection(
  work: SeatWork,
  part: Part,
  { hull, along }: { hull: Hull; along: number },
): BaseSection {
  const half = millimetres(part.shape.half);
  const top = millimetres(part.shape.foreHeight);
  const bed = bedHeight(work, part, along);
  const skinAt = skinUnder(work, part, hull);
  const read = Array.from({ length: ACROSS + 1 }, (_, k): MillimetrePoint => {
    const across = -half + (2 * half * k) / ACROSS;
    return [across, skinAt(along, across, top)];
  });
  return {
    along,
    bed,
    skin: read.filter(([, height]) => height < top),
    base: read.map(([across, height]): MillimetrePoint => [across, Math.max(bed, height)]),
  };
}

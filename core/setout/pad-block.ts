import { subtract } from '../frame/vec3.ts';
import { millimetres } from '../text/sheet-length.ts';
import { bedHeight } from './block-bed.ts';
import type { BlockFrame } from './block-frame.ts';
import { type KneeRecess, kneeRecess } from './knee-recess.ts';
import type { SeatWork } from './seat-work.ts';
import type { MillimetrePoint } from './template-drawing.ts';
import { blockFrame, workParts } from './work-parts.ts';

/** The pad block as it is made, millimetres; x along the recess's axis from the bearing point, y to port, z from the floorboard at the seat's mark. */
export interface PadBlock {
  /** The bearing point K, turned as the recess is. */
  readonly place: BlockFrame;
  /** Ends of the block along its axis, from K. */
  readonly foreEnd: number;
  /** Negative: the aft end lies behind the bearing point. */
  readonly aftEnd: number;
  /** Half the block's width. */
  readonly halfWidth: number;
  /** Bottom of the finished recess over the floorboard at the seat's mark, and the top of the block. */
  readonly bearingHeight: number;
  /** Top of the block over the floorboard at the seat's mark. */
  readonly topHeight: number;
  /** Height of what it stands on under its ends, over the floorboard at the seat's mark: slope of the board and rails. */
  readonly bedFore: number;
  /** As `bedFore`, under the aft end. */
  readonly bedAft: number;
  /** The hollow for knee and shin. */
  readonly recess: KneeRecess;
  /** Direction of the shank in plan, radians counter-clockwise from the recess's axis (aft end), 0 when they agree. */
  readonly shankOffAxis: number;
}

/** The pad block of a seat. It turns with its recess: the aft end to the off side for a positive turn. */
export function padBlock(work: SeatWork): PadBlock {
  const part = workParts(work).kneePad;
  const { baseFore, baseAft, half, foreHeight } = part.shape;
  const ends = { foreEnd: millimetres(baseFore), aftEnd: millimetres(baseAft) };
  const place = blockFrame(part, work);
  return {
    place,
    ...ends,
    halfWidth: millimetres(half),
    bearingHeight: millimetres(work.seat.kneePad.heightM),
    topHeight: millimetres(foreHeight),
    bedFore: bedHeight(work, part, ends.foreEnd),
    bedAft: bedHeight(work, part, ends.aftEnd),
    recess: kneeRecess(work, ends),
    shankOffAxis: shankTurn(work) - place.turn,
  };
}

/** Turn of the shank in plan, radians counter-clockwise from straight aft; 0 where it stands upright. */
function shankTurn({ solved }: SeatWork): number {
  const { kneelingKnee, kneelingAnkle } = solved.stances.ready.points;
  const shank = subtract(kneelingAnkle, kneelingKnee);
  return Math.hypot(shank.x, shank.y) < 1e-6 ? 0 : Math.atan2(-shank.y, -shank.x);
}

/** Corners of the block in its own frame, millimetres: fore left, fore right, aft right, aft left. */
export function padCorners({ foreEnd, aftEnd, halfWidth }: PadBlock): MillimetrePoint[] {
  return [
    [foreEnd, halfWidth],
    [foreEnd, -halfWidth],
    [aftEnd, -halfWidth],
    [aftEnd, halfWidth],
  ];
}

import { restTilt } from '../parts/part-shapes.ts';
import { millimetres } from '../text/sheet-length.ts';
import { toRadians } from '../units/angle.ts';
import { bedHeight, railsUnder } from './block-bed.ts';
import type { BlockFrame } from './block-frame.ts';
import type { SeatWork } from './seat-work.ts';
import type { MillimetrePoint } from './template-drawing.ts';
import { blockFrame, workParts } from './work-parts.ts';

/**
 * The rear rest as it is made: a wedge whose face slopes from the floorboard up and aft to the bearing edge, flat on top
 * behind it. Millimetres; x forward from the bearing edge, y to port from its middle, z from the floorboard at the seat's mark.
 */
export interface RestBlock {
  /** The block's own frame on the floor, turned as the rest is. */
  readonly place: BlockFrame;
  /** Half the rest's width. */
  readonly halfWidth: number;
  /** The bearing edge over the floorboard at the seat's mark. */
  readonly height: number;
  /** Height of what it stands on under the foot of its face and under its back: slope of the board and rails. */
  readonly bedFore: number;
  /** As `bedFore`, under the back. */
  readonly bedAft: number;
  /** Foot of the face ahead of the bearing edge (0 for an upright face), and depth of the top behind it. */
  readonly footAhead: number;
  /** Fore and aft, of the flat top. */
  readonly depthBehind: number;
  /** Length of the face up its slope. */
  readonly slope: number;
  /** Angle of the face from the floorboard as built, degrees. */
  readonly tiltDeg: number;
}

/** The rear rest's block of a seat. Turned to the off side for a positive turn: its face looks along the shank. */
export function restBlock(work: SeatWork): RestBlock {
  const part = workParts(work).rearRest;
  const { baseFore, baseAft, half, aftHeight } = part.shape;
  const tiltDeg = restTilt(work.seat.rearRest);
  const height = millimetres(aftHeight);
  const onRails = Math.min(1, railsUnder(work, 'rearRest') / (height || 1));
  const footAhead = millimetres(baseFore) * (1 - onRails);
  return {
    place: blockFrame(part, work),
    halfWidth: millimetres(half),
    height,
    bedFore: bedHeight(work, part, footAhead),
    bedAft: bedHeight(work, part, millimetres(baseAft)),
    footAhead,
    depthBehind: -millimetres(baseAft),
    slope: height / Math.sin(toRadians(tiltDeg)),
    tiltDeg,
  };
}

/** Corners of the rest's base in its own frame, millimetres: fore left, fore right, aft right, aft left. */
export function restBaseCorners({ footAhead, depthBehind, halfWidth }: RestBlock): MillimetrePoint[] {
  return [
    [footAhead, halfWidth],
    [footAhead, -halfWidth],
    [-depthBehind, -halfWidth],
    [-depthBehind, halfWidth],
  ];
}

/** Side profile of the wedge, millimetres: x forward from the bearing edge, y up from the floorboard at the mark. */
export function restProfile({
  footAhead,
  depthBehind,
  height,
  bedFore,
  bedAft,
}: RestBlock): MillimetrePoint[] {
  return [
    [footAhead, bedFore],
    [0, height],
    [-depthBehind, height],
    [-depthBehind, bedAft],
  ];
}

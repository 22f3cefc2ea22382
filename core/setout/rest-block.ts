import { REST_DEPTH } from '../fit/fitting-outlines.ts';
import { sideSign } from '../frame/mirror.ts';
import { toRadians } from '../units/angle.ts';
import type { BlockFrame } from './block-frame.ts';
import { floorPointOf, type SeatWork } from './seat-work.ts';
import { millimetres } from './sheet-length.ts';
import type { MillimetrePoint } from './template-drawing.ts';

/** A face flatter than this could not be told from a board lying down; the wedge is cut off there, degrees. */
const FLATTEST_DEG = 15;

/**
 * The rear rest as it is made: a wedge whose face slopes from the floorboard up and aft to the bearing edge, flat on top
 * behind it. Millimetres; x forward from the bearing edge, y to port from its middle, z from the base.
 */
export interface RestBlock {
  readonly place: BlockFrame;
  readonly halfWidth: number;
  readonly height: number;
  /** Foot of the face ahead of the bearing edge (0 for an upright face), and depth of the top behind it. */
  readonly footAhead: number;
  readonly depthBehind: number;
  /** Length of the face up its slope. */
  readonly slope: number;
  /** Angle of the face from the floorboard as built, degrees. */
  readonly tiltDeg: number;
}

/** The rear rest's block of a seat. Turned to the off side for a positive turn: its face looks along the shank. */
export function restBlock({ seat, frame }: SeatWork): RestBlock {
  const { rearRest } = seat;
  const height = millimetres(rearRest.heightM);
  const tiltDeg = Math.max(FLATTEST_DEG, rearRest.tiltDeg);
  const tilt = toRadians(tiltDeg);
  return {
    place: {
      origin: floorPointOf(-rearRest.aftM, rearRest.outM, frame.side),
      turn: toRadians(rearRest.turnDeg) * sideSign(frame.side),
    },
    halfWidth: millimetres(rearRest.widthM) / 2,
    height,
    footAhead: tiltDeg >= 90 ? 0 : height / Math.tan(tilt),
    depthBehind: millimetres(REST_DEPTH),
    slope: height / Math.sin(tilt),
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

/** Side profile of the wedge, millimetres: x forward from the bearing edge, y up from the base. */
export function restProfile({ footAhead, depthBehind, height }: RestBlock): MillimetrePoint[] {
  return [
    [footAhead, 0],
    [0, height],
    [-depthBehind, height],
    [-depthBehind, 0],
  ];
}

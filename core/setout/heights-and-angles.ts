import { millimetres, type SheetUnits, tapeReading } from '../text/sheet-length.ts';
import { toDegrees } from '../units/angle.ts';
import type { Fittings } from './marks.ts';
import type { SeatWork } from './seat-work.ts';
import { ANGLE_TOLERANCE_DEG, HEIGHT_TOLERANCE_MM } from './tolerances.ts';

/** Heights over the floorboard's top that the builder works to, and each one's check. */
export const HEIGHTS = ['recessBottom', 'padTop', 'woodUnderFoam', 'restEdge', 'heel', 'toes'] as const;
/** A height by its name: `padTop` is the block's top, `toes` what lies under the front toes. */
export type HeightName = (typeof HEIGHTS)[number];

/**
 * A height as the builder works it: as the sheet's tape reads it, millimetres over the floorboard's top, how closely (the same unit either way),
 * and a second length that proves it. A pad of 110 with a recess of 20 gives `padTop` 130.
 */
export interface HeightRow {
  /** Which height it is. */
  readonly height: HeightName;
  /** Over the top of the floorboard at the seat's mark. */
  readonly aboveFloorMm: number;
  /** Either way. */
  readonly toleranceMm: number;
  /** What is measured to prove it: a depth under a straightedge, the face up its slope, the other end's height. */
  readonly check: {
    readonly how: 'straightedge' | 'fromBase' | 'foam' | 'slope' | 'ends';
    readonly lengthMm: number;
  };
}

/** Angles that the builder works to. */
export const ANGLES = ['padTurn', 'restTurn', 'restTilt', 'footTurn', 'footWedge'] as const;
/** An angle by its name: turns are seen from above, `restTilt` and `footWedge` from the side. */
export type AngleName = (typeof ANGLES)[number];

/**
 * An angle twice over: in degrees for a bevel, and as a slope for a tape. A turn of 12° is 43 mm aside over 200 mm.
 */
export interface AngleRow {
  /** Which angle it is. */
  readonly angle: AngleName;
  /** Magnitude, degrees to 0.1. */
  readonly deg: number;
  /** Either way. */
  readonly toleranceDeg: number;
  /** For turns: the side that the aft end of the axis (of the foot: the toes) points to; null for slopes and no turn. */
  readonly toward: 'left' | 'right' | null;
  /** The same angle with a tape: over `overMm` it goes `byMm` aside or up. Whole millimetres. */
  readonly overMm: number;
  /** Whole millimetres aside or up. */
  readonly byMm: number;
}

/** Turns are laid off over this length, millimetres (8 in by an inch tape): longer than any block, within a carpenter's square. */
const LAID_OFF_OVER: Readonly<Record<SheetUnits, number>> = { mm: 200, in: 203.2 };

/** Heights of a seat, whole millimetres over the floorboard. Heel and toes are left out where the foot stands on the floor. */
export function heightsOf({ pad, rest, foot }: Fittings, { options }: SeatWork): HeightRow[] {
  const read = (mm: number) => tapeReading(mm, options.units);
  const bottom = read(pad.bearingHeight);
  const top = read(pad.topHeight);
  const foam = read(millimetres(options.foamM));
  const restEdge = read(rest.height);
  const rows: HeightRow[] = [
    row('padTop', top, { how: 'fromBase', lengthMm: top }),
    row('recessBottom', bottom, { how: 'straightedge', lengthMm: top - bottom }),
    ...(foam > 0 ? [row('woodUnderFoam', bottom - foam, { how: 'foam', lengthMm: foam })] : []),
    row('restEdge', restEdge, { how: 'slope', lengthMm: read(rest.slope) }),
  ];
  const [heel, toes] = [read(foot.heelHeight), read(foot.toeHeight)];
  if (heel === 0 && toes === 0) return rows;
  return [
    ...rows,
    row('heel', heel, { how: 'ends', lengthMm: toes - heel }),
    row('toes', toes, { how: 'ends', lengthMm: toes - heel }),
  ];
}

/** A height with its usual tolerance. */
function row(height: HeightName, aboveFloorMm: number, check: HeightRow['check']): HeightRow {
  return { height, aboveFloorMm: aboveFloorMm + 0, toleranceMm: HEIGHT_TOLERANCE_MM, check };
}

/** Angles of a seat. Turns are seen from above. */
export function anglesOf({ pad, rest, foot }: Fittings, { seat, options }: SeatWork): AngleRow[] {
  const over = LAID_OFF_OVER[options.units];
  return [
    turnRow('padTurn', { turn: pad.place.turn, end: 'aft', over }),
    turnRow('restTurn', { turn: rest.place.turn, end: 'aft', over }),
    {
      angle: 'restTilt',
      deg: tenth(rest.tiltDeg),
      toleranceDeg: ANGLE_TOLERANCE_DEG,
      toward: null,
      overMm: Math.round(rest.footAhead),
      byMm: Math.round(rest.height),
    },
    turnRow('footTurn', { turn: foot.place.turn, end: 'fore', over }),
    {
      angle: 'footWedge',
      deg: tenth(seat.frontFoot.wedgeDeg),
      toleranceDeg: ANGLE_TOLERANCE_DEG,
      toward: null,
      overMm: Math.round(foot.run),
      byMm: Math.round(foot.toeHeight - foot.heelHeight) + 0,
    },
  ];
}

/** A turn in plan: its size, the side it goes to, and the same with a tape over a length. */
function turnRow(
  angle: AngleName,
  { turn, end, over }: { turn: number; end: 'aft' | 'fore'; over: number },
): AngleRow {
  const deg = tenth(toDegrees(Math.abs(turn)));
  // Counter-clockwise from above carries a fore end to port and an aft end to starboard.
  const left = end === 'fore' ? turn > 0 : turn < 0;
  return {
    angle,
    deg,
    toleranceDeg: ANGLE_TOLERANCE_DEG,
    toward: deg === 0 ? null : left ? 'left' : 'right',
    ...laidOff(Math.tan(Math.abs(turn)), over),
  };
}

/** A slope as over and by: the longer of the two is the length it is laid off over. */
function laidOff(slope: number, over: number): Pick<AngleRow, 'overMm' | 'byMm'> {
  return slope <= 1
    ? { overMm: over, byMm: Math.round(over * slope) }
    : { overMm: Math.round(over / slope), byMm: over };
}

/** To a tenth, and never −0. */
const tenth = (value: number) => Math.round(value * 10) / 10 + 0;

import { type SeatFrame, sideSign } from '../frame/mirror.ts';
import { toRadians } from '../units/angle.ts';
import type { PartPlace, PartShape } from './part.ts';

/** Share of the pad's length that lies ahead of the knee's bearing point: the recess sits a little forward. */
export const PAD_AHEAD_OF_KNEE = 0.45;

/** Depth of a rear rest's flat top behind its bearing edge, metres (a common plank thickness). */
export const REST_DEPTH = 0.04;

/** A foot's greatest breadth over its length (ANSUR II mean, both sexes: 0.376). */
export const FOOT_BREADTH_OVER_LENGTH = 0.376;

/** Least tilt of a rest's face, degrees: a flatter one would be a board lying down. */
const FLATTEST_DEG = 15;

/** Thickness of the non-slip sheet under a foot that stands on the bare floorboard, metres (common practice, no source). */
export const FOOT_SHEET = 0.002;

/** The fields of a knee pad's document that define its shape. */
export interface PadSizes {
  /** Where the knee bears, aft of the seat's datum. */
  readonly aftM: number;
  /** Where the knee bears, from the centreline, to the kneeling side. */
  readonly outM: number;
  /** Bottom of the recess over the floorboard's top. */
  readonly heightM: number;
  /** Turn of its aft end to the off side, degrees; 0 is fore and aft. */
  readonly recessTurnDeg: number;
  /** Top of the pad over the bottom of the recess. */
  readonly recessDepthM: number;
  /** Foam that lines the recess. Left out: `USUAL_FOAM`. */
  readonly foamM?: number | undefined;
  /** Along the recess. */
  readonly lengthM: number;
  /** Across the recess. */
  readonly widthM: number;
}

/** The same of a rear rest. */
export interface RestSizes {
  /** Where the ball of the rear foot bears, aft of the seat's datum. */
  readonly aftM: number;
  /** From the centreline, to the kneeling side; negative to the off side. */
  readonly outM: number;
  /** Where the foot bears, over the floorboard's top. */
  readonly heightM: number;
  /** Turned to the off side, degrees; 0 is square to the boat. */
  readonly turnDeg: number;
  /** Face from the floorboard, degrees; 90 is upright. */
  readonly tiltDeg: number;
  /** Across its face. */
  readonly widthM: number;
}

/** The same of a front foot's place. */
export interface FootSizes {
  /** Heel forward of the seat's datum. */
  readonly forwardM: number;
  /** Heel from the centreline, to the kneeling side; negative to the off side. */
  readonly outM: number;
  /** Under the heel, over the floorboard's top. */
  readonly heightM: number;
  /** Foot turned outward from fore-and-aft. */
  readonly toeOutDeg: number;
  /** Sole raised at the toes. */
  readonly wedgeDeg: number;
}

/** A part's place and its profile. */
export interface Shaped {
  readonly place: PartPlace;
  readonly shape: PartShape;
}

/**
 * A place from its distances forward and out (toward the kneeling side), metres, and a turn in degrees, positive when the aft
 * end goes to the off side.
 */
function placed(frame: SeatFrame, forward: number, [out, turnDeg]: readonly [number, number]): PartPlace {
  const sign = sideSign(frame.side);
  return { x: frame.stationX + forward, y: out * sign, turn: toRadians(turnDeg) * sign };
}

/**
 * The knee pad: a block that turns with its recess, its top the rim of the recess. A pad 26 cm long reaches 11.7 cm ahead of the
 * knee's bearing point; with its recess's bottom at 12 cm and 2 cm deep it is 14 cm high.
 */
export function padShape(pad: PadSizes, frame: SeatFrame): Shaped {
  const fore = pad.lengthM * PAD_AHEAD_OF_KNEE;
  const aft = -pad.lengthM * (1 - PAD_AHEAD_OF_KNEE);
  const height = pad.heightM + pad.recessDepthM;
  return {
    place: placed(frame, -pad.aftM, [pad.outM, pad.recessTurnDeg]),
    shape: {
      baseFore: fore,
      baseAft: aft,
      topFore: fore,
      topAft: aft,
      half: pad.widthM / 2,
      foreHeight: height,
      aftHeight: height,
    },
  };
}

/** A rest's face from the floorboard, degrees, as it is made. */
export function restTilt({ tiltDeg }: Pick<RestSizes, 'tiltDeg'>): number {
  return Math.max(FLATTEST_DEG, tiltDeg);
}

/**
 * The rear rest: its face slopes from the floorboard up and aft to the bearing edge (its own origin); behind the edge the top is
 * flat. 5 cm high at 60° its base reaches 2.9 cm ahead of the edge.
 */
export function restShape(rest: RestSizes, frame: SeatFrame): Shaped {
  const tilt = restTilt(rest);
  return {
    place: placed(frame, -rest.aftM, [rest.outM, rest.turnDeg]),
    shape: {
      baseFore: tilt >= 90 ? 0 : rest.heightM / Math.tan(toRadians(tilt)),
      baseAft: -REST_DEPTH,
      topFore: 0,
      topAft: -REST_DEPTH,
      half: rest.widthM / 2,
      foreHeight: rest.heightM,
      aftHeight: rest.heightM,
    },
  };
}

/**
 * What the front foot stands on, from the back of the heel (its own origin) to the toes, as broad as the foot: a wedge, a block,
 * or on the bare board the non-slip sheet. A foot 26 cm long on a wedge of 10° covers 25.6 cm of the board, toes 4.5 cm up.
 */
export function footShape(foot: FootSizes, footLength: number, frame: SeatFrame): Shaped {
  const wedge = toRadians(foot.wedgeDeg);
  const run = footLength * Math.cos(wedge);
  return {
    place: placed(frame, foot.forwardM, [foot.outM, -foot.toeOutDeg]),
    shape: {
      baseFore: run,
      baseAft: 0,
      topFore: run,
      topAft: 0,
      half: (footLength * FOOT_BREADTH_OVER_LENGTH) / 2,
      foreHeight: Math.max(FOOT_SHEET, foot.heightM + footLength * Math.sin(wedge)),
      aftHeight: Math.max(FOOT_SHEET, foot.heightM),
    },
  };
}

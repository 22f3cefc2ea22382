import type { Vec3 } from '../frame/vec3.ts';
import { blank, type MutableVec3, scaleTo } from '../frame/vec3-in-place.ts';
import type { FigureParts, SolverFigure } from './figure.ts';
import { type MutableLinkSlope, twoLinkSlopeTo } from './two-link.ts';

/**
 * How the figure changes per radian of one unknown: points in metres per radian, directions per radian. It has only what the
 * terms of the objective need; the arms' slopes are found in `centreSlopeTo`.
 */
export interface FigureSlope {
  /** Of the unit vector from the kneeling knee to its hip. */
  readonly thighUp: Vec3;
  /** Of the unit vector from the hips to the shoulders. */
  readonly trunkUp: Vec3;
  /** Of the unit vector from the kneeling to the front hip. */
  readonly across: Vec3;
  /** Of the joint over the kneeling knee. */
  readonly kneelingHip: Vec3;
  /** Of the other hip joint. */
  readonly frontHip: Vec3;
  /** Of the point half way between the hips. */
  readonly midHip: Vec3;
  /** Of the point half way between the shoulders. */
  readonly midShoulder: Vec3;
  /** Of the front leg's chain: its middle is the front knee, `apart` the distance from front hip to front ankle. */
  readonly leg: { readonly middle: Vec3; readonly apart: number };
}

/**
 * The slopes of a figure's five unknowns, in their order: kept by a search and overwritten by `figureSlopesTo`. What does not
 * move in a slope, or moves with another point, is one shared vector.
 */
export type FigureSlopes = readonly (FigureSlope & {
  readonly trunkUp: MutableVec3;
  readonly frontHip: MutableVec3;
  readonly midHip: MutableVec3;
  readonly midShoulder: MutableVec3;
  readonly leg: MutableLinkSlope;
})[];

const STILL: Vec3 = { x: 0, y: 0, z: 0 };

/** Slopes of this figure, still to be found. Each unknown moves only what hangs on it; the rest stays 0. */
export function blankFigureSlopes({ thigh, acrossTurn }: SolverFigure): FigureSlopes {
  const still = () => ({ thighUp: STILL, trunkUp: blank(), across: STILL, kneelingHip: STILL });
  const leg = () => ({ middle: blank(), apart: 0 });
  const ofThigh = (thighUp: Vec3) => {
    const carried = blank();
    const hips = { kneelingHip: carried, frontHip: carried, midHip: carried, midShoulder: carried };
    return { ...still(), thighUp, ...hips, leg: leg() };
  };
  const ofTrunk = () => ({
    ...still(),
    frontHip: blank(),
    midHip: blank(),
    midShoulder: blank(),
    leg: leg(),
  });
  const middle = blank();
  return [
    ofThigh(thigh.byPitch),
    ofThigh(thigh.byRoll),
    { ...still(), across: acrossTurn, frontHip: blank(), midHip: middle, midShoulder: middle, leg: leg() },
    ofTrunk(),
    ofTrunk(),
  ];
}

/**
 * The five slopes of a figure. The thigh carries everything above the knee, the pelvis turns the off hip and the trunk's base
 * about the kneeling hip, the trunk only what is above it. Exact to 1 part in 10⁶ (tests/core/posture/figure.test.ts).
 */
export function figureSlopes(figure: SolverFigure, parts: FigureParts): FigureSlopes {
  return figureSlopesTo(blankFigureSlopes(figure), figure, parts);
}

/** The same, written over earlier ones of the same figure. */
export function figureSlopesTo(
  slopes: FigureSlopes,
  { leg, trunk, acrossTurn }: SolverFigure,
  { lengths, paddling }: FigureParts,
): FigureSlopes {
  for (let k = 0; k < 2; k++) {
    const thigh = slopes[k]!;
    scaleTo(thigh.frontHip, thigh.thighUp, lengths.thigh);
    twoLinkSlopeTo(thigh.leg, leg, thigh.frontHip);
  }
  const yaw = slopes[2]!;
  scaleTo(yaw.frontHip, acrossTurn, lengths.hipSeparation);
  scaleTo(yaw.midHip, acrossTurn, lengths.hipSeparation / 2);
  twoLinkSlopeTo(yaw.leg, leg, yaw.frontHip);
  const [pitch, roll] = [slopes[3]!, slopes[4]!];
  scaleTo(pitch.trunkUp, trunk.byPitch, 1);
  scaleTo(roll.trunkUp, trunk.byRoll, paddling);
  scaleTo(pitch.midShoulder, pitch.trunkUp, lengths.trunk);
  scaleTo(roll.midShoulder, roll.trunkUp, lengths.trunk);
  return slopes;
}

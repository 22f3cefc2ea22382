import type { BoatPoint } from '../frame/vec3.ts';
import type { Radians } from '../units/angle.ts';

/** The instant of the stroke that a stance is solved for. */
export type Phase = 'ready' | 'catch' | 'exit';

/** Every point that the figure is drawn through. `kneeling…` is the kneeling leg, `front…` the other. */
export const FIGURE_POINTS = [
  'kneelingKnee',
  'kneeContact',
  'kneelingHip',
  'kneelingAnkle',
  'rearHeel',
  'rearBall',
  'rearToe',
  'frontHip',
  'frontKnee',
  'frontAnkle',
  'frontHeel',
  'frontBall',
  'frontToe',
  'midHip',
  'midShoulder',
  'neck',
  'headCentre',
  'headTop',
  /** Shoulder, elbow and hand of the arm on the paddling side, whose hand is low on the shaft. */
  'lowerShoulder',
  'lowerElbow',
  'lowerHand',
  /** The other arm; its hand holds the grip. */
  'topShoulder',
  'topElbow',
  'topHand',
] as const;
/** A joint or an end of a limb. */
export type FigurePoint = (typeof FIGURE_POINTS)[number];

/** Angles a coach reads, radians; `angles.ts` defines and computes them. */
export const STANCE_ANGLES = [
  /** Included angle hip–knee–ankle of the front leg: π is straight. */
  'frontKnee',
  /** Included angle hip–knee–ankle of the kneeling leg. */
  'kneelingKnee',
  /** Included angle trunk–hip–thigh of the kneeling leg: π is a straight line, more is extension. */
  'kneelingHip',
  'frontHip',
  /** Shank to foot, sole side: π/2 is square. */
  'rearAnkle',
  'frontAnkle',
  /** Trunk from the vertical in the side view, forward positive. */
  'trunkPitch',
  /** Trunk from the vertical seen from behind, toward the paddling side positive. */
  'trunkRoll',
  /** Pelvis turned about the vertical, off-side hip forward positive. */
  'pelvisYaw',
  /** Kneeling thigh from the vertical in the side view, hip forward of the knee positive. */
  'thighPitch',
  /** Kneeling thigh from the vertical seen from behind, toward the kneeling side positive. */
  'thighRoll',
] as const;
/** An angle of a stance. */
export type StanceAngle = (typeof STANCE_ANGLES)[number];

/** The five unknowns of the solve, in this order. */
export const STANCE_UNKNOWNS = ['thighPitch', 'thighRoll', 'pelvisYaw', 'trunkPitch', 'trunkRoll'] as const;
/** An angle that the solve is free to choose. */
export type StanceUnknown = (typeof STANCE_UNKNOWNS)[number];

/** One term of the objective: what it is, its residual in units of its tolerance, and its share of the cost (0–1). */
export interface StanceTerm {
  readonly term: string;
  /** Signed; 0 where nothing pulls. */
  readonly residual: number;
  /** All shares of a stance add up to 1. */
  readonly share: number;
}

/** A part that cannot be reached, and by how much, metres (positive is missing length). */
export interface ReachShortfall {
  readonly part: 'rearRest' | 'frontFoot' | 'lowerHand' | 'topHand';
  /** Metres, always positive. */
  readonly shortfall: number;
}

/** One mass of the figure (or the paddle): kilograms, centre in the boat frame. */
export interface FigureMass {
  readonly segment: string;
  /** Kilograms, one side's where there are two. */
  readonly massKg: number;
  /** Centre of mass, metres. */
  readonly centre: BoatPoint;
}

/** A solved kneeling figure. Points in the boat frame (metres), angles in radians, never NaN. */
export interface Stance {
  readonly phase: Phase;
  /** Joints and ends of the body. */
  readonly points: Readonly<Record<FigurePoint, BoatPoint>>;
  readonly angles: Readonly<Record<StanceAngle, Radians>>;
  readonly masses: readonly FigureMass[];
  /** Of body and paddle together. */
  readonly centreOfMass: BoatPoint;
  /** Body and paddle, kilograms. */
  readonly totalMassKg: number;
  readonly shortfalls: readonly ReachShortfall[];
  /** Terms of the objective, the strongest first: what forces this stance. */
  readonly forcing: readonly StanceTerm[];
  /** Steps of the solve. */
  readonly iterations: number;
  readonly converged: boolean;
}

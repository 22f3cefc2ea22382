import { BOAT_MARKS, type BoatMark } from '../../../core/photograph/boat-marks.ts';
import { WATER_MARKS, type WaterMark } from '../../../core/photograph/waterline.ts';
import type { FigurePoint } from '../../../core/posture/stance.ts';

/** Joints in the order in which they are marked: from the knee up, then the front leg, then arms. */
export const JOINT_ORDER = [
  'kneelingKnee',
  'kneelingHip',
  'kneelingAnkle',
  'rearBall',
  'frontHip',
  'frontKnee',
  'frontAnkle',
  'frontToe',
  'midShoulder',
  'lowerShoulder',
  'topShoulder',
  'headTop',
  'lowerElbow',
  'lowerHand',
  'topElbow',
  'topHand',
] as const satisfies readonly FigurePoint[];
export type MarkedJoint = (typeof JOINT_ORDER)[number];

/** What is marked: a point of the boat, a joint, or where the water meets an end of the boat. */
export type PhotoMarkName = `boat.${BoatMark}` | `joint.${MarkedJoint}` | `water.${WaterMark}`;

/** Every mark in the guided order. */
export const MARK_ORDER: readonly PhotoMarkName[] = [
  ...BOAT_MARKS.map((name) => `boat.${name}` as const),
  ...JOINT_ORDER.map((name) => `joint.${name}` as const),
  ...WATER_MARKS.map((name) => `water.${name}` as const),
];

/** Lines of a figure in the picture: joints that are joined. */
export const FIGURE_LINES: readonly (readonly FigurePoint[])[] = [
  ['kneelingHip', 'kneelingKnee', 'kneelingAnkle', 'rearBall'],
  ['frontHip', 'frontKnee', 'frontAnkle', 'frontToe'],
  ['kneelingHip', 'frontHip'],
  ['midHip', 'midShoulder', 'headTop'],
  ['topShoulder', 'lowerShoulder'],
  ['lowerShoulder', 'lowerElbow', 'lowerHand'],
  ['topShoulder', 'topElbow', 'topHand', 'lowerHand'],
];

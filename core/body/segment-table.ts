import type { BodySegment, SegmentMass } from './body.ts';
import type { Sex } from './sex.ts';

/** A segment's share of the body's mass in per cent, and its centre in per cent of the way from its first endpoint. */
export interface SegmentRow {
  /** Per cent of the whole body, one side's where there are two. */
  readonly massPercent: number;
  /** Per cent of the way from the first endpoint. */
  readonly centrePercent: number;
}

/**
 * Segment masses and centres as printed, with the author's own endpoints: head and neck vertex → cervicale, trunk
 * mid-shoulder → mid-hip, upper arm shoulder → elbow, forearm elbow → wrist, hand wrist → third knuckle, thigh hip → knee, shank
 * knee → lateral malleolus, foot heel → longest toe. Source: de Leva 1996, J Biomech 29:1223–1230, table 4. The printed
 * shares add to 100.00 (men) and 99.99 (women).
 */
export const SEGMENT_TABLE: Readonly<Record<Sex, Readonly<Record<BodySegment, SegmentRow>>>> = {
  male: {
    headNeck: { massPercent: 6.94, centrePercent: 50.02 },
    trunk: { massPercent: 43.46, centrePercent: 43.1 },
    upperArm: { massPercent: 2.71, centrePercent: 57.72 },
    forearm: { massPercent: 1.62, centrePercent: 45.74 },
    hand: { massPercent: 0.61, centrePercent: 79.0 },
    thigh: { massPercent: 14.16, centrePercent: 40.95 },
    shank: { massPercent: 4.33, centrePercent: 44.59 },
    foot: { massPercent: 1.37, centrePercent: 44.15 },
  },
  female: {
    headNeck: { massPercent: 6.68, centrePercent: 48.41 },
    trunk: { massPercent: 42.57, centrePercent: 37.82 },
    upperArm: { massPercent: 2.55, centrePercent: 57.54 },
    forearm: { massPercent: 1.38, centrePercent: 45.59 },
    hand: { massPercent: 0.56, centrePercent: 74.74 },
    thigh: { massPercent: 14.78, centrePercent: 36.12 },
    shank: { massPercent: 4.81, centrePercent: 44.16 },
    foot: { massPercent: 1.29, centrePercent: 40.14 },
  },
};

/**
 * Length of de Leva's thighs as shares of stature (from his table 4); the women's is shorter than any thigh measured from the
 * trochanter.
 */
export const TABLE_THIGH: Readonly<Record<Sex, number>> = { male: 0.2425, female: 0.2124 };

/**
 * Trunk of de Leva's women, mid-shoulder to mid-hip, as a share of stature: 497.9 of 1735 mm (from memory). Their hip lies 43
 * mm lower than the survey's women's, their shoulder 14 mm lower.
 */
export const TABLE_TRUNK_FEMALE = 0.287;

/** How many of each segment a body has. */
export const SEGMENT_COUNT: Readonly<Record<BodySegment, 1 | 2>> = {
  headNeck: 1,
  trunk: 1,
  upperArm: 2,
  forearm: 2,
  hand: 2,
  thigh: 2,
  shank: 2,
  foot: 2,
};

/** Mass and centre of every segment. */
export type SegmentMasses = Readonly<Record<BodySegment, SegmentMass>>;

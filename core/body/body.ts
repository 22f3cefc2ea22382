import type { TapeMeasure } from '../document/athlete-schema.ts';

/** The lengths that the figure is built from, metres. Joint centres, not skin, unless said otherwise. */
export const BODY_LENGTHS = [
  /** Hip joint centre to knee joint centre. */
  'thigh',
  /** Knee joint centre to ankle joint centre. */
  'shank',
  /** Ankle joint centre above the sole. */
  'ankleHeight',
  /** Heel to tip of the longest toe. */
  'footLength',
  /** Heel to ball of the foot. */
  'heelToBall',
  /** Heel to ankle joint centre, along the foot. */
  'heelToAnkle',
  /** Between the hip joint centres: about a tenth of stature, not the outside width. */
  'hipSeparation',
  /** Mid-hip to mid-shoulder joint centres. */
  'trunk',
  /** Between the shoulder joint centres. */
  'shoulderSeparation',
  'upperArm',
  'forearm',
  /** Wrist joint centre to the middle of the grip. */
  'hand',
  /** Mid-shoulder to the top of the head. */
  'headNeck',
  /** Knee joint centre to the kneeling surface with the knee bent square. */
  'kneeRadius',
] as const;
/** A length of the figure, from joint to joint. */
export type BodyLength = (typeof BODY_LENGTHS)[number];

/** Segments that carry mass; the paired ones are counted once each side. */
export const BODY_SEGMENTS = [
  'headNeck',
  'trunk',
  'upperArm',
  'forearm',
  'hand',
  'thigh',
  'shank',
  'foot',
] as const;
/** A part of the body that has a mass of its own. */
export type BodySegment = (typeof BODY_SEGMENTS)[number];

/** Where a figure comes from. */
export type ValueKind = 'measured' | 'survey' | 'combined' | 'published' | 'estimate';

/** A value with its standard deviation, same unit (metres or kilograms), and where it comes from. */
export interface Estimate {
  /** Metres or kilograms. */
  readonly value: number;
  /** One standard deviation, in the value's unit. */
  readonly sd: number;
  /** Measured, from the survey, or our own estimate. */
  readonly kind: ValueKind;
}

/**
 * Mass of one segment in kilograms (of one side, for the paired ones), and its centre as a fraction of the way from its first
 * endpoint to its second; the endpoints stand in `SEGMENT_ENDPOINTS`.
 */
export interface SegmentMass {
  /** Kilograms, of one side where there are two. */
  readonly massKg: number;
  /** 0 at the first endpoint, 1 at the second. */
  readonly centreFraction: number;
}

/**
 * What a coach must know about an estimate. `stature` is in metres, `mass` in kilograms; `sigmas` counts standard deviations.
 */
export type BodyNote =
  | { readonly code: 'extrapolates-stature'; readonly value: number }
  | { readonly code: 'extrapolates-mass'; readonly value: number }
  | { readonly code: 'junior'; readonly ageYears: number | null }
  | { readonly code: 'tape-disagrees'; readonly measure: TapeMeasure; readonly sigmas: number };

/** The body that the stance is solved for. Lengths in metres, masses in kilograms. */
export interface BodyEstimate {
  /** Standing height, metres. */
  readonly stature: number;
  /** Whole body, kilograms. */
  readonly mass: number;
  /** Standard deviations of the two, metres and kilograms; the stature's is part of the lengths' spread already. */
  readonly statureSd: number;
  readonly massSd: number;
  /** Each with its doubt and where it comes from. */
  readonly lengths: Readonly<Record<BodyLength, Estimate>>;
  /** Covariance of the lengths, m², rows and columns in the order of `BODY_LENGTHS`. */
  readonly covariance: readonly (readonly number[])[];
  /** The second opinion: the older ratio table's lengths for the same stature, metres; null where it gives none. */
  readonly ratioLengths: Readonly<Record<BodyLength, number | null>>;
  /** Masses, one side's for paired ones. */
  readonly segments: Readonly<Record<BodySegment, SegmentMass>>;
  /** What a coach should know of the estimate. */
  readonly notes: readonly BodyNote[];
}

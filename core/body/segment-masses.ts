import { recordOf } from '../units/entries.ts';
import { BODY_SEGMENTS, type BodyLength, type BodySegment, type Estimate } from './body.ts';
import { HIP_ABOVE_TROCHANTERION, SHOULDER_BELOW_ACROMION, sizedFor } from './joint-centres.ts';
import {
  SEGMENT_COUNT,
  SEGMENT_TABLE,
  type SegmentMasses,
  TABLE_THIGH,
  TABLE_TRUNK_FEMALE,
} from './segment-table.ts';
import { type Sex, type StatedSex, tablesOf } from './sex.ts';
import { surveyLine } from './survey-estimate.ts';
import type { SurveyMeasure } from './survey-table.ts';

/**
 * The figure's points between which each segment's centre fraction runs, from the first to the second. A paired segment has the
 * points of its own side.
 */
export const SEGMENT_ENDPOINTS = {
  headNeck: ['midShoulder', 'headTop'],
  trunk: ['midShoulder', 'midHip'],
  upperArm: ['shoulder', 'elbow'],
  forearm: ['elbow', 'wrist'],
  hand: ['wrist', 'grip'],
  thigh: ['hip', 'knee'],
  shank: ['knee', 'ankle'],
  foot: ['heel', 'toe'],
} as const satisfies Record<BodySegment, readonly [string, string]>;

/** A fist round a shaft has its mass round the grip (estimate; the table's hand is stretched). */
const FIST_CENTRE = 1;

/** What the segments depend on: metres, kilograms. */
export interface SegmentInput {
  /** Standing height, metres. */
  readonly stature: number;
  /** Whole body, kilograms. */
  readonly mass: number;
  readonly sex: StatedSex;
  /** The figure's lengths, metres. */
  readonly lengths: Readonly<Record<BodyLength, Estimate>>;
}

/**
 * Mass (kg) and centre of each segment between the figure's own points, `SEGMENT_ENDPOINTS`. The shares are those of
 * `segment-table.ts`, scaled so that the body's mass is met exactly; the mean of both tables with the sex unspecified.
 */
export function segmentMasses(input: SegmentInput): SegmentMasses {
  const tables = tablesOf(input.sex);
  const average = (of: (sex: Sex) => number) => tables.reduce((sum, sex) => sum + of(sex), 0) / tables.length;
  return recordOf(BODY_SEGMENTS, (segment) => ({
    massKg: input.mass * average((sex) => massShare(segment, sex)),
    centreFraction: average((sex) => centreFraction(segment, sex, input)),
  }));
}

/** Share of the body's mass, with the table's printed sum made 1. */
export function massShare(segment: BodySegment, sex: Sex): number {
  const table = SEGMENT_TABLE[sex];
  const total = BODY_SEGMENTS.reduce((sum, name) => sum + SEGMENT_COUNT[name] * table[name].massPercent, 0);
  return table[segment].massPercent / total;
}

/** Where a segment's mass lies along it, 0–1. Where the table's endpoints differ from this figure's, the value is converted. */
function centreFraction(segment: BodySegment, sex: Sex, { stature, lengths }: SegmentInput): number {
  const printed = SEGMENT_TABLE[sex][segment].centrePercent / 100;
  switch (segment) {
    case 'headNeck': {
      const belowVertex = printed * surveyLine('statureLessCervicale', stature, sex).value;
      return 1 - belowVertex / lengths.headNeck.value;
    }
    case 'thigh':
      return sex === 'female' ? femaleThighCentre(stature) : printed;
    case 'trunk':
      return sex === 'female' ? femaleTrunkCentre(stature) : printed;
    case 'hand':
      return FIST_CENTRE;
    default:
      return printed;
  }
}

/**
 * The table's women have a thigh of 0.2124 of stature: their hip lies lower than in any other source. So the centre's distance
 * from the knee is kept on our own thigh (estimate): 41.7 % from the hip on a thigh from the survey's trochanterion, 44 % on
 * ours, which reaches up to the joint centre.
 */
function femaleThighCentre(stature: number): number {
  const fromKnee = (1 - SEGMENT_TABLE.female.thigh.centrePercent / 100) * TABLE_THIGH.female * stature;
  const trochanteric = surveyLine('trochanterionLessEpicondyle', stature, 'female').value;
  return 1 - fromKnee / (trochanteric + sizedFor(stature, HIP_ABOVE_TROCHANTERION).mean);
}

/**
 * The low hip of the table's women also makes their trunk long. Shoulders differ less, so the centre's distance from the
 * shoulder is kept on our own trunk (estimate): 40.2 % from mid-shoulder, 1 cm lower than printed.
 */
function femaleTrunkCentre(stature: number): number {
  const fromShoulder = (SEGMENT_TABLE.female.trunk.centrePercent / 100) * TABLE_TRUNK_FEMALE * stature;
  const line = (measure: SurveyMeasure) => surveyLine(measure, stature, 'female').value;
  const shoulderDrop = SHOULDER_BELOW_ACROMION.mean * line('acromionRadialeLength');
  const hipRise = sizedFor(stature, HIP_ABOVE_TROCHANTERION).mean;
  return fromShoulder / (line('acromionLessTrochanterion') - shoulderDrop - hipRise);
}

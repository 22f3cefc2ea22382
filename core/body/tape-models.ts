import type { TapeMeasure } from '../document/athlete-schema.ts';
import type { BodyLength } from './body.ts';
import {
  type Correction,
  HIP_ABOVE_TROCHANTERION,
  moved,
  shareOf,
  sizedFor,
  TROCHANTERION_FELT_SD,
} from './joint-centres.ts';
import type { SurveyPerson } from './survey-person.ts';
import { combine, type Uncertain } from './uncertain.ts';

/** Front of the bent knee's joint line ahead of the knee joint centre, share of the knee's depth (estimate). */
const JOINT_LINE_FRONT: Correction = { mean: 0.3, sd: 0.06, source: 'joint line' };

/** Error in feeling for the bony point of the hip. The figure's lengths leave it out; any tape reading contains it. */
const HIP_POINT: Correction = { mean: 0, sd: TROCHANTERION_FELT_SD, source: 'hip point' };

/**
 * What a perfect tape would read of this person for every tape measure, metres, sharing its doubts with the lengths. Ten are
 * the survey's own columns: knee height sitting, buttock–knee length, acromial height, span, foot length, crotch height, tibial
 * height, popliteal height, sitting height and biacromial breadth, between the survey's own points (NATICK/TR-11/017). Two are
 * this project's own and are built from the lengths. Kneeling height adds knee radius, thigh, trunk, head and neck: an upright
 * person on a hard floor. Knee to hip adds trochanterion to knee and 0.3 of the knee's depth.
 */
export function tapeModels(
  person: SurveyPerson,
  lengths: Readonly<Record<BodyLength, Uncertain>>,
): Record<TapeMeasure, Uncertain> {
  return {
    kneeHeightSitting: person.kneeHeightSitting,
    buttockKneeLength: person.buttockKneeLength,
    shoulderHeight: person.acromialHeight,
    armSpan: person.span,
    footLength: person.footLength,
    kneelingHeight: kneelingHeight(lengths),
    crotchHeight: person.crotchHeight,
    tibialHeight: person.tibialHeight,
    poplitealHeight: person.poplitealHeight,
    sittingHeight: person.sittingHeight,
    biacromialBreadth: person.biacromialBreadth,
    kneeToHipLength: kneeToHip(person, lengths.thigh),
  };
}

/** From the floor up: knee, thigh, trunk and head of a person who kneels upright. */
function kneelingHeight(lengths: Readonly<Record<BodyLength, Uncertain>>): Uncertain {
  return combine([
    [1, lengths.kneeRadius],
    [1, lengths.thigh],
    [1, lengths.trunk],
    [1, lengths.headNeck],
  ]);
}

/** From the front of the knee to the bony point of the hip. */
function kneeToHip(person: SurveyPerson, thigh: Uncertain): Uncertain {
  const toTrochanterion = moved(thigh, sizedFor(person.stature.mean, HIP_ABOVE_TROCHANTERION), -1);
  const fromFront = combine([
    [1, toTrochanterion],
    [1, shareOf(person.kneeDepth, JOINT_LINE_FRONT)],
  ]);
  return moved(fromFront, HIP_POINT, 1);
}

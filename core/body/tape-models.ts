import type { TapeMeasure } from '../fit/athlete-schema.ts';
import type { BodyLength } from './body.ts';
import { type Correction, HIP_ABOVE_TROCHANTERION, moved, shareOf, sizedFor } from './joint-centres.ts';
import type { SurveyPerson } from './survey-person.ts';
import { combine, type Uncertain } from './uncertain.ts';

/**
 * How far a kneeling height departs from knee radius, thigh, trunk, head and neck in a row: how upright one kneels,
 * and how deep the knee sinks (estimate).
 */
const KNEELING_POSTURE: Correction = { mean: 0, sd: 0.01, source: 'kneeling posture' };

/** Front of the bent knee's joint line ahead of the knee joint centre, share of the knee's depth (estimate). */
const JOINT_LINE_FRONT: Correction = { mean: 0.3, sd: 0.06, source: 'joint line' };

/**
 * How truly the bony point felt for at the hip stands for the survey's trochanterion (estimate: two of the survey's own
 * trained posts differ by 39 mm at equal stature, others by less).
 */
const HIP_POINT: Correction = { mean: 0, sd: 0.015, source: 'hip point' };

/**
 * What a perfect tape would read of this person for every tape measure, metres, sharing its doubts with the
 * lengths. Those of the survey are the survey's own columns; two are built from the lengths.
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

function kneelingHeight(lengths: Readonly<Record<BodyLength, Uncertain>>): Uncertain {
  const straight = combine([
    [1, lengths.kneeRadius],
    [1, lengths.thigh],
    [1, lengths.trunk],
    [1, lengths.headNeck],
  ]);
  return moved(straight, KNEELING_POSTURE, 1);
}

function kneeToHip(person: SurveyPerson, thigh: Uncertain): Uncertain {
  const toTrochanterion = moved(thigh, sizedFor(person.stature.mean, HIP_ABOVE_TROCHANTERION), -1);
  const fromFront = combine([
    [1, toTrochanterion],
    [1, shareOf(person.kneeDepth, JOINT_LINE_FRONT)],
  ]);
  return moved(fromFront, HIP_POINT, 1);
}

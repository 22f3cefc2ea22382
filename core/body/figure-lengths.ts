import type { BodyLength } from './body.ts';
import {
  ANKLE_ABOVE_MALLEOLUS,
  type Correction,
  ELBOW_ABOVE_RADIALE,
  ELBOW_BACK_TO_CENTRE,
  HEEL_TO_ANKLE,
  HIP_ABOVE_TROCHANTERION,
  HIPS_APART,
  KNEE_ABOVE_EPICONDYLE,
  KNEE_RADIUS_OF_DEPTH,
  moved,
  SHOULDER_BELOW_ACROMION,
  SHOULDERS_INSIDE_ACROMIA,
  shareOf,
  sizedFor,
  WRIST_SHORT_OF_STYLION,
  withoutPalpation,
} from './joint-centres.ts';
import type { SurveyPerson } from './survey-person.ts';
import { combine, type Uncertain } from './uncertain.ts';

/**
 * The figure's lengths, joint centre to joint centre, from the survey's bony points, metres. The heights of ankle, knee,
 * hip, shoulder and vertex follow one another, so sole to vertex adds up to the stature exactly; the legs' slight
 * slant when standing (about 2 mm) is left out.
 */
export function figureLengths(person: SurveyPerson): Record<BodyLength, Uncertain> {
  const sized = sizing(person);
  const ankle = moved(person.malleolusHeight, sized(ANKLE_ABOVE_MALLEOLUS), 1);
  const knee = moved(person.epicondyleHeight, sized(KNEE_ABOVE_EPICONDYLE), 1);
  const hip = moved(withoutPalpation(person.trochanterionHeight), sized(HIP_ABOVE_TROCHANTERION), 1);
  const shoulder = difference(person.acromialHeight, shoulderDrop(person));
  return {
    thigh: difference(hip, knee),
    shank: difference(knee, ankle),
    ankleHeight: ankle,
    footLength: person.footLength,
    heelToBall: person.ballOfFootLength,
    heelToAnkle: shareOf(person.footLength, HEEL_TO_ANKLE),
    hipSeparation: shareOf(person.stature, HIPS_APART),
    trunk: difference(shoulder, hip),
    shoulderSeparation: moved(person.biacromialBreadth, sized(SHOULDERS_INSIDE_ACROMIA), -1),
    ...armLengths(person),
    headNeck: difference(person.stature, shoulder),
    kneeRadius: shareOf(person.kneeDepth, KNEE_RADIUS_OF_DEPTH),
  };
}

/** Lengths of the arm between joint centres, from the survey's bony points. */
function armLengths(person: SurveyPerson): Record<'upperArm' | 'forearm' | 'hand', Uncertain> {
  const sized = sizing(person);
  const elbow = shareOf(person.acromionRadialeLength, ELBOW_ABOVE_RADIALE);
  const elbowToStylion = combine([
    [1, person.radialeStylionLength],
    [1, elbow],
  ]);
  const forearm = moved(elbowToStylion, sized(WRIST_SHORT_OF_STYLION), -1);
  const elbowToGrip = moved(person.forearmGripLength, sized(ELBOW_BACK_TO_CENTRE), -1);
  return {
    upperArm: difference(difference(person.acromionRadialeLength, shoulderDrop(person)), elbow),
    forearm,
    hand: difference(elbowToGrip, forearm),
  };
}

/** Brings corrections to this person's size. */
const sizing = (person: SurveyPerson) => (by: Correction) => sizedFor(person.stature.mean, by);

/** How far the shoulder's centre lies below its bony point. */
function shoulderDrop(person: SurveyPerson): Uncertain {
  return shareOf(person.acromionRadialeLength, SHOULDER_BELOW_ACROMION);
}

/** One uncertain length less another, what both share in doubt counted out. */
function difference(a: Uncertain, b: Uncertain): Uncertain {
  return combine([
    [1, a],
    [-1, b],
  ]);
}

import { combine, type Uncertain, uncertain } from './uncertain.ts';

/**
 * Where the joint centres lie from the bony points that the survey felt for. Metres unless said to be a share. `sd` is
 * the spread between persons and of the rule itself.
 */
export interface Correction {
  readonly mean: number;
  readonly sd: number;
  /** Name of this doubt: the same doubt wherever the correction is used. */
  readonly source: string;
}

/**
 * Hip joint centre above the trochanterion. The tip of the greater trochanter lies level with the centre of the
 * femoral head in the usual hip (orthopaedic rule, recalled); the spread is an estimate.
 */
export const HIP_ABOVE_TROCHANTERION: Correction = { mean: 0, sd: 0.01, source: 'hip centre' };

/** Knee joint centre above the lateral femoral epicondyle: the flexion axis runs through the epicondyles (recalled). */
export const KNEE_ABOVE_EPICONDYLE: Correction = { mean: 0, sd: 0.006, source: 'knee centre' };

/** Ankle joint centre above the lateral malleolus: de Leva 1996 ends the shank at the malleolus; spread an estimate. */
export const ANKLE_ABOVE_MALLEOLUS: Correction = { mean: 0, sd: 0.005, source: 'ankle centre' };

/**
 * Shoulder joint centre below the acromion and elbow joint centre above the radiale, as shares of acromion–radiale
 * length: 10.4 % and 4.3 % (de Leva 1996, J Biomech 29:1231–1233, recalled). About 35 and 14 mm.
 */
export const SHOULDER_BELOW_ACROMION: Correction = { mean: 0.104, sd: 0.024, source: 'shoulder centre' };
export const ELBOW_ABOVE_RADIALE: Correction = { mean: 0.043, sd: 0.015, source: 'elbow centre' };

/**
 * Wrist joint centre short of the stylion: the radial styloid is the farther of the two, and the centre lies between
 * them (estimate; makes the forearm 0.1545 of stature for men, as de Leva 1996 table 4 has it).
 */
export const WRIST_SHORT_OF_STYLION: Correction = { mean: 0.01, sd: 0.006, source: 'wrist centre' };

/** Back of the bent elbow to the elbow joint centre, along the forearm (estimate). */
export const ELBOW_BACK_TO_CENTRE: Correction = { mean: 0.018, sd: 0.005, source: 'back of elbow' };

/**
 * Hip joint centres apart, share of stature: about a tenth (published pelvis geometry puts it at 0.72 of the distance
 * between the front iliac spines, Bell et al. 1989; that distance is about 24 cm, recalled).
 */
export const HIPS_APART: Correction = { mean: 0.1, sd: 0.008, source: 'hips apart' };

/**
 * Shoulder joint centres closer together than the acromia: the acromion's edge stands a little outside the centre of
 * the humeral head (estimate).
 */
export const SHOULDERS_INSIDE_ACROMIA: Correction = {
  mean: 0.03,
  sd: 0.012,
  source: 'shoulders inside acromia',
};

/** Heel to ankle joint centre along the foot, share of foot length (estimate). */
export const HEEL_TO_ANKLE: Correction = { mean: 0.24, sd: 0.02, source: 'heel to ankle' };

/**
 * Knee joint centre to the kneeling surface, share of the knee's depth from front to back (bent square). The front of the
 * knee bears when one kneels: kneecap and the top of the shin; the axis lies about half way through (estimate).
 */
export const KNEE_RADIUS_OF_DEPTH: Correction = { mean: 0.5, sd: 0.06, source: 'knee radius' };

/** A share of a length, with the doubt of the share, metres. */
export function shareOf(length: Uncertain, { mean, sd, source }: Correction): Uncertain {
  return combine([
    [mean, length],
    [1, uncertain(0, sd * length.mean, source)],
  ]);
}

/** A length with a correction in metres added (`sense` 1) or taken away (−1), and the correction's doubt. */
export function moved(length: Uncertain, { mean, sd, source }: Correction, sense: 1 | -1): Uncertain {
  return combine([
    [1, length],
    [sense, uncertain(mean, sd, source)],
  ]);
}

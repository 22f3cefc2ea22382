import { combine, type Uncertain, uncertain } from './uncertain.ts';

/**
 * Distance of a joint centre from the bony point that the survey felt for: metres on a person of 1.70 m (`sizedFor` scales it
 * to another person), or a share where it says so. The spread covers both persons and the doubt of the rule itself.
 */
export interface Correction {
  /** Expected distance from the bony point to the joint's centre. */
  readonly mean: number;
  /** One standard deviation of it, in the same unit. */
  readonly sd: number;
  /** Name of this doubt: the same doubt wherever the correction is used. */
  readonly source: string;
}

/**
 * Hip joint centre above the survey's trochanterion (estimate, between published figures that disagree). The bony tip of the
 * greater trochanter lies *above* the centre of the head, by 7.3 ± 5.1 mm (519 femurs by tomography, Gupta, conference
 * abstract) and 9.5 ± 6 mm (150 radiographs, J Arthroplasty 2006;21:897–898); a trochanter felt for in a gait laboratory, by
 * 4.8 mm (Weinhandl & O'Connor 2010, J Biomech, doi 10.1016/j.jbiomech.2010.05.023). By these figures the joint would lie at
 * the survey's trochanterion or below. But this survey's point lies lower than that tip: two of its own posts differ by 39 mm,
 * and four others put the joint 14 to 36 mm above it: femurs (Trotter & Gleser 1952), sitting height less the height of the hip
 * over the seat, the ratio table's hip height, and de Leva's men. 18 ± 10 mm follows these four and keeps the others within two
 * standard deviations. It matters little: without it the front knee of a man of 1.80 m opens by 0.9°, and his centre of mass
 * moves by less than a millimetre fore and aft. tests/reference/body-hip-height.test.ts holds all of it.
 */
export const HIP_ABOVE_TROCHANTERION: Correction = { mean: 0.018, sd: 0.01, source: 'hip centre' };

/**
 * Standard deviation, metres, of the error in feeling for the trochanterion (estimate). The survey's heights of it spread by 26
 * mm among men of one stature; the spread of sitting height and crotch height leaves 22–24 mm for the legs themselves.
 */
export const TROCHANTERION_FELT_SD = 0.012;

/**
 * Knee joint centre above the lateral femoral epicondyle: the line through the epicondyles lies within 3.4 mm of the
 * flexion axis (Churchill et al. 1998, Clin Orthop 356:111–118). Widened for palpation.
 */
export const KNEE_ABOVE_EPICONDYLE: Correction = { mean: 0, sd: 0.005, source: 'knee centre' };

/** Ankle joint centre above the lateral malleolus: de Leva 1996 ends the shank at the malleolus; spread an estimate. */
export const ANKLE_ABOVE_MALLEOLUS: Correction = { mean: 0, sd: 0.005, source: 'ankle centre' };

/**
 * Shoulder joint centre below the acromion, share of acromion–radiale length: 10.4 %, about 35 mm (de Leva 1996, J Biomech
 * 29:1231–1233, from memory). The spread is wide because adding up bone gives more: 9 mm from acromion to humeral head
 * standing (upright tomography of 166 shoulders, J Orthop Surg Res 2020), a head's radius of 24 mm and the acromion's own
 * thickness (from memory) make 41 mm.
 */
export const SHOULDER_BELOW_ACROMION: Correction = { mean: 0.104, sd: 0.03, source: 'shoulder centre' };

/** Elbow joint centre above the radiale, share of acromion–radiale length: 4.3 %, about 14 mm (same source, from memory). */
export const ELBOW_ABOVE_RADIALE: Correction = { mean: 0.043, sd: 0.015, source: 'elbow centre' };

/**
 * Wrist joint centre short of the stylion: the radial styloid is the farther of the two, and the centre lies between
 * them (estimate; it makes a man's forearm 0.155 of stature, as de Leva 1996 table 4 has it).
 */
export const WRIST_SHORT_OF_STYLION: Correction = { mean: 0.01, sd: 0.006, source: 'wrist centre' };

/** Back of the bent elbow to the elbow joint centre, along the forearm (estimate). */
export const ELBOW_BACK_TO_CENTRE: Correction = { mean: 0.018, sd: 0.005, source: 'back of elbow' };

/**
 * Hip joint centres apart, share of stature: about a tenth. Each lies inward of its front iliac spine by 14 % of the distance
 * between the two (Bell, Brand & Pedersen 1989, Hum Mov Sci 8:3–16), so 0.72 of some 24 cm (from memory).
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
 * Knee joint centre to the kneeling surface, share of the knee's depth from front to back, bent square. The front of the knee
 * bears when one kneels, kneecap and top of the shin; the axis lies about half way through (estimate; condyle 28, kneecap 24
 * and skin 5 mm, from memory, add up to half of 115 mm too).
 */
export const KNEE_RADIUS_OF_DEPTH: Correction = { mean: 0.5, sd: 0.06, source: 'knee radius' };

/**
 * The height of the trochanterion without the survey's palpation error, metres. The error is taken out of the part of the
 * spread that no other measure shares, so covariances with the others stay as surveyed.
 */
export function withoutPalpation(trochanterion: Uncertain): Uncertain {
  const own = trochanterion.sources.trochanterionHeight ?? 0;
  const felt = Math.min(TROCHANTERION_FELT_SD, Math.abs(own));
  const sources = { ...trochanterion.sources, trochanterionHeight: Math.sqrt(own ** 2 - felt ** 2) };
  return { mean: trochanterion.mean, sources };
}

/** Stature, metres, for which corrections in metres are stated. */
const STATED_FOR_STATURE = 1.7;

/** A correction in metres scaled to a person's stature, metres. */
export function sizedFor(stature: number, { mean, sd, source }: Correction): Correction {
  const scale = stature / STATED_FOR_STATURE;
  return { mean: mean * scale, sd: sd * scale, source };
}

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

import type { TapeMeasure } from '../document/athlete-schema.ts';

/** How one tape measure is taken, in plain words. */
export interface MeasuringGuide {
  readonly name: string;
  /** The measure's name in ISO 7250-1 (recalled), where the standard has it; null where this project defines it. */
  readonly isoName: string | null;
  readonly posture: string;
  readonly from: string;
  readonly to: string;
  readonly hint: string;
}

/**
 * The tape measures of an athlete: where from, where to, how the athlete stands or sits. Always the side that is knelt
 * on, bare feet, thin clothes, a rigid rule or a tape held straight; twice, and a third time if the two differ by more
 * than 1 cm. Landmarks in our own words after the named standard's measures; common practice in the handling.
 */
export const MEASURING: Readonly<Record<TapeMeasure, MeasuringGuide>> = {
  kneeHeightSitting: {
    name: 'Knee height, sitting',
    isoName: 'knee height, sitting',
    posture: 'Sitting, knee and ankle bent square, foot flat on the floor.',
    from: 'the floor',
    to: 'the top of the thigh just behind the kneecap',
    hint: 'Lay a flat rule across the thigh and measure straight down beside the shin.',
  },
  buttockKneeLength: {
    name: 'Buttock to knee',
    isoName: 'buttock–knee length',
    posture: 'Sitting upright with the seat against a wall, knee bent square.',
    from: 'the wall behind the seat',
    to: 'the foremost point of the kneecap',
    hint: 'Hold a book against the kneecap, level with the thigh, and measure along the thigh to the wall.',
  },
  shoulderHeight: {
    name: 'Shoulder height',
    isoName: 'shoulder height',
    posture: 'Standing upright, heels together, arms hanging, shoulders loose.',
    from: 'the floor',
    to: 'the bony edge at the tip of the shoulder',
    hint: 'Follow the ridge of the shoulder blade outward with a finger until it ends, and mark the top of that edge.',
  },
  armSpan: {
    name: 'Arm span',
    isoName: null,
    posture: 'Standing with the back to a wall, both arms stretched out level, palms forward.',
    from: 'the tip of one middle finger',
    to: 'the tip of the other',
    hint: 'Put one finger tip in a corner of the room and mark the wall at the other.',
  },
  footLength: {
    name: 'Foot length',
    isoName: 'foot length',
    posture: 'Standing, weight on both feet.',
    from: 'the rearmost point of the heel',
    to: 'the tip of the longest toe',
    hint: 'Heel against a wall, a book upright against the toes; measure along the foot, not slantwise.',
  },
  kneelingHeight: {
    name: 'Kneeling height',
    isoName: null,
    posture:
      'Kneeling on a hard floor on the kneeling knee, thigh and back upright, the other foot in front for balance.',
    from: 'the floor under the knee',
    to: 'the top of the head, looking straight ahead',
    hint: 'Check from the side that thigh and back stand in one plumb line; a thin mat is part of the floor.',
  },
  crotchHeight: {
    name: 'Crotch height',
    isoName: 'crotch height',
    posture: 'Standing upright, feet a hand apart, weight on both.',
    from: 'the floor',
    to: 'the top edge of a thin book pulled up level between the legs',
    hint: 'The athlete holds the book as firmly as a saddle; you read the height at its back edge.',
  },
  tibialHeight: {
    name: 'Tibial height',
    isoName: 'tibial height',
    posture: 'Standing upright, weight on both feet.',
    from: 'the floor',
    to: 'the upper inner edge of the shin bone at the knee joint',
    hint: 'Bend and stretch the knee: the edge that stays with the shin, below the gap, is the one.',
  },
  poplitealHeight: {
    name: 'Hollow of the knee',
    isoName: 'lower leg length (popliteal height)',
    posture: 'Sitting, knee and ankle bent square, foot flat on the floor.',
    from: 'the floor',
    to: 'the underside of the thigh right behind the knee',
    hint: 'Slide a rule along the seat edge until it meets the tendon at the back of the knee.',
  },
  sittingHeight: {
    name: 'Sitting height',
    isoName: 'sitting height (erect)',
    posture: 'Sitting as tall as can be on a hard, level seat, thighs level, looking straight ahead.',
    from: 'the seat',
    to: 'the top of the head',
    hint: 'Back against a wall, a book level on the head; take the seat’s own height off.',
  },
  biacromialBreadth: {
    name: 'Shoulder breadth',
    isoName: 'shoulder (biacromial) breadth',
    posture: 'Sitting or standing upright, arms hanging, shoulders loose.',
    from: 'the bony edge at the tip of one shoulder',
    to: 'the same edge of the other',
    hint: 'From behind and straight across, not round the back: with two books, or a large calliper.',
  },
  kneeToHipLength: {
    name: 'Knee to hip',
    isoName: null,
    posture: 'Sitting, knee and hip bent square.',
    from: 'the front of the bent knee at the joint line, beside the kneecap’s tendon',
    to: 'the top of the bony point at the side of the hip',
    hint: 'Swing the knee in and out while feeling for the point that rolls under the fingers; trained people differ by 2–4 cm here.',
  },
};

/**
 * Six measures to take first, in order: each is the one that then takes most off the summed spread of the lengths that
 * kneeling depends on (`LENGTHS_THAT_MATTER`), stature and mass known, by the usual hand, or comes within 3 % of it. Crotch height is not
 * among them: it would tell as much as sitting height, but nobody needs to be touched for that. Worked out again by
 * tests/core/body/measuring.test.ts.
 */
export const FIRST_TAPES: readonly TapeMeasure[] = [
  'sittingHeight',
  'shoulderHeight',
  'kneelingHeight',
  'kneeToHipLength',
  'footLength',
  'armSpan',
];

/** Lengths of the figure on which a kneeling stance depends most. */
export const LENGTHS_THAT_MATTER = [
  'thigh',
  'shank',
  'trunk',
  'kneeRadius',
  'headNeck',
  'heelToBall',
  'upperArm',
  'forearm',
] as const;

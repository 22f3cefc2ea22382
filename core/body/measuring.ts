import type { TapeMeasure } from '../document/athlete-schema.ts';

/**
 * Each tape measure's name in ISO 7250-1 (from memory), where the standard has it; null where this project defines it. How it is
 * taken say the messages `tape.…`: always the side that is knelt on, bare feet, thin clothes, a rigid rule or a tape held
 * straight; twice, and a third time if the two differ by more than 1 cm. Landmarks in our own words after the named standard's
 * measures; common practice in the handling.
 */
export const ISO_NAMES: Readonly<Record<TapeMeasure, string | null>> = {
  kneeHeightSitting: 'knee height, sitting',
  buttockKneeLength: 'buttock–knee length',
  shoulderHeight: 'shoulder height',
  armSpan: null,
  footLength: 'foot length',
  kneelingHeight: null,
  crotchHeight: 'crotch height',
  tibialHeight: 'tibial height',
  poplitealHeight: 'lower leg length (popliteal height)',
  sittingHeight: 'sitting height (erect)',
  biacromialBreadth: 'shoulder (biacromial) breadth',
  kneeToHipLength: null,
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

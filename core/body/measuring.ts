import type { TapeMeasure } from '../document/athlete-schema.ts';

/**
 * Each tape measure's name in ISO 7250-1 (from memory), where the standard has it; null where this project defines it. The
 * messages `tape.…` say how it is taken: always on the kneeling side, bare feet, thin clothes, a rigid rule or a tape held
 * straight; twice, and a third time if the two differ by more than 1 cm. Landmarks follow the standard's measures, in our own
 * words; the handling is common practice.
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
 * Six measures to take first, in order: each one narrows the summed spread of the lengths that kneeling depends on
 * (`LENGTHS_THAT_MATTER`) more than any other would, or within 3 % of it; stature and mass are known and reading is usually
 * careful. Crotch height is not among them: it narrows as much as sitting height, but sitting height touches nobody.
 * tests/core/body/measuring.test.ts computes the order again.
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

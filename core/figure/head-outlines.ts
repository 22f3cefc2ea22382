import type { ViewName } from '../graphics/view.ts';
import { type Curve, withOtherSide } from './hair-outlines.ts';

/**
 * A head drawn square on, in head heights (chin to crown) from its middle. In profile: ahead and up; from behind: to port
 * and up; from above: ahead and to port. Closed curves run fair through their points; lines are open. Length and breadth
 * are those of the survey (0.86 and 0.68 of the height); how the curves run is drawn, the same face for everybody.
 */
export interface HeadOutline {
  /** Closed outline, in heights of the head from its middle. */
  readonly face: Curve;
  /** None where hair or the head itself hides them. */
  readonly ears: readonly Curve[];
  /** Eye, brow and mouth. */
  readonly lines: readonly Curve[];
  /** Where the head grows out of the neck, so that no line is drawn between them. */
  readonly nape: Curve;
}

/** From the side, looking to the right. */
const PROFILE: HeadOutline = {
  nape: [
    [-0.3, -0.21],
    [-0.05, -0.22],
    [-0.035, -0.33],
    [-0.07, -0.42],
    [-0.26, -0.38],
  ],
  face: [
    [-0.02, 0.49],
    [0.16, 0.465],
    [0.29, 0.39],
    [0.365, 0.28],
    [0.39, 0.18],
    [0.4, 0.115],
    [0.378, 0.065],
    [0.39, 0.02],
    [0.432, -0.06],
    [0.468, -0.118],
    [0.452, -0.15],
    [0.4, -0.165],
    [0.398, -0.19],
    [0.418, -0.222],
    [0.414, -0.245],
    [0.395, -0.255],
    [0.408, -0.275],
    [0.404, -0.3],
    [0.376, -0.325],
    [0.377, -0.36],
    [0.387, -0.405],
    [0.365, -0.46],
    [0.305, -0.49],
    [0.22, -0.475],
    [0.1, -0.42],
    [-0.01, -0.35],
    [-0.06, -0.27],
    [-0.16, -0.26],
    [-0.28, -0.25],
    [-0.385, -0.13],
    [-0.435, 0.03],
    [-0.435, 0.19],
    [-0.37, 0.345],
    [-0.22, 0.455],
  ],
  ears: [
    [
      [0.01, 0.065],
      [0.055, 0.05],
      [0.06, 0.0],
      [0.03, -0.06],
      [0.02, -0.115],
      [-0.015, -0.125],
      [-0.035, -0.07],
      [-0.055, 0.0],
      [-0.04, 0.05],
    ],
  ],
  lines: [
    [
      [0.29, 0.105],
      [0.33, 0.125],
      [0.378, 0.108],
    ],
    [
      [0.285, 0.035],
      [0.32, 0.047],
      [0.352, 0.028],
    ],
    [
      [0.395, -0.254],
      [0.36, -0.252],
      [0.325, -0.26],
    ],
    [
      [0.438, -0.152],
      [0.415, -0.128],
      [0.4, -0.142],
    ],
  ],
};

/** Half of the outline from behind; the other half is its mirror image. */
const BEHIND_HALF: Curve = [
  [0, 0.49],
  [0.15, 0.465],
  [0.27, 0.37],
  [0.33, 0.22],
  [0.338, 0.06],
  [0.315, -0.1],
  [0.285, -0.25],
  [0.225, -0.38],
  [0.12, -0.43],
];
/** The ear of that half. */
const EAR_BEHIND: Curve = [
  [0.325, 0.055],
  [0.37, 0.065],
  [0.385, 0.02],
  [0.37, -0.06],
  [0.335, -0.125],
  [0.312, -0.09],
];
/** Half of the outline from above. */
const ABOVE_HALF: Curve = [
  [0.395, 0],
  [0.385, 0.1],
  [0.33, 0.215],
  [0.2, 0.29],
  [0.02, 0.335],
  [-0.16, 0.33],
  [-0.32, 0.25],
  [-0.41, 0.12],
];

/** From behind. */
const SECTION: HeadOutline = {
  nape: [
    [-0.17, -0.2],
    [-0.17, -0.5],
    [0.17, -0.5],
    [0.17, -0.2],
  ],
  face: withOtherSide(BEHIND_HALF),
  ears: [EAR_BEHIND, EAR_BEHIND.map(([a, b]) => [-a, b] as const)],
  lines: [],
};

/** From above, looking to the right. */
const PLAN: HeadOutline = {
  nape: [],
  face: [
    [0.475, 0],
    [0.455, 0.035],
    [0.4, 0.06],
    ...ABOVE_HALF.slice(1),
    [-0.435, 0],
    ...[...ABOVE_HALF.slice(1)].reverse().map(([a, b]) => [a, -b] as const),
    [0.4, -0.06],
    [0.455, -0.035],
  ],
  ears: [
    [
      [0.05, 0.325],
      [0.035, 0.365],
      [-0.02, 0.385],
      [-0.05, 0.36],
      [-0.03, 0.325],
    ],
    [
      [0.05, -0.325],
      [0.035, -0.365],
      [-0.02, -0.385],
      [-0.05, -0.36],
      [-0.03, -0.325],
    ],
  ],
  lines: [],
};

/** The head's outlines in each view. */
export const HEAD_OUTLINES: Readonly<Record<ViewName, HeadOutline>> = {
  profile: PROFILE,
  section: SECTION,
  plan: PLAN,
};

import type { StatedSex } from '../body/sex.ts';
import type { ViewName } from '../graphics/view.ts';

/** Rows of a curve: two coordinates in head heights, as `HeadOutline` has them. */
export type Curve = readonly (readonly [number, number])[];

/** Hair as a view shows it: closed curves painted over the face, whether they leave the ears free, and lines in them. */
export interface HairOutline {
  /** Closed outlines of the hair. */
  readonly hair: readonly Curve[];
  /** Whether the ears are seen. */
  readonly ears: boolean;
  /** Strands, partings and bands. */
  readonly lines: readonly Curve[];
}

/** Cropped; tied back at the nape; or over the ears. */
export type HairStyle = 'short' | 'tied' | 'full';

/** Hair is drawn, not measured: one style for each stated sex. */
export const HAIR_OF: Readonly<Record<StatedSex, HairStyle>> = {
  male: 'short',
  female: 'tied',
  unspecified: 'full',
};

/** A whole outline from the half on one side of the line where the first number is 0. */
export const withOtherSide = (half: Curve): Curve => [
  ...half,
  ...half
    .slice(1)
    .reverse()
    .map(([a, b]) => [-a, b] as const),
];
/** A whole outline from the half on one side of the line where the second number is 0. */
const withOtherHalf = (half: Curve): Curve => [
  ...half,
  ...half
    .slice(1, -1)
    .reverse()
    .map(([a, b]) => [a, -b] as const),
];

/** Short hair, in heights of the head from its middle. */
const SHORT: Readonly<Record<ViewName, HairOutline>> = {
  profile: {
    ears: true,
    lines: [],
    hair: [
      [
        [-0.02, 0.515],
        [0.17, 0.49],
        [0.3, 0.415],
        [0.355, 0.33],
        [0.3, 0.29],
        [0.235, 0.22],
        [0.205, 0.12],
        [0.165, 0.03],
        [0.11, 0.02],
        [0.09, 0.08],
        [0.0, 0.08],
        [-0.075, 0.02],
        [-0.085, -0.1],
        [-0.13, -0.19],
        [-0.2, -0.25],
        [-0.29, -0.235],
        [-0.4, -0.11],
        [-0.453, 0.03],
        [-0.453, 0.2],
        [-0.385, 0.365],
        [-0.23, 0.475],
      ],
    ],
  },
  section: {
    ears: true,
    lines: [],
    hair: [
      withOtherSide([
        [0, 0.515],
        [0.16, 0.49],
        [0.285, 0.39],
        [0.352, 0.22],
        [0.352, 0.08],
        [0.315, 0.0],
        [0.3, -0.12],
        [0.24, -0.21],
        [0.12, -0.25],
      ]),
    ],
  },
  plan: {
    ears: true,
    lines: [],
    hair: [
      withOtherHalf([
        [0.3, 0],
        [0.29, 0.1],
        [0.24, 0.19],
        [0.17, 0.27],
        [0.02, 0.35],
        [-0.17, 0.345],
        [-0.335, 0.26],
        [-0.43, 0.125],
        [-0.455, 0],
      ]),
    ],
  },
};

/** The tail seen from behind, half of it, from its band down. */
const TAIL_BEHIND: Curve = [
  [0, 0.17],
  [0.075, 0.14],
  [0.085, 0.03],
  [0.105, -0.14],
  [0.09, -0.31],
  [0.035, -0.45],
];

/** Long hair tied at the back. */
const TIED: Readonly<Record<ViewName, HairOutline>> = {
  profile: {
    ears: true,
    lines: [
      [
        [-0.425, 0.175],
        [-0.45, 0.11],
        [-0.438, 0.03],
      ],
      [
        [0.27, 0.29],
        [0.06, 0.27],
        [-0.17, 0.21],
        [-0.38, 0.11],
      ],
    ],
    hair: [
      [
        [-0.4, 0.17],
        [-0.47, 0.185],
        [-0.55, 0.12],
        [-0.595, -0.02],
        [-0.6, -0.18],
        [-0.565, -0.33],
        [-0.515, -0.43],
        [-0.5, -0.3],
        [-0.49, -0.16],
        [-0.465, -0.03],
        [-0.41, 0.05],
      ],
      [
        [-0.02, 0.51],
        [0.17, 0.485],
        [0.3, 0.41],
        [0.35, 0.335],
        [0.285, 0.28],
        [0.215, 0.21],
        [0.17, 0.12],
        [0.14, 0.02],
        [0.1, 0.05],
        [0.0, 0.09],
        [-0.075, 0.03],
        [-0.1, -0.07],
        [-0.18, -0.16],
        [-0.27, -0.18],
        [-0.39, -0.09],
        [-0.448, 0.03],
        [-0.448, 0.2],
        [-0.38, 0.36],
        [-0.23, 0.47],
      ],
    ],
  },
  section: {
    ears: true,
    lines: [
      [...TAIL_BEHIND].reverse().concat(TAIL_BEHIND.slice(1).map(([a, b]) => [-a, b] as const)) as Curve,
    ],
    hair: [
      withOtherSide([
        [0, 0.51],
        [0.16, 0.485],
        [0.283, 0.385],
        [0.347, 0.22],
        [0.345, 0.08],
        [0.31, 0.0],
        [0.275, -0.08],
        [0.19, -0.15],
        [0.1, -0.18],
      ]),
      withOtherSide(TAIL_BEHIND),
    ],
  },
  plan: {
    ears: true,
    lines: [],
    hair: [
      withOtherHalf([
        [-0.4, 0],
        [-0.43, 0.06],
        [-0.52, 0.1],
        [-0.59, 0.07],
        [-0.61, 0],
      ]),
      withOtherHalf([
        [0.29, 0],
        [0.28, 0.1],
        [0.23, 0.19],
        [0.15, 0.275],
        [0.01, 0.345],
        [-0.17, 0.34],
        [-0.33, 0.255],
        [-0.425, 0.12],
        [-0.448, 0],
      ]),
    ],
  },
};

/** Hair that falls over the ears. */
const FULL: Readonly<Record<ViewName, HairOutline>> = {
  profile: {
    ears: false,
    lines: [],
    hair: [
      [
        [-0.02, 0.525],
        [0.18, 0.5],
        [0.315, 0.42],
        [0.37, 0.315],
        [0.325, 0.245],
        [0.26, 0.19],
        [0.2, 0.1],
        [0.165, -0.02],
        [0.13, -0.12],
        [0.075, -0.19],
        [0.0, -0.225],
        [-0.09, -0.27],
        [-0.2, -0.32],
        [-0.315, -0.31],
        [-0.425, -0.19],
        [-0.47, 0.0],
        [-0.468, 0.2],
        [-0.395, 0.375],
        [-0.235, 0.485],
      ],
    ],
  },
  section: {
    ears: false,
    lines: [],
    hair: [
      withOtherSide([
        [0, 0.525],
        [0.17, 0.5],
        [0.295, 0.4],
        [0.365, 0.22],
        [0.378, 0.04],
        [0.365, -0.12],
        [0.33, -0.24],
        [0.24, -0.31],
        [0.12, -0.33],
      ]),
    ],
  },
  plan: {
    ears: false,
    lines: [],
    hair: [
      withOtherHalf([
        [0.315, 0],
        [0.305, 0.1],
        [0.255, 0.2],
        [0.175, 0.3],
        [0.02, 0.37],
        [-0.17, 0.365],
        [-0.345, 0.275],
        [-0.445, 0.13],
        [-0.47, 0],
      ]),
    ],
  },
};

/** Hair of each style in each view. */
export const HAIR: Readonly<Record<HairStyle, Readonly<Record<ViewName, HairOutline>>>> = {
  short: SHORT,
  tied: TIED,
  full: FULL,
};

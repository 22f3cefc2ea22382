import type { TapeMeasure } from '../../../core/document/athlete-schema.ts';

type Point = readonly [number, number];

/** A limb: a bar between two joints. Far limbs are lighter. */
export interface Limb {
  readonly from: Point;
  readonly to: Point;
  readonly width: number;
  readonly far?: boolean;
}

/** A picture on a sheet of 300 by 300, y downward: the body, what it stands or sits on, and the two landmarks. */
export interface Figure {
  readonly ground: readonly string[];
  readonly limbs: readonly Limb[];
  readonly shapes: readonly string[];
  readonly head: readonly [number, number, number] | null;
  readonly from: Point;
  readonly to: Point;
  /** Where the tape is drawn beside the body; left out, it lies between the landmarks themselves. */
  readonly aside?: readonly [Point, Point];
}

type Body = Pick<Figure, 'ground' | 'limbs' | 'shapes' | 'head'>;

const FLOOR = 'M10 285H290';
const limb = (from: Point, to: Point, width: number, far?: 'far'): Limb =>
  far ? { from, to, width, far: true } : { from, to, width };

/** Standing, seen from the side, facing right. */
const STANDING: Body = {
  ground: [FLOOR],
  head: [150, 57, 21],
  limbs: [
    limb([147, 84], [147, 152], 34),
    limb([147, 152], [150, 214], 24),
    limb([150, 214], [146, 272], 17),
    limb([142, 279], [174, 280], 11),
    limb([146, 90], [146, 132], 13),
    limb([146, 132], [152, 170], 11),
  ],
  shapes: [],
};

/** Standing, seen from the front. */
const FRONT: Body = {
  ground: [FLOOR],
  head: [150, 57, 20],
  limbs: [
    limb([138, 152], [134, 216], 22),
    limb([162, 152], [166, 216], 22),
    limb([134, 216], [132, 274], 16),
    limb([166, 216], [168, 274], 16),
    limb([132, 278], [124, 281], 10),
    limb([168, 278], [176, 281], 10),
    limb([150, 92], [150, 148], 44),
    limb([123, 92], [115, 136], 12),
    limb([177, 92], [185, 136], 12),
    limb([115, 136], [113, 174], 10),
    limb([185, 136], [187, 174], 10),
  ],
  shapes: [],
};

/** Standing against a wall, arms stretched out. */
const STRETCHED: Body = {
  ...FRONT,
  limbs: [
    ...FRONT.limbs.slice(0, 7),
    limb([124, 92], [84, 92], 12),
    limb([176, 92], [216, 92], 12),
    limb([84, 92], [38, 91], 10),
    limb([216, 92], [262, 91], 10),
  ],
};

/** Sitting on a bench, seen from the side, facing right, the knee square. */
const SITTING: Body = {
  ground: [FLOOR, 'M78 222H160V285', 'M78 222V285'],
  head: [112, 112, 21],
  limbs: [
    limb([107, 140], [108, 204], 34),
    limb([110, 207], [176, 207], 24),
    limb([176, 207], [176, 272], 17),
    limb([171, 279], [203, 280], 11),
    limb([107, 146], [112, 184], 13),
    limb([112, 184], [144, 194], 11),
  ],
  shapes: [],
};

/** Sitting with the seat against a wall. */
const AGAINST_WALL: Body = { ...SITTING, ground: [FLOOR, 'M91 222H160V285', 'M91 60V285'] };

/** Kneeling on the left knee with the other foot in front, seen from the side, facing right. */
const KNEELING: Body = {
  ground: [FLOOR],
  head: [140, 115, 21],
  limbs: [
    limb([138, 212], [196, 212], 22, 'far'),
    limb([196, 212], [194, 272], 16, 'far'),
    limb([189, 279], [221, 280], 11, 'far'),
    limb([138, 142], [138, 206], 34),
    limb([138, 212], [140, 271], 24),
    limb([140, 274], [82, 276], 17),
    limb([80, 276], [66, 281], 10),
    limb([137, 148], [138, 188], 13),
    limb([138, 188], [146, 222], 11),
  ],
  shapes: [],
};

/** A foot from its inner side, the heel against a wall. */
const FOOT: Body = {
  ground: ['M20 240H280', 'M48 90V240'],
  head: null,
  limbs: [],
  shapes: [
    'M66 70C64 110 60 150 52 190 46 220 56 238 74 238H232C250 238 256 226 246 216 226 200 196 192 172 172 150 152 138 118 136 70Z',
  ],
};

/** Where each measure is taken. */
export const FIGURES: Readonly<Record<TapeMeasure | 'stature', Figure>> = {
  stature: {
    ...STANDING,
    ground: [FLOOR, 'M128 20V285'],
    from: [150, 285],
    to: [150, 36],
    aside: [
      [232, 285],
      [232, 36],
    ],
  },
  kneeHeightSitting: {
    ...SITTING,
    from: [176, 285],
    to: [168, 195],
    aside: [
      [236, 285],
      [236, 195],
    ],
  },
  buttockKneeLength: {
    ...AGAINST_WALL,
    from: [91, 207],
    to: [188, 207],
    aside: [
      [91, 240],
      [188, 240],
    ],
  },
  shoulderHeight: {
    ...STANDING,
    from: [146, 285],
    to: [146, 80],
    aside: [
      [228, 285],
      [228, 80],
    ],
  },
  armSpan: {
    ...STRETCHED,
    from: [33, 91],
    to: [267, 91],
    aside: [
      [33, 30],
      [267, 30],
    ],
  },
  footLength: {
    ...FOOT,
    from: [50, 222],
    to: [251, 222],
    aside: [
      [50, 264],
      [251, 264],
    ],
  },
  kneelingHeight: {
    ...KNEELING,
    from: [140, 285],
    to: [140, 94],
    aside: [
      [252, 285],
      [252, 94],
    ],
  },
  crotchHeight: { ...FRONT, ground: [FLOOR, 'M138 166H162'], from: [150, 285], to: [150, 166] },
  tibialHeight: {
    ...STANDING,
    from: [150, 285],
    to: [157, 219],
    aside: [
      [222, 285],
      [222, 219],
    ],
  },
  poplitealHeight: {
    ...SITTING,
    from: [166, 285],
    to: [164, 219],
    aside: [
      [236, 285],
      [236, 219],
    ],
  },
  sittingHeight: {
    ...SITTING,
    from: [108, 222],
    to: [112, 91],
    aside: [
      [44, 222],
      [44, 91],
    ],
  },
  biacromialBreadth: {
    ...FRONT,
    from: [124, 86],
    to: [176, 86],
    aside: [
      [124, 22],
      [176, 22],
    ],
  },
  kneeToHipLength: {
    ...SITTING,
    from: [187, 207],
    to: [107, 200],
    aside: [
      [190, 160],
      [110, 153],
    ],
  },
};

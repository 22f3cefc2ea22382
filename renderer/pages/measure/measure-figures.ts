import type { TapeMeasure } from '../../../core/document/athlete-schema.ts';
import { type MeasuringPose, POSED } from '../../../core/figure/measuring-poses.ts';
import type { ViewPoint } from '../../../core/graphics/view.ts';

/** Where a measure is taken. Metres in the view: from the side, facing right, or from behind; up from the floor. */
export interface TapePicture {
  readonly pose: MeasuringPose;
  readonly view: 'profile' | 'section';
  /** Middle and breadth of the square that is shown. */
  readonly seen: readonly [right: number, up: number, breadth: number];
  /** Floor, wall, seat or book, as lines. */
  readonly ground: readonly (readonly ViewPoint[])[];
  readonly from: ViewPoint;
  readonly to: ViewPoint;
  /** Where the tape is drawn beside the body; left out, it lies between the landmarks themselves. */
  readonly aside?: readonly [ViewPoint, ViewPoint];
}

const FLOOR: readonly ViewPoint[] = [
  [-1.5, 0],
  [1.5, 0],
];
const STANDING = { pose: 'standing', view: 'profile', seen: [0.1, 0.9, 2], ground: [FLOOR] } as const;
const BEHIND = { pose: 'standing', view: 'section', seen: [0, 0.93, 2.1], ground: [FLOOR] } as const;
/** Height of the seat somebody sits on, and its edges. */
const SEAT = 0.412;
const BENCH: readonly ViewPoint[] = [
  [-0.62, 0],
  [-0.62, SEAT],
  [-0.1, SEAT],
  [-0.1, 0],
];
/** The wall that the seat is against. */
const WALL = -0.55;
const SITTING = {
  pose: 'sitting',
  view: 'profile',
  seen: [-0.2, 0.68, 1.6],
  ground: [FLOOR, BENCH],
} as const;
const HIP = -POSED.thigh;
const CROWN = 1.338;

const upright = (from: ViewPoint, to: ViewPoint, x: number) => ({
  from,
  to,
  aside: [
    [x, from[1]],
    [x, to[1]],
  ] as const,
});
const level = (from: ViewPoint, to: ViewPoint, z: number) => ({
  from,
  to,
  aside: [
    [from[0], z],
    [to[0], z],
  ] as const,
});

/** Where each measure is taken: the bony points, not the outline. */
export const TAPE_PICTURES: Readonly<Record<TapeMeasure | 'stature', TapePicture>> = {
  stature: {
    ...STANDING,
    ground: [
      FLOOR,
      [
        [-0.155, 0],
        [-0.155, 1.9],
      ],
    ],
    ...upright([0, 0], [0, POSED.stature], 0.5),
  },
  shoulderHeight: { ...STANDING, ...upright([0, 0], [0, 1.425], 0.5) },
  tibialHeight: { ...STANDING, ...upright([0.02, 0], [0.02, 0.468], 0.4) },
  kneeHeightSitting: { ...SITTING, ...upright([-0.04, 0], [-0.04, 0.554], 0.42) },
  poplitealHeight: { ...SITTING, ...upright([-0.05, 0], [-0.05, 0.44], 0.42) },
  buttockKneeLength: {
    ...SITTING,
    ground: [
      FLOOR,
      BENCH,
      [
        [WALL, 0],
        [WALL, 1.4],
      ],
    ],
    ...level([WALL, 0.5], [0.058, 0.5], 0.24),
  },
  kneeToHipLength: { ...SITTING, ...level([0.052, 0.475], [HIP, 0.52], 0.24) },
  sittingHeight: { ...SITTING, ...upright([HIP, SEAT], [HIP, CROWN], -0.85) },
  kneelingHeight: {
    pose: 'kneeling',
    view: 'profile',
    seen: [0.05, 0.66, 1.6],
    ground: [FLOOR],
    ...upright([0, 0], [0, 1.314], 0.78),
  },
  footLength: {
    ...STANDING,
    seen: [0.06, 0.1, 0.5],
    ground: [
      FLOOR,
      [
        [-POSED.heelToAnkle, 0],
        [-POSED.heelToAnkle, 0.3],
      ],
    ],
    ...level([-POSED.heelToAnkle, 0.015], [POSED.footLength - POSED.heelToAnkle, 0.015], -0.06),
  },
  crotchHeight: {
    ...BEHIND,
    ground: [
      FLOOR,
      [
        [-0.07, 0.82],
        [0.07, 0.82],
      ],
    ],
    ...upright([0, 0], [0, 0.82], 0.5),
  },
  biacromialBreadth: { ...BEHIND, ...level([-0.195, 1.425], [0.195, 1.425], 1.86) },
  armSpan: { ...BEHIND, pose: 'stretched', ...level([-0.91, 1.39], [0.91, 1.39], 1.86) },
};

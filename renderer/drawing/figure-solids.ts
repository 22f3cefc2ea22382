import type { BodyEstimate } from '../../core/body/body.ts';
import { add, along, cross, norm, scale, subtract, type Vec3 } from '../../core/frame/vec3.ts';
import type { FigurePoint, Stance } from '../../core/stance/stance.ts';

/** A ball of the figure: centre in the boat frame and radius, metres. */
export interface Ball {
  readonly at: Vec3;
  readonly radius: number;
}

/** What a limb is part of, for tones: pairs are told apart by which of the two is nearer the eye. */
export type Limb = 'kneelingLeg' | 'frontLeg' | 'lowerArm' | 'topArm' | 'trunk' | 'head';

/** One piece of the figure: a union of tight hulls around balls. Boat frame, metres. */
export interface Solid {
  readonly limb: Limb;
  readonly hulls: readonly (readonly Ball[])[];
  /** A point that says how far from the eye the piece is. */
  readonly middle: Vec3;
  /** Grips: drawn after the shaft, whatever their distance. */
  readonly grips: boolean;
}

/**
 * Radii of flesh as shares of stature, for drawing only: estimates, the same for everybody, so that the drawing says
 * nothing of anyone's weight. Joint centres and lengths come from the body estimate.
 */
const FLESH = {
  hip: 0.046,
  seat: 0.049,
  thigh: 0.043,
  knee: 0.03,
  calf: 0.0315,
  ankle: 0.0195,
  heel: 0.0175,
  ball: 0.0145,
  toe: 0.0085,
  waist: 0.05,
  chest: 0.056,
  shoulder: 0.0305,
  upperArm: 0.0265,
  elbow: 0.0205,
  forearm: 0.0225,
  wrist: 0.0145,
  fist: 0.0165,
  neck: 0.03,
  skull: 0.0435,
  jaw: 0.031,
  nose: 0.0075,
} as const;

type Points = Stance['points'];

/** The figure of a stance as solids, boat frame, metres. Seen from any side their outlines are true projections. */
export function figureSolids(stance: Stance, body: BodyEstimate): Solid[] {
  const { points } = stance;
  const flesh = (name: keyof typeof FLESH) => FLESH[name] * body.stature;
  const kneeRadius = Math.min(body.lengths.kneeRadius.value, 1.3 * flesh('knee'));
  return [
    ...leg(points, { which: 'kneeling', flesh, kneeRadius }),
    ...leg(points, { which: 'front', flesh, kneeRadius: flesh('knee') }),
    trunk(points, flesh),
    head(points, flesh),
    ...arm(points, { which: 'lower', flesh }),
    ...arm(points, { which: 'top', flesh }),
  ];
}

type Flesh = (name: keyof typeof FLESH) => number;

const ball = (at: Vec3, radius: number): Ball => ({ at, radius });

function unit(v: Vec3): Vec3 {
  const length = norm(v);
  return length > 1e-9 ? scale(v, 1 / length) : { x: 1, y: 0, z: 0 };
}

/** The part of `v` that stands square to the unit vector `axis`, as a unit vector. */
function squareTo(v: Vec3, axis: Vec3): Vec3 {
  const share = v.x * axis.x + v.y * axis.y + v.z * axis.z;
  return unit(subtract(v, scale(axis, share)));
}

function solid(limb: Limb, hulls: Ball[][], middle: Vec3, grips = { grips: false }): Solid {
  return { limb, hulls, middle, ...grips };
}

function leg(
  points: Points,
  { which, flesh, kneeRadius }: { which: 'kneeling' | 'front'; flesh: Flesh; kneeRadius: number },
): Solid[] {
  const limb = which === 'kneeling' ? 'kneelingLeg' : 'frontLeg';
  const hip = points[`${which}Hip`];
  const knee = points[`${which}Knee`];
  const ankle = points[`${which}Ankle`];
  const shin = unit(subtract(ankle, knee));
  const behind = squareTo(subtract(hip, knee), shin);
  const thigh = along(hip, knee, 0.42);
  const calf = add(along(knee, ankle, 0.3), scale(behind, flesh('calf') * 0.42));
  return [
    solid(
      limb,
      [
        [ball(hip, flesh('hip')), ball(thigh, flesh('thigh'))],
        [ball(thigh, flesh('thigh')), ball(knee, kneeRadius)],
      ],
      along(hip, knee, 0.6),
    ),
    solid(
      limb,
      [
        [ball(knee, kneeRadius * 0.94), ball(calf, flesh('calf'))],
        [ball(calf, flesh('calf')), ball(ankle, flesh('ankle'))],
        [ball(knee, kneeRadius * 0.8), ball(ankle, flesh('ankle'))],
        ...foot(points, which, flesh),
      ],
      along(knee, ankle, 0.5),
    ),
  ];
}

function foot(points: Points, which: 'kneeling' | 'front', flesh: Flesh): Ball[][] {
  const end = which === 'kneeling' ? 'rear' : 'front';
  const ankle = points[`${which}Ankle`];
  const heelAt = points[`${end}Heel`];
  const ballAt = points[`${end}Ball`];
  const toeAt = points[`${end}Toe`];
  // The heel, ball and toe points lie on the sole; their balls sit on the ankle's side of it.
  const sole = unit(subtract(ballAt, heelAt));
  const inward = squareTo(subtract(ankle, heelAt), sole);
  const onSole = (at: Vec3, radius: number) => ball(add(at, scale(inward, radius)), radius);
  const heel = onSole(add(heelAt, scale(sole, flesh('heel') * 0.7)), flesh('heel'));
  const balls = onSole(ballAt, flesh('ball'));
  return [
    [ball(ankle, flesh('ankle')), heel],
    [ball(ankle, flesh('ankle') * 0.95), balls, heel],
    [balls, onSole(toeAt, flesh('toe'))],
  ];
}

function trunk(points: Points, flesh: Flesh): Solid {
  const { kneelingHip, frontHip, midHip, midShoulder, lowerShoulder, topShoulder, neck } = points;
  const up = unit(subtract(midShoulder, midHip));
  const hips = unit(subtract(frontHip, kneelingHip));
  const shoulders = unit(subtract(topShoulder, lowerShoulder));
  const fore = forward(hips, up);
  const middle = unit(add(hips, shoulders));
  const at = (share: number, side: Vec3, { out, ahead }: { out: number; ahead: number }): Vec3 =>
    add(add(along(midHip, midShoulder, share), scale(side, out)), scale(fore, ahead));
  const pair = (name: keyof typeof FLESH, make: (sign: number) => Vec3) => [
    ball(make(-1), flesh(name)),
    ball(make(1), flesh(name)),
  ];
  const hipBalls = [ball(kneelingHip, flesh('hip')), ball(frontHip, flesh('hip'))];
  const seat = pair('seat', (s) =>
    at(0.03, hips, { out: s * flesh('hip') * 0.9, ahead: -flesh('hip') * 0.42 }),
  );
  const waist = pair('waist', (s) => at(0.4, middle, { out: s * flesh('waist') * 0.5, ahead: 0 }));
  const chest = pair('chest', (s) =>
    at(0.74, shoulders, { out: s * flesh('chest') * 0.62, ahead: flesh('chest') * 0.14 }),
  );
  const tops = [ball(lowerShoulder, flesh('shoulder')), ball(topShoulder, flesh('shoulder'))];
  const collar = ball(along(midShoulder, neck, 0.25), flesh('neck') * 1.05);
  return solid(
    'trunk',
    [
      [...hipBalls, ...seat],
      [...hipBalls, ...seat, ...waist],
      [...waist, ...chest],
      [...chest, ...tops],
      [...tops, collar],
    ],
    along(midHip, midShoulder, 0.5),
  );
}

/** Ahead for a pair of joints: square to their line and to `up`, toward the bow. */
function forward(line: Vec3, up: Vec3): Vec3 {
  const ahead = unit(cross(line, up));
  return ahead.x < 0 ? scale(ahead, -1) : ahead;
}

function head(points: Points, flesh: Flesh): Solid {
  const { neck, headTop, midShoulder, lowerShoulder, topShoulder } = points;
  const up = unit(subtract(headTop, midShoulder));
  const fore = forward(subtract(topShoulder, lowerShoulder), up);
  const skull = flesh('skull');
  const from = (down: number, ahead: number) => add(add(headTop, scale(up, -down)), scale(fore, ahead));
  const crown = [
    ball(from(skull, -skull * 0.24), skull),
    ball(from(skull * 1.06, skull * 0.26), skull * 0.96),
  ];
  const jaw = ball(from(skull * 2.25, skull * 0.62), flesh('jaw') * 0.72);
  const nape = ball(from(skull * 2.0, -skull * 0.15), flesh('jaw') * 0.95);
  const nose = ball(from(skull * 1.62, skull * 1.3), flesh('nose'));
  return solid(
    'head',
    [
      [ball(neck, flesh('neck')), nape, ball(along(midShoulder, neck, 0.2), flesh('neck') * 1.05)],
      [...crown, jaw, nape],
      [nose, ball(from(skull * 1.35, skull * 0.9), flesh('nose'))],
    ],
    along(neck, headTop, 0.6),
  );
}

function arm(points: Points, { which, flesh }: { which: 'lower' | 'top'; flesh: Flesh }): Solid[] {
  const limb = which === 'lower' ? 'lowerArm' : 'topArm';
  const shoulder = points[`${which}Shoulder`];
  const elbow = points[`${which}Elbow`];
  const hand = points[`${which}Hand`];
  const wrist = along(hand, elbow, 0.26);
  const muscle = along(shoulder, elbow, 0.4);
  const belly = along(elbow, hand, 0.24);
  return [
    solid(
      limb,
      [
        [ball(shoulder, flesh('shoulder')), ball(muscle, flesh('upperArm'))],
        [ball(muscle, flesh('upperArm')), ball(elbow, flesh('elbow'))],
      ],
      along(shoulder, elbow, 0.6),
    ),
    solid(
      limb,
      [
        [ball(elbow, flesh('elbow')), ball(belly, flesh('forearm'))],
        [ball(belly, flesh('forearm')), ball(wrist, flesh('wrist'))],
      ],
      along(elbow, hand, 0.5),
    ),
    solid(limb, [fist(points, hand, flesh).concat(ball(wrist, flesh('wrist')))], hand, { grips: true }),
  ];
}

/** A closed hand around the shaft: two balls along it. */
function fist(points: Points, hand: Vec3, flesh: Flesh): Ball[] {
  const shaft = unit(subtract(points.lowerHand, points.topHand));
  const half = flesh('fist') * 0.9;
  return [-half, half].map((reach) => ball(add(hand, scale(shaft, reach)), flesh('fist')));
}

/** Joints that get a circle, with the limb that owns each. */
export const JOINTS: readonly (readonly [FigurePoint, Limb])[] = [
  ['kneelingHip', 'kneelingLeg'],
  ['kneelingKnee', 'kneelingLeg'],
  ['kneelingAnkle', 'kneelingLeg'],
  ['frontHip', 'frontLeg'],
  ['frontKnee', 'frontLeg'],
  ['frontAnkle', 'frontLeg'],
  ['lowerShoulder', 'lowerArm'],
  ['lowerElbow', 'lowerArm'],
  ['topShoulder', 'topArm'],
  ['topElbow', 'topArm'],
];

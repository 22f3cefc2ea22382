import { add, along, cross, dot, norm, scale, subtract, type Vec3 } from '../frame/vec3.ts';
import type { FigurePoint, Stance } from '../posture/stance.ts';
import { FLESH, type Girth, HEAD, SMALL, TRUNK } from './flesh.ts';

/** A ball of the figure: centre in the boat frame and radius, metres. */
export interface Ball {
  readonly at: Vec3;
  readonly radius: number;
}

/** What a piece is part of, for tones: of a pair, the one nearer the eye is darker. */
export type Limb = 'kneelingLeg' | 'frontLeg' | 'lowerArm' | 'topArm' | 'trunk' | 'head';

/** One piece of the figure: a union of tight hulls around balls. Boat frame, metres. */
export interface Solid {
  readonly limb: Limb;
  readonly hulls: readonly (readonly Ball[])[];
  /** A point that says how far from the eye the piece is. */
  readonly middle: Vec3;
  /** Hands: drawn after the shaft, whatever their distance. */
  readonly grips: boolean;
}

type Points = Stance['points'];

/** What of a body the figure is drawn by: its stature, and the kneeling knee from joint to pad. Metres. */
export interface FigureBody {
  readonly stature: number;
  readonly lengths: { readonly kneeRadius: { readonly value: number } };
}

/** The figure of a stance as solids, boat frame, metres. Seen from any side their outlines are true projections. */
export function figureSolids(stance: Pick<Stance, 'points'>, body: FigureBody): Solid[] {
  const { points } = stance;
  const { stature } = body;
  const kneeRadius = Math.min(body.lengths.kneeRadius.value, 1.3 * SMALL.knee * stature);
  return [
    ...leg(points, { which: 'kneeling', stature, kneeRadius }),
    ...leg(points, { which: 'front', stature, kneeRadius: SMALL.knee * stature }),
    trunk(points, stature),
    head(points, stature),
    ...arm(points, { which: 'lower', stature }),
    ...arm(points, { which: 'top', stature }),
  ];
}

const ball = (at: Vec3, radius: number): Ball => ({ at, radius });

function unit(v: Vec3): Vec3 {
  const length = norm(v);
  return length > 1e-9 ? scale(v, 1 / length) : { x: 1, y: 0, z: 0 };
}

/** The part of `v` that stands square to the unit vector `axis`, as a unit vector. */
function squareTo(v: Vec3, axis: Vec3): Vec3 {
  return unit(subtract(v, scale(axis, dot(v, axis))));
}

/** Ahead for a pair of joints: square to their line and to `up`, toward the bow. */
function forward(line: Vec3, up: Vec3): Vec3 {
  const ahead = unit(cross(line, up));
  return ahead.x < 0 ? scale(ahead, -1) : ahead;
}

function solid(limb: Limb, hulls: Ball[][], middle: Vec3): Solid {
  return { limb, hulls, middle, grips: false };
}

/** Balls between two neighbours of a limb's table, so that its outline runs fair. */
const BETWEEN = 2;

/** A limb from joint to joint: its girths joined by fair curves, bulging toward `flexing`, as hulls of neighbours. */
function limbHulls(
  [from, to]: readonly [Vec3, Vec3],
  girths: readonly Girth[],
  {
    stature,
    flexing,
    ends,
  }: { stature: number; flexing: Vec3; ends?: readonly [number | null, number | null] },
): Ball[][] {
  const [first = null, last = null] = ends ?? [];
  const balls = fairGirths(girths).map(([at, radius, bulge], k, all) => {
    const given = k === 0 ? first : k === all.length - 1 ? last : null;
    return ball(add(along(from, to, at), scale(flexing, bulge * stature)), given ?? radius * stature);
  });
  return pairs(balls.map((b) => [b]));
}

/** Neighbouring levels joined into hulls. */
function pairs(levels: readonly Ball[][]): Ball[][] {
  return levels.slice(1).map((level, k) => [...levels[k]!, ...level]);
}

/** Rows of numbers with fair ones put between them (Catmull–Rom). */
function fairGirths<T extends readonly number[]>(rows: readonly T[]): T[] {
  return rows.flatMap((row, k) => {
    const next = rows[k + 1];
    if (!next) return [row];
    const before = rows[k - 1] ?? row;
    const after = rows[k + 2] ?? next;
    const between = Array.from({ length: BETWEEN }, (_, j) => {
      const t = (j + 1) / (BETWEEN + 1);
      return row.map((_, c) => catmullRom([before[c]!, row[c]!, next[c]!, after[c]!], t)) as unknown as T;
    });
    return [row, ...between];
  });
}

function catmullRom([a, b, c, d]: readonly [number, number, number, number], t: number): number {
  return b + 0.5 * t * (c - a + t * (2 * a - 5 * b + 4 * c - d + t * (3 * (b - c) + d - a)));
}

function leg(
  points: Points,
  { which, stature, kneeRadius }: { which: 'kneeling' | 'front'; stature: number; kneeRadius: number },
): Solid[] {
  const limb = which === 'kneeling' ? 'kneelingLeg' : 'frontLeg';
  const hip = points[`${which}Hip`];
  const knee = points[`${which}Knee`];
  const ankle = points[`${which}Ankle`];
  const behindThigh = squareTo(subtract(ankle, knee), unit(subtract(knee, hip)));
  const behindShank = squareTo(subtract(hip, knee), unit(subtract(ankle, knee)));
  return [
    solid(
      limb,
      limbHulls([hip, knee], FLESH.thigh, { stature, flexing: behindThigh, ends: [null, kneeRadius] }),
      along(hip, knee, 0.6),
    ),
    solid(
      limb,
      [
        ...limbHulls([knee, ankle], FLESH.shank, {
          stature,
          flexing: behindShank,
          ends: [kneeRadius * 0.96, null],
        }),
        ...foot(points, which, stature),
      ],
      along(knee, ankle, 0.5),
    ),
  ];
}

function foot(points: Points, which: 'kneeling' | 'front', stature: number): Ball[][] {
  const end = which === 'kneeling' ? 'rear' : 'front';
  const ankle = points[`${which}Ankle`];
  const heelAt = points[`${end}Heel`];
  const ballAt = points[`${end}Ball`];
  // Heel, ball and toe points lie on the sole; their balls sit on the ankle's side of it.
  const sole = unit(subtract(ballAt, heelAt));
  const inward = squareTo(subtract(ankle, heelAt), sole);
  const onSole = (at: Vec3, share: number) => ball(add(at, scale(inward, share * stature)), share * stature);
  const heel = onSole(add(heelAt, scale(sole, SMALL.heel * 0.7 * stature)), SMALL.heel);
  const balls = onSole(ballAt, SMALL.ball);
  const top = ball(ankle, SMALL.ankle * stature);
  const instep = onSole(along(heelAt, ballAt, 0.62), SMALL.instep);
  return [
    [top, heel],
    [top, heel, instep],
    [instep, heel, balls],
    [balls, onSole(points[`${end}Toe`], SMALL.toe)],
  ];
}

function trunk(points: Points, stature: number): Solid {
  const { kneelingHip, frontHip, midHip, midShoulder, lowerShoulder, topShoulder, neck } = points;
  const up = unit(subtract(midShoulder, midHip));
  const hips = unit(subtract(frontHip, kneelingHip));
  const shoulders = unit(subtract(topShoulder, lowerShoulder));
  const levels = fairGirths(TRUNK).map(([at, half, radius, ahead]) => {
    const turned = Math.min(1, Math.max(0, at));
    const across = unit(along(hips, shoulders, turned));
    const middle = add(along(midHip, midShoulder, at), scale(forward(across, up), ahead * stature));
    return [-1, 1].map((side) => ball(add(middle, scale(across, side * half * stature)), radius * stature));
  });
  const tops = [lowerShoulder, topShoulder].map((at) => ball(at, 0.031 * stature));
  const collar = ball(along(midShoulder, neck, 0.3), SMALL.collar * stature);
  return solid(
    'trunk',
    [...pairs(levels), [...levels.at(-3)!, ...tops], [...tops, collar]],
    along(midHip, midShoulder, 0.5),
  );
}

function head(points: Points, stature: number): Solid {
  const { neck, headTop, midShoulder, lowerShoulder, topShoulder } = points;
  const up = unit(subtract(headTop, midShoulder));
  const fore = forward(unit(subtract(topShoulder, lowerShoulder)), up);
  const at = (name: keyof typeof HEAD): Ball => {
    const [down, ahead, radius] = HEAD[name];
    const place = add(add(headTop, scale(up, -down * stature)), scale(fore, ahead * stature));
    return ball(place, radius * stature);
  };
  const collar = ball(along(midShoulder, neck, 0.15), SMALL.neck * 1.08 * stature);
  return solid(
    'head',
    [
      [collar, at('nape'), ball(neck, SMALL.neck * stature)],
      [at('nape'), at('jaw'), ball(neck, SMALL.neck * 0.95 * stature)],
      [at('back'), at('nape'), at('jaw'), at('forehead')],
      [at('forehead'), at('cheek'), at('jaw'), at('back')],
      [at('cheek'), at('jaw'), at('chin')],
      [at('chin'), at('lip'), at('cheek')],
      [at('bridge'), at('nose'), at('cheek')],
    ],
    along(neck, headTop, 0.6),
  );
}

function arm(points: Points, { which, stature }: { which: 'lower' | 'top'; stature: number }): Solid[] {
  const limb = which === 'lower' ? 'lowerArm' : 'topArm';
  const shoulder = points[`${which}Shoulder`];
  const elbow = points[`${which}Elbow`];
  const hand = points[`${which}Hand`];
  const flexing = squareTo(subtract(hand, elbow), unit(subtract(elbow, shoulder)));
  const forearm = limbHulls([elbow, hand], FLESH.forearm, { stature, flexing: scale(flexing, 0) });
  const wrist = forearm.at(-1)!.at(-1)!;
  return [
    solid(
      limb,
      limbHulls([shoulder, elbow], FLESH.upperArm, { stature, flexing }),
      along(shoulder, elbow, 0.6),
    ),
    solid(limb, forearm, along(elbow, hand, 0.5)),
    { ...solid(limb, fist(points, { which, wrist, stature }), hand), grips: true },
  ];
}

/** A closed hand: the lower one round the shaft, the top one over the grip, which lies across it. */
function fist(
  points: Points,
  { which, wrist, stature }: { which: 'lower' | 'top'; wrist: Ball; stature: number },
): Ball[][] {
  const hand = points[`${which}Hand`];
  const shaft = unit(subtract(points.lowerHand, points.topHand));
  const round = which === 'lower' ? shaft : squareTo({ x: 0, y: 1, z: 0 }, shaft);
  const knuckles = [-1, -0.33, 0.33, 1].map((share) =>
    ball(
      add(hand, scale(round, share * SMALL.fist * 0.85 * stature)),
      SMALL.fist * (1 - 0.1 * Math.abs(share)) * stature,
    ),
  );
  return [knuckles, [...knuckles.slice(1, 3), wrist]];
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

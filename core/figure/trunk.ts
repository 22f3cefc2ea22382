import { add, along, cross, norm, scale, subtract, type Vec3 } from '../frame/vec3.ts';
import type { Oval } from '../graphics/oval.ts';
import { type BodyPart, ball, disc, type Flesh, type Posed, unit } from './body-part.ts';
import { kneelingThigh } from './limbs.ts';

/** Where shorts end and the shirt begins, and where the arm's flesh leaves the chest: shares of the way from hips to shoulders. */
const BELT = 0.2;
const ARMPIT = 0.86;
const LAT = 0.6;
/** How far the chest reaches beside the trunk's middle, share of stature: for its place before or behind others. */
const CHEST = 0.085;
/** As `CHEST`, for the seat. */
const SEAT = 0.09;
/** The back bends this much more than straight, as a share of stature for each radian that the trunk leans forward. */
const BOW = 0.03;
/** The pelvis leans less than the trunk: so much more upright, and up to this share of the way to the shoulders. */
const PELVIS = { upright: 0.5, upTo: 0.7 };
/** The form's lowest sections that are the buttock's. */
const BUTTOCK = 3;
/** The seat's lowest sections are rounded by this much, share of stature. */
const ROUNDED = 0.013;
/**
 * The collar's middle over mid-shoulder, how far behind, how wide, and how far its nape stands over its pit: shares of
 * stature. The survey has the nape's bone 0.062 and the pit of the throat 0.018 over the shoulder joints.
 */
const COLLAR = { up: 0.042, behind: 0.01, across: 0.039, deep: 0.034, tilt: 0.017 };

interface Trunk {
  /** Cross-sections from hips to shoulders. */
  readonly ovals: readonly Oval[];
  /** Where each lies, 0 at the hips and 1 at the shoulders. */
  readonly shares: readonly number[];
  /** Unit vector from hips to shoulders. */
  readonly up: Vec3;
  /** Unit vector toward the breast, square to the other two. */
  readonly front: Vec3;
  /** Unit vector from one shoulder to the other. */
  readonly across: Vec3;
}

/** A line of hips or shoulders as a unit vector toward port. */
function toPort(a: Vec3, b: Vec3): Vec3 {
  const direction = unit(subtract(b, a));
  return direction.y < 0 ? scale(direction, -1) : direction;
}

/** The trunk's sections: they turn from the hips' line to the shoulders'. */
function trunkOf({ points, body, form }: Posed): Trunk {
  const { kneelingHip, frontHip, midHip, midShoulder, lowerShoulder, topShoulder } = points;
  const { stature } = body;
  const up = unit(subtract(midShoulder, midHip));
  const hips = toPort(kneelingHip, frontHip);
  const shoulders = toPort(lowerShoulder, topShoulder);
  const lean = Math.max(0, Math.atan2(up.x, up.z));
  const pelvis = unit(add(up, { x: 0, y: 0, z: PELVIS.upright }));
  const ovals = form.trunk.map(([at, breadth, depth, ahead]) => {
    const share = Math.min(1, Math.max(0, at));
    const across = unit(along(hips, shoulders, share));
    const direction = unit(along(pelvis, up, Math.min(1, share / PELVIS.upTo)));
    const front = unit(cross(across, direction));
    const bow = BOW * lean * 4 * share * (1 - share);
    const centre = add(along(midHip, midShoulder, at), scale(front, (ahead - bow) * stature));
    const flat = disc(centre, [across, breadth * stature], [front, depth * stature]);
    const rounding = scale(direction, at < 0 ? ROUNDED * stature : 0);
    return { at: flat.at, axes: [flat.axes[0], flat.axes[1], rounding] } as const;
  });
  return {
    ovals,
    shares: form.trunk.map(([at]) => at),
    up,
    across: shoulders,
    front: unit(cross(shoulders, up)),
  };
}

/** Neck, chest and seat, in this order; the kneeling thigh is one body with the seat. */
export function trunkParts(posed: Posed, skull: Vec3): BodyPart[] {
  const { points, form } = posed;
  const { stature } = posed.body;
  const trunk = trunkOf(posed);
  const { ovals, shares } = trunk;
  const belt = shares.findIndex((at) => at >= BELT);
  const waist = along(points.midHip, points.midShoulder, BELT);
  const collar = collarOf(posed, trunk);
  const part = { limb: 'trunk', joins: [] } as const;
  return [
    {
      ...part,
      name: 'neck',
      limb: 'head',
      bones: [[points.midShoulder, skull]],
      girth: form.neckRadius * stature,
      flesh: [{ cover: 'skin', chains: [neckOvals(collar, skull, form.neckRadius * stature)] }],
    },
    {
      ...part,
      name: 'chest',
      bones: [[waist, points.midShoulder]],
      girth: CHEST * stature,
      flesh: [{ cover: 'top', ...yoke(posed, trunk, { collar, belt }) }],
      opens: (['lower', 'top'] as const).map((which) => ({
        at: points[`${which}Shoulder`],
        radius: form.shoulderRadius * stature,
        into: `${which}UpperArm`,
        cover: 'top' as const,
      })),
    },
    {
      ...part,
      name: 'seat',
      bones: [
        [points.midHip, waist],
        [points.kneelingHip, points.kneelingKnee],
      ],
      girth: SEAT * stature,
      flesh: [
        ...kneelingThigh(posed, hipOval(posed, trunk), buttock(posed, trunk)),
        {
          cover: 'shorts',
          chains: [ovals.slice(0, belt + 1)],
          // The buttock is round as a whole: bent forward its sections alone would leave a notch under it.
          hulls: [ovals.slice(0, BUTTOCK * (1 + posed.between) + 1)],
        },
      ],
    },
  ];
}

/** Half of the seat over the kneeling thigh: its cloth runs fair from one to the other. */
function hipOval({ points, body }: Posed, { front, across, up }: Trunk): Oval {
  const { stature } = body;
  const at = add(along(points.midHip, points.kneelingHip, 0.9), scale(front, -0.011 * stature));
  return {
    at,
    axes: [scale(across, 0.034 * stature), scale(front, 0.058 * stature), scale(up, 0.02 * stature)],
  };
}

/** The lower seat's half over the kneeling thigh: its lowest section and the next one of the form, kept within the seat. */
function buttock({ points, between }: Posed, { ovals }: Trunk): Oval[] {
  const aside = scale(subtract(points.kneelingHip, points.midHip), 0.5);
  return [ovals[0]!, ovals[1 + between]!].map(({ at, axes: [across, front, up] }) => ({
    at: add(at, aside),
    axes: [scale(across, 0.5), scale(front, 0.93), up],
  }));
}

/** The collar: an oval round the neck, higher at the nape than at the throat. */
function collarOf({ points, body }: Posed, { up, front, across }: Trunk): Oval {
  const { stature } = body;
  const at = add(
    add(points.midShoulder, scale(up, COLLAR.up * stature)),
    scale(front, -COLLAR.behind * stature),
  );
  const slope = add(scale(front, COLLAR.deep * stature), scale(up, -COLLAR.tilt * stature));
  return { at, axes: [scale(across, COLLAR.across * stature), slope, scale(up, 0.004 * stature)] };
}

/** The chest, and from it over the shoulders to the collar. */
function yoke(
  { points, body, form, between }: Posed,
  { ovals, shares }: Trunk,
  { collar, belt }: { collar: Oval; belt: number },
): Pick<Flesh, 'chains' | 'hulls'> {
  const radius = form.shoulderRadius * body.stature;
  const oval = (share: number) => ovals[shares.findIndex((at) => at >= share)]!;
  const [chest, lat] = [oval(ARMPIT), oval(LAT)];
  const top = ovals.at(-1)!;
  const sides = [points.lowerShoulder, points.topShoulder].map((shoulder) => {
    const cap = ball(shoulder, radius);
    const fold = ball(along(along(shoulder, lat.at, 0.17), points.midShoulder, 0.16), radius * 0.75);
    return {
      saddle: saddles(cap, collar, { between: between + 1, sag: 0.009 * body.stature }),
      hulls: [
        [chest, cap, top],
        [lat, fold],
        [fold, cap],
      ],
    };
  });
  return {
    chains: [ovals.slice(belt), ...sides.map(({ saddle }) => saddle)],
    hulls: [...sides.flatMap(({ hulls }) => hulls), [top, collar], ovals.slice(belt, belt + 2)],
  };
}

/** Ovals from the shoulder's cap to the collar, sagging between: the slope of the shoulder. */
function saddles(cap: Oval, collar: Oval, { between, sag }: { between: number; sag: number }): Oval[] {
  const steps = between + 1;
  return Array.from({ length: steps + 1 }, (_, k) => {
    const t = k / steps;
    const at = along(cap.at, collar.at, t);
    const mix = (i: 0 | 1 | 2) => along(cap.axes[i], collar.axes[i === 2 ? 2 : i === 0 ? 1 : 0], t);
    return { at: { ...at, z: at.z - sag * 4 * t * (1 - t) }, axes: [mix(0), mix(1), mix(2)] };
  });
}

/** The neck from within the collar to the skull. */
function neckOvals(collar: Oval, skull: Vec3, radius: number): Oval[] {
  const length = norm(subtract(skull, collar.at)) || 1;
  const down = scale(unit(subtract(collar.at, skull)), radius * 0.7);
  return [
    ball(add(collar.at, down), radius * 1.08),
    ball(along(collar.at, skull, Math.min(0.5, (0.4 * radius) / length)), radius * 1.03),
    ball(along(collar.at, skull, 0.7), radius),
    ball(skull, radius * 0.97),
  ];
}

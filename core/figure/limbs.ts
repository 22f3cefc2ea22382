import { add, along, scale, subtract, type Vec3 } from '../frame/vec3.ts';
import type { Oval } from '../graphics/oval.ts';
import {
  type BodyPart,
  ball,
  type Cover,
  type Flesh,
  type Limb,
  limbOvals,
  type Posed,
  squareTo,
  unit,
} from './body-part.ts';
import { footHulls } from './foot.ts';
import type { Section } from './form.ts';
import { handOf, openHand } from './hand.ts';

/** Points of a stance, boat frame, metres. */
export type FigurePoints = Posed['points'];

/** How far shorts reach down the thigh and a sleeve down the arm, shares of the bone. */
const SHORTS_TO = 0.42;
/** Measured from the shoulder. */
const SLEEVE_TO = 0.42;
/** Where the kneeling thigh has left the seat, share of its sections. */
const GROWN = 0.4;
/** A join reaches this far into the neighbour, and is so much thinner than the limb, shares of the limb's radius. */
const JOIN = { reach: 1.1, radius: 0.97, end: 0.87 };

/** Bones and ovals of the kneeling leg or the front leg. */
interface Leg {
  /** Joint centre, metres. */
  readonly hip: Vec3;
  /** Joint centre, metres. */
  readonly knee: Vec3;
  /** Joint centre, metres. */
  readonly ankle: Vec3;
  readonly thigh: readonly Oval[];
  readonly shank: readonly Oval[];
  readonly kneecap: Oval;
}

/** A leg out of its three joints. Thigh and shin face the side to which the knee bends. */
function legOf(posed: Posed, which: 'kneeling' | 'front'): Leg {
  const { points, form } = posed;
  const { stature } = posed.body;
  const [hip, knee, ankle] = [points[`${which}Hip`], points[`${which}Knee`], points[`${which}Ankle`]];
  const thighFront = scale(squareTo(subtract(ankle, knee), unit(subtract(knee, hip))), -1);
  const shinFront = scale(squareTo(subtract(hip, knee), unit(subtract(ankle, knee))), -1);
  return {
    hip,
    knee,
    ankle,
    thigh: limbOvals({ from: hip, to: knee, front: thighFront, stature }, form.thigh),
    shank: limbOvals({ from: knee, to: ankle, front: shinFront, stature }, form.shank),
    kneecap: ball(knee, kneeRadius(posed, which)),
  };
}

/** The kneeling knee bears on the pad: its radius is the body's own, unless that would swell the joint. */
function kneeRadius({ body, form }: Posed, which: 'kneeling' | 'front'): number {
  const usual = form.kneeRadius * body.stature;
  return which === 'front' ? usual : Math.min(body.lengths.kneeRadius.value, 1.25 * usual);
}

/** The greatest half-breadth of some sections, share of stature. */
const broadest = (sections: readonly Section[]) => Math.max(...sections.map(([, breadth]) => breadth));

/** A row of ovals cut in two at a share of its length, both keeping the oval at the cut. */
function cut(row: readonly Oval[], share: number): [Oval[], Oval[]] {
  const at = Math.round((row.length - 1) * share);
  return [row.slice(0, at + 1), row.slice(at)];
}

/** The flesh of a thigh, in shorts as far as they reach. */
function thighFlesh({ thigh, kneecap }: Leg, limb: Limb): Flesh[] {
  const [upper, lower] = cut(thigh, SHORTS_TO);
  return [
    { cover: 'skin', chains: [[...lower, kneecap]], limb },
    { cover: 'shorts', chains: [upper] },
  ];
}

/** The kneeling thigh, joined with the seat at `hip` and with the buttock over it. */
export function kneelingThigh(posed: Posed, hip: Oval, buttock: readonly Oval[]): Flesh[] {
  const leg = legOf(posed, 'kneeling');
  const grown = leg.thigh[Math.round((leg.thigh.length - 1) * GROWN)]!;
  return [
    ...thighFlesh(leg, 'kneelingLeg'),
    { cover: 'shorts', chains: [[hip, grown]], hulls: [[...buttock, grown]] },
  ];
}

/** The front thigh. */
export function frontThighPart(posed: Posed): BodyPart {
  const leg = legOf(posed, 'front');
  const radius = posed.form.thigh[0]![1] * posed.body.stature;
  return {
    name: 'frontThigh',
    limb: 'frontLeg',
    bones: [[leg.hip, leg.knee]],
    girth: radius,
    flesh: thighFlesh(leg, 'frontLeg'),
    joins: [seam('shorts', leg.thigh, radius), join('skin', [leg.knee, leg.ankle], leg.kneecap.axes[0].x)],
  };
}

/** Shank and foot. Each hides the line of its end at the other, where the shank is seen from its side. */
export function shankParts(posed: Posed, which: 'kneeling' | 'front'): BodyPart[] {
  const { hip, knee, ankle, shank, kneecap } = legOf(posed, which);
  const { points, form } = posed;
  const { stature } = posed.body;
  const limb = which === 'kneeling' ? 'kneelingLeg' : 'frontLeg';
  const end = which === 'kneeling' ? 'rear' : 'front';
  const ankleRadius = form.shank.at(-1)![1] * stature;
  const joinsAlong = [knee, ankle] as const;
  return [
    {
      name: `${which}Shank`,
      limb,
      bones: [[knee, ankle]],
      girth: broadest(form.shank) * stature,
      flesh: [{ cover: 'skin', chains: [[kneecap, ...shank]] }],
      joins: [
        join('skin', [knee, hip], kneecap.axes[0].x),
        join('skin', [ankle, points[`${end}Ball`]], ankleRadius * INSTEP),
      ],
      joinsAlong,
    },
    {
      name: `${which}Foot`,
      limb,
      bones: [[ankle, points[`${end}Ball`]]],
      girth: (form.footBreadth / 2) * stature,
      flesh: [{ cover: 'skin', chains: [], hulls: footHulls(posed, which) }],
      joins: [join('skin', [ankle, knee], ankleRadius)],
      joinsAlong,
    },
  ];
}

/** Flesh that hides the line where a limb grows out of its neighbour. */
function join(cover: Cover, [from, toward]: readonly [Vec3, Vec3], radius: number): Flesh {
  const apart = Math.hypot(toward.x - from.x, toward.y - from.y, toward.z - from.z) || 1;
  const end = along(from, toward, Math.min(1, (JOIN.reach * radius) / apart));
  return { cover, chains: [[ball(from, JOIN.radius * radius), ball(end, JOIN.end * radius)]] };
}

/** At the crease of the hip the line stays, so that nothing shows over the belt: share of the section's half-depth. */
const SEAM_BELOW = 0.08;

/** The same for a limb that begins broad: it hides its first section but for the crease. */
function seam(cover: Cover, [first, second]: readonly Oval[], radius: number): Flesh {
  const back = scale(unit(subtract(first!.at, second!.at)), radius * 0.25);
  const [across, ahead] = first!.axes;
  const covering = {
    at: add(first!.at, scale(ahead, -SEAM_BELOW)),
    axes: [scale(across, 1.03), scale(ahead, 1.03 - SEAM_BELOW), back],
  } as const;
  return { cover, chains: [], hulls: [[covering]] };
}

/** The foot under the ankle is so much thinner than the shank over it. */
const INSTEP = 0.8;

/** Where the wrist lies from elbow to the middle of the grip (survey: forearm 0.28 of 0.337 m at 1.80 m). */
const WRIST = 0.83;

/** Upper arm, forearm and hand, of the arm low on the shaft or of the one at the grip. */
export function armParts(posed: Posed, which: 'lower' | 'top'): BodyPart[] {
  const { points, form } = posed;
  const { stature } = posed.body;
  const limb = which === 'lower' ? 'lowerArm' : 'topArm';
  const [shoulder, elbow, hand] = [
    points[`${which}Shoulder`],
    points[`${which}Elbow`],
    points[`${which}Hand`],
  ];
  const bend = squareTo(subtract(hand, elbow), unit(subtract(elbow, shoulder)));
  const round = squareTo(subtract(shoulder, elbow), unit(subtract(hand, elbow)));
  const wrist = along(elbow, hand, WRIST);
  const upper = limbOvals({ from: shoulder, to: elbow, front: bend, stature }, form.upperArm);
  const fore = limbOvals({ from: elbow, to: wrist, front: round, stature }, form.forearm);
  const [sleeve, bare] = cut(upper, SLEEVE_TO);
  const drawn = posed.open ? openHand(posed, which, fore.at(-1)!) : handOf(posed, which, fore.at(-1)!);
  const elbowRadius = form.forearm[0]![2] * stature;
  const elbowBall = ball(elbow, elbowRadius);
  const shoulderRadius = form.shoulderRadius * stature;
  return [
    {
      name: `${which}UpperArm`,
      limb,
      bones: [[shoulder, elbow]],
      girth: shoulderRadius,
      flesh: [
        { cover: 'skin', chains: [[...bare, elbowBall]] },
        { cover: 'top', chains: [sleeve], hulls: [[ball(shoulder, shoulderRadius), sleeve[1]!]] },
      ],
      joins: [
        join('top', [shoulder, points.midShoulder], shoulderRadius),
        join('skin', [elbow, hand], elbowRadius),
      ],
      opens: [{ at: shoulder, radius: shoulderRadius, into: 'chest', cover: 'top' }],
    },
    {
      name: `${which}Forearm`,
      limb,
      bones: [[elbow, wrist]],
      girth: broadest(form.forearm) * stature,
      flesh: [{ cover: 'skin', chains: [fore], hulls: [[elbowBall]] }],
      joins: [join('skin', [elbow, shoulder], elbowRadius)],
    },
    {
      name: `${which}Hand`,
      limb,
      bones: [[hand, hand]],
      girth: form.handBreadth * stature * 0.5,
      flesh: [{ cover: 'skin', chains: drawn.fingers, hulls: drawn.hulls }],
      joins: [join('skin', [wrist, elbow], form.forearm.at(-1)![2] * stature)],
      lines: drawn.lines,
    },
  ];
}

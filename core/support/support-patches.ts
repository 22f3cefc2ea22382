import type { Seat } from '../document/seat-schema.ts';
import { norm, planeNorm, subtract } from '../frame/vec3.ts';
import type { Stance } from '../posture/stance.ts';
import { kneeContactRadius } from './knee-contact.ts';
import { CONTACTS, type Contact, contactPoints } from './support.ts';
import type { InPlan } from './support-triangle.ts';

/** Corners of the patch in which each contact bears, in plan: metres, boat frame; each a convex ring. */
export type SupportPatches = Readonly<Record<Contact, readonly InPlan[]>>;

/** The knee bears over a patch 7 to 10 cm across (this model's estimate): half of it, metres. */
const KNEE_RADIUS = { least: 0.035, most: 0.05 } as const;
/** Sides of the ring that stands for the knee's round patch. */
const KNEE_CORNERS = 8;
/** Half the breadth of the toes on the rest and of the front foot between heel and ball, metres (estimates). */
const HALF_TOES = 0.035;
/** Metres. */
const HALF_FOOT = 0.03;

/**
 * Where knee, toes and front foot bear: the knee over a round patch as wide as recess, foam and flesh let it sink, the toes
 * over their breadth along the rest, the front foot from heel to ball. Metres, boat frame, plan. The nominal points of
 * `contactPoints` lie in them.
 */
export function supportPatches(stance: Stance, seat: Seat): SupportPatches {
  const { points } = stance;
  const { knee, rearFoot } = contactPoints(stance);
  const round = kneeContactRadius(seat.kneePad, norm(subtract(points.kneelingKnee, points.kneeContact)));
  const radius = Math.min(KNEE_RADIUS.most, Math.max(KNEE_RADIUS.least, round));
  const ring = Array.from({ length: KNEE_CORNERS }, (_, k) => {
    const turn = (2 * Math.PI * k) / KNEE_CORNERS;
    return { x: knee.x + radius * Math.cos(turn), y: knee.y + radius * Math.sin(turn) };
  });
  // From the knee, not the ankle: where the ankle is above the toes the direction would be undefined.
  const leg = squareTo(points.kneelingKnee, points.rearBall);
  const foot = squareTo(points.frontHeel, points.frontBall);
  return {
    knee: ring,
    rearFoot: [beside(rearFoot, leg, HALF_TOES), beside(rearFoot, leg, -HALF_TOES)],
    frontFoot: [
      beside(points.frontHeel, foot, HALF_FOOT),
      beside(points.frontHeel, foot, -HALF_FOOT),
      beside(points.frontBall, foot, -HALF_FOOT),
      beside(points.frontBall, foot, HALF_FOOT),
    ],
  };
}

/** Unit vector in plan square to the way from one point to another; across the boat where they stand over each other. */
function squareTo(from: InPlan, to: InPlan): InPlan {
  const length = planeNorm(to.x - from.x, to.y - from.y);
  return length > 1e-6 ? { x: -(to.y - from.y) / length, y: (to.x - from.x) / length } : { x: 0, y: 1 };
}

/** A point moved some way along a direction. */
const beside = (at: InPlan, direction: InPlan, by: number): InPlan => ({
  x: at.x + by * direction.x,
  y: at.y + by * direction.y,
});

/** A corner of the support polygon: the contact that it belongs to, and which of its patch's corners it is. */
export interface PolygonCorner extends InPlan {
  readonly contact: Contact;
  /** Counted from 0 in its own patch. */
  readonly corner: number;
}

/** Every corner of every patch with its contact. */
export function cornersOf(patches: SupportPatches): PolygonCorner[] {
  return CONTACTS.flatMap((contact) =>
    patches[contact].map(({ x, y }, corner) => ({ x, y, contact, corner })),
  );
}

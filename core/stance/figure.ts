import type { Seat } from '../fit/seat-schema.ts';
import { toRadians } from '../units/angle.ts';
import { type BodyLengths, type Contacts, paddlingSign } from './contacts.ts';
import {
  chain,
  fixed,
  fixedVec,
  inner,
  inverse,
  type Jet,
  type JetVec,
  mix,
  mixVec,
  product,
  reach,
  root,
  stretch,
  unknowns,
} from './jet.ts';
import { STROKE_POSTURE } from './neutral-posture.ts';
import type { Phase } from './stance.ts';
import { twoLink } from './two-link.ts';

/** How the hands hold the paddle in one phase, in arm lengths from mid-shoulder (forward, to the paddling side, up). */
interface Hold {
  readonly top: readonly [number, number, number];
  /** Way of the shaft from the top hand down. */
  readonly shaft: readonly [number, number, number];
}

/** Drawn from the look of a stroke, not measured (estimate); they move the centre of mass by under a centimetre. */
const HOLD: Readonly<Record<Phase, Hold>> = {
  ready: { top: [0.44, 0.2, 0.32], shaft: [0.12, 0.22, -1] },
  catch: { top: [0.4, 0.2, 0.4], shaft: [0.46, 0.18, -1] },
  exit: { top: [0.5, 0.2, 0.1], shaft: [-0.34, 0.26, -1] },
};

/** The joints that depend on the unknowns, paddler's frame, metres, with their derivatives. */
export interface Figure {
  readonly thighUp: JetVec;
  readonly trunkUp: JetVec;
  /** Unit vector along the hip joints, toward the front hip. */
  readonly across: JetVec;
  readonly kneelingHip: JetVec;
  readonly frontHip: JetVec;
  readonly midHip: JetVec;
  readonly frontKnee: JetVec;
  /** Distance of the front hip from the ankle less the leg's length: positive does not reach. */
  readonly frontExcess: Jet;
  readonly midShoulder: JetVec;
  readonly headTop: JetVec;
  readonly lowerShoulder: JetVec;
  readonly lowerElbow: JetVec;
  readonly lowerHand: JetVec;
  readonly topShoulder: JetVec;
  readonly topElbow: JetVec;
  readonly topHand: JetVec;
  readonly lowerExcess: Jet;
  readonly topExcess: Jet;
}

/** What a figure is built from: fixed for one solve. */
export interface FigureParts {
  readonly body: BodyLengths;
  readonly contacts: Contacts;
  readonly seat: Seat;
  readonly phase: Phase;
}

/** The figure for the five unknowns: thigh pitch and roll, pelvis yaw, trunk pitch and roll, radians. */
export function figureFor(q: readonly number[], parts: FigureParts): Figure {
  const { body, contacts, seat } = parts;
  const [thighPitch, thighRoll, yaw, trunkPitch, trunkRoll] = unknowns(q);
  const thighUp = leaning(thighPitch, thighRoll);
  const trunkUp = leaning(trunkPitch, chain(trunkRoll, trunkRoll.v * paddlingSign(seat), paddlingSign(seat)));
  const across = {
    x: chain(yaw, Math.sin(yaw.v), Math.cos(yaw.v)),
    y: chain(yaw, -Math.cos(yaw.v), Math.sin(yaw.v)),
    z: fixed(0),
  };
  const kneelingHip = mixVec(1, fixedVec(contacts.knee), body.thigh, thighUp);
  const frontHip = mixVec(1, kneelingHip, body.hipSeparation, across);
  const midHip = mixVec(0.5, kneelingHip, 0.5, frontHip);
  const midShoulder = mixVec(1, midHip, body.trunk, trunkUp);
  const { x, y } = contacts.frontDirection;
  const leg = twoLink(frontHip, fixedVec(contacts.frontAnkle), {
    first: body.thigh,
    second: body.shank,
    bend: fixedVec({ x, y, z: 0.25 }),
  });
  return {
    thighUp,
    trunkUp,
    across,
    kneelingHip,
    frontHip,
    midHip,
    frontKnee: leg.middle,
    frontExcess: leg.excess,
    midShoulder,
    headTop: mixVec(1, midShoulder, body.headNeck, trunkUp),
    ...armsOf(midShoulder, trunkUp, parts),
  };
}

/** Unit vector whose side view leans forward by `pitch` and whose rear view leans toward +y by `roll`. */
function leaning(pitch: Jet, roll: Jet): JetVec {
  const sinP = chain(pitch, Math.sin(pitch.v), Math.cos(pitch.v));
  const cosP = chain(pitch, Math.cos(pitch.v), -Math.sin(pitch.v));
  const sinR = chain(roll, Math.sin(roll.v), Math.cos(roll.v));
  const cosR = chain(roll, Math.cos(roll.v), -Math.sin(roll.v));
  const way = { x: product(sinP, cosR), y: product(cosP, sinR), z: product(cosP, cosR) };
  return stretch(way, inverse(root(inner(way, way))));
}

/** How far the shoulders are turned, paddling side forward, radians. */
function shoulderTurn({ stroke }: Seat, phase: Phase): number {
  const own = phase === 'catch' ? stroke.catchRotationDeg : stroke.exitRotationDeg;
  if (phase !== 'ready' && own !== undefined) return toRadians(own);
  return STROKE_POSTURE[`${phase}Rotation`];
}

/** Both arms from the shoulders to the hands on the shaft; elbows by two-link chains. */
function armsOf(midShoulder: JetVec, trunkUp: JetVec, { body, seat, phase }: FigureParts) {
  const side = paddlingSign(seat);
  const turn = shoulderTurn(seat, phase);
  const square = fixedVec({ x: Math.sin(turn), y: Math.cos(turn) * side, z: 0 });
  const tilted = reach(square, mix(-1, inner(square, trunkUp), 0, trunkUp.x), trunkUp);
  const line = stretch(tilted, inverse(root(inner(tilted, tilted))));
  const half = body.shoulderSeparation / 2;
  const lowerShoulder = mixVec(1, midShoulder, half, line);
  const topShoulder = mixVec(1, midShoulder, -half, line);
  const { top, shaft } = HOLD[phase];
  const arm = body.upperArm + body.forearm + body.hand;
  const topHand = mixVec(1, midShoulder, arm, fixedVec({ x: top[0], y: top[1] * side, z: top[2] }));
  const spacing = seat.paddle.lowerHandM / Math.hypot(...shaft);
  const down = fixedVec({ x: shaft[0], y: shaft[1] * side, z: shaft[2] });
  const lowerHand = mixVec(1, topHand, spacing, down);
  const links = { first: body.upperArm, second: body.forearm + body.hand };
  const lower = twoLink(lowerShoulder, lowerHand, {
    ...links,
    bend: fixedVec({ x: -0.3, y: side, z: -0.2 }),
  });
  const upper = twoLink(topShoulder, topHand, { ...links, bend: fixedVec({ x: 0.1, y: -side, z: 0.15 }) });
  return {
    lowerShoulder,
    lowerElbow: lower.middle,
    lowerHand,
    topShoulder,
    topElbow: upper.middle,
    topHand,
    lowerExcess: lower.excess,
    topExcess: upper.excess,
  };
}

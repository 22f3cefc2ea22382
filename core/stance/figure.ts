import type { BodyEstimate } from '../body/body.ts';
import type { Seat } from '../fit/seat-schema.ts';
import { otherSide } from '../frame/mirror.ts';
import { add, along, cross, dot, norm, scale, subtract, type Vec3 } from '../frame/vec3.ts';
import { toRadians } from '../units/angle.ts';
import type { FigurePoint, Phase, ReachShortfall } from './stance.ts';
import { twoLink } from './two-link.ts';

/** Height of the ball of the rear foot's joint above the rest's bearing edge, metres (estimate). */
const BALL_ABOVE_REST = 0.02;

/** Where the hands hold the paddle, in arm lengths from mid-shoulder (forward, to the paddling side, up), and the shaft's way down. */
const HOLD: Readonly<Record<Phase, { top: Vec3; shaft: Vec3; shoulderTurn: number }>> = {
  ready: { top: { x: 0.5, y: 0.2, z: 0.1 }, shaft: { x: 0.06, y: 0.2, z: -1 }, shoulderTurn: 0.1 },
  catch: { top: { x: 0.55, y: 0.2, z: 0.1 }, shaft: { x: 0.25, y: 0.2, z: -1 }, shoulderTurn: 0.6 },
  exit: { top: { x: 0.5, y: 0.2, z: 0 }, shaft: { x: -0.2, y: 0.28, z: -1 }, shoulderTurn: -0.25 },
};

/** The figure in the paddler's frame, metres. */
export interface Figure {
  readonly points: Readonly<Record<FigurePoint, Vec3>>;
  readonly shortfalls: readonly ReachShortfall[];
  readonly trunkUp: Vec3;
  readonly thighUp: Vec3;
  /** Unit vector along the hip joints, toward the front hip. */
  readonly across: Vec3;
}

/** Unit vector whose side view leans forward by `pitch` and whose rear view leans toward +y by `roll`. */
export function leaning(pitch: number, roll: number): Vec3 {
  const v = {
    x: Math.sin(pitch) * Math.cos(roll),
    y: Math.cos(pitch) * Math.sin(roll),
    z: Math.cos(pitch) * Math.cos(roll),
  };
  return scale(v, 1 / norm(v));
}

/** +1 when the paddler kneels on the paddling side, else −1: the paddling side's y in the paddler's frame. */
export function paddlingSign(seat: Seat): 1 | -1 {
  const kneels = seat.kneels ?? seat.side;
  return kneels === otherSide(seat.side) ? -1 : 1;
}

/** The whole figure for the five unknowns (thigh pitch and roll, pelvis yaw, trunk pitch and roll; radians). */
export function figureFor(
  q: readonly number[],
  { body, seat, phase }: { body: BodyEstimate; seat: Seat; phase: Phase },
): Figure {
  const length = (name: keyof BodyEstimate['lengths']) => body.lengths[name].value;
  const paddling = paddlingSign(seat);
  const feet = contactsOf(seat, body);
  const thighUp = leaning(q[0]!, q[1]!);
  const trunkUp = leaning(q[3]!, q[4]! * paddling);
  const kneelingHip = add(feet.knee, scale(thighUp, length('thigh')));
  const across = { x: Math.sin(q[2]!), y: -Math.cos(q[2]!), z: 0 };
  const frontHip = add(kneelingHip, scale(across, length('hipSeparation')));
  const midHip = along(kneelingHip, frontHip, 0.5);
  const midShoulder = add(midHip, scale(trunkUp, length('trunk')));
  const front = twoLink(frontHip, feet.frontAnkle, {
    first: length('thigh'),
    second: length('shank'),
    bend: add(feet.frontDirection, { x: 0, y: 0, z: 0.2 }),
  });
  const arms = armsFor({ midShoulder, trunkUp, body, seat, phase, paddling });
  const shortfalls: ReachShortfall[] = [
    { part: 'rearRest', shortfall: feet.rearShortfall },
    { part: 'frontFoot', shortfall: front.shortfall },
    ...arms.shortfalls,
  ];
  const headTop = add(midShoulder, scale(trunkUp, length('headNeck')));
  return {
    points: {
      kneelingKnee: feet.knee,
      kneeContact: feet.kneeContact,
      kneelingHip,
      kneelingAnkle: feet.rearAnkle,
      rearHeel: feet.rearHeel,
      rearBall: feet.rearBall,
      rearToe: feet.rearToe,
      frontHip,
      frontKnee: front.middle,
      frontAnkle: feet.frontAnkle,
      frontHeel: feet.frontHeel,
      frontBall: feet.frontBall,
      frontToe: feet.frontToe,
      midHip,
      midShoulder,
      neck: along(midShoulder, headTop, 0.3),
      headCentre: along(midShoulder, headTop, 0.66),
      headTop,
      ...arms.points,
    },
    shortfalls: shortfalls.filter((s) => s.shortfall > 0),
    trunkUp,
    thighUp,
    across,
  };
}

/** Everything that the fittings fix: kneeling knee, rear foot and front foot. */
function contactsOf(seat: Seat, body: BodyEstimate) {
  const { kneePad, rearRest, frontFoot } = seat;
  const length = (name: keyof BodyEstimate['lengths']) => body.lengths[name].value;
  const kneeContact = { x: -kneePad.aftM, y: kneePad.outM, z: kneePad.heightM - kneePad.foamGiveM };
  const knee = { ...kneeContact, z: kneeContact.z + length('kneeRadius') };
  const rearBall = { x: -rearRest.aftM, y: rearRest.outM, z: rearRest.heightM + BALL_ABOVE_REST };
  const ankleToBall = Math.hypot(length('heelToBall') - length('heelToAnkle'), length('ankleHeight'));
  const rear = twoLink(knee, rearBall, {
    first: length('shank'),
    second: ankleToBall,
    bend: { x: -0.2, y: 0, z: 1 },
  });
  const rearFoot = subtract(rearBall, rear.middle);
  const heelward = scale(rearFoot, -length('heelToAnkle') / Math.max(norm(rearFoot), 1e-9));
  const turn = toRadians(frontFoot.toeOutDeg);
  const lift = toRadians(frontFoot.wedgeDeg);
  const flat = { x: Math.cos(turn), y: -Math.sin(turn), z: 0 };
  const forward = { x: flat.x * Math.cos(lift), y: flat.y * Math.cos(lift), z: Math.sin(lift) };
  const up = { x: -flat.x * Math.sin(lift), y: -flat.y * Math.sin(lift), z: Math.cos(lift) };
  const frontHeel = { x: frontFoot.forwardM, y: frontFoot.outM, z: frontFoot.heightM };
  const onFoot = (reach: number) => add(frontHeel, scale(forward, reach));
  return {
    kneeContact,
    knee,
    rearBall,
    rearAnkle: rear.middle,
    rearHeel: add(rear.middle, heelward),
    rearToe: add(rearBall, { x: 0.01, y: 0, z: -0.04 }),
    rearShortfall: rear.shortfall,
    frontHeel,
    frontBall: onFoot(length('heelToBall')),
    frontToe: onFoot(length('footLength')),
    frontAnkle: add(onFoot(length('heelToAnkle')), scale(up, length('ankleHeight'))),
    frontDirection: flat,
  };
}

function armsFor(given: {
  midShoulder: Vec3;
  trunkUp: Vec3;
  body: BodyEstimate;
  seat: Seat;
  phase: Phase;
  paddling: number;
}) {
  const { midShoulder, trunkUp, body, seat, phase, paddling } = given;
  const length = (name: keyof BodyEstimate['lengths']) => body.lengths[name].value;
  const hold = HOLD[phase];
  const arm = length('upperArm') + length('forearm') + length('hand');
  const side = (v: Vec3) => ({ ...v, y: v.y * paddling });
  const turn = hold.shoulderTurn;
  const lateral = side({ x: Math.sin(turn), y: Math.cos(turn), z: 0 });
  const tilted = subtract(lateral, scale(trunkUp, dot(lateral, trunkUp)));
  const shoulderLine = scale(tilted, length('shoulderSeparation') / 2 / Math.max(norm(tilted), 1e-9));
  const lowerShoulder = add(midShoulder, shoulderLine);
  const topShoulder = subtract(midShoulder, shoulderLine);
  const topHand = add(midShoulder, scale(side(hold.top), arm));
  const down = side(hold.shaft);
  const lowerHand = add(topHand, scale(down, seat.paddle.lowerHandM / norm(down)));
  const links = { first: length('upperArm'), second: length('forearm') + length('hand') };
  const top = twoLink(topShoulder, topHand, { ...links, bend: side({ x: 0, y: -1, z: 0.1 }) });
  const lower = twoLink(lowerShoulder, lowerHand, { ...links, bend: side({ x: -0.2, y: 1, z: -0.3 }) });
  return {
    points: {
      lowerShoulder,
      lowerElbow: lower.middle,
      lowerHand,
      topShoulder,
      topElbow: top.middle,
      topHand,
    },
    shortfalls: [
      { part: 'lowerHand' as const, shortfall: lower.shortfall },
      { part: 'topHand' as const, shortfall: top.shortfall },
    ],
  };
}

/** Included angle at `b` of the corner a–b–c, radians: π is straight. */
export function cornerAngle(a: Vec3, b: Vec3, c: Vec3): number {
  const u = subtract(a, b);
  const v = subtract(c, b);
  return Math.atan2(norm(cross(u, v)), dot(u, v));
}

/**
 * Angle trunk–hip–thigh in the plane square to the line of the hips, radians: π is a straight line, less is flexion,
 * more is extension. Smooth through π, where an unsigned angle would have a corner.
 */
export function hipAngle({ trunkUp, across }: Figure, hip: Vec3, knee: Vec3): number {
  const thigh = subtract(knee, hip);
  return Math.PI - Math.atan2(-dot(cross(trunkUp, thigh), across), -dot(trunkUp, thigh));
}

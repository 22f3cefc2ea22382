import { cornerAngle } from '../posture/angles.ts';
import { lengthsOf } from '../posture/contacts.ts';
import { chainCosine, excessOf, firstAngle, legChains } from '../posture/reach.ts';
import { kneeContactArea } from '../support/knee-contact.ts';
import { CONTACTS, type Contact, contactPoints, type DriveLoads, type Support } from '../support/support.ts';
import { loadsOf } from '../support/support-loads.ts';
import { edgeDistance, nearestEdges, type PolygonEdge } from '../support/support-polygon.ts';
import { heldShares, sharesOf, supportTriangle } from '../support/support-triangle.ts';
import { GRAVITY } from '../units/gravity.ts';
import type { Fold } from './fold.ts';
import type { QuantityId } from './quantities.ts';
import type { SeatState } from './seat-state.ts';

/**
 * Smooth values that folded quantities are made of and that are no quantities themselves: those that the ready stance decides.
 * `edges` are the seat's `marginEdges`.
 */
export function postureSmooth(
  { stances: { ready }, support, body }: PatchedSeat,
  edges: readonly PolygonEdge[],
): Record<string, number> {
  const { rear, front } = legChains(ready, lengthsOf(body));
  const { kneelingHip, kneelingKnee, rearBall } = ready.points;
  const shares = sharesOf(supportTriangle(contactPoints(ready)), ready.centreOfMass);
  const smooth: Record<string, number> = {
    rearExcess: excessOf(rear),
    frontExcess: excessOf(front),
    rearCosine: chainCosine(rear),
    frontCosine: chainCosine(front),
    shank: rear.first,
    /** Thigh over the line from knee to ball: the shank stands between the two. */
    kneeToBall: cornerAngle(kneelingHip, kneelingKnee, rearBall),
    kneeRadius: body.lengths.kneeRadius.value,
    thighRoll: ready.angles.thighRoll,
    ...pressOn('rest', loadsOf(shares, ready.totalMassKg * GRAVITY)),
  };
  edges.forEach((edge, i) => {
    smooth[edgeName(i)] = edgeDistance(sameEdge(edge, support), ready.centreOfMass);
  });
  return smooth;
}

/** And those that the drive decides. */
export function driveSmooth(drive: DriveLoads | null): Record<string, number> {
  return drive ? pressOn('drive', drive.loadsN) : {};
}

/** What of a seat its folds are made from. */
interface PatchedSeat extends Pick<SeatState, 'body'> {
  readonly stances: Pick<SeatState['stances'], 'ready'>;
  readonly support: Pick<Support, 'patches'>;
}

/** Of how many edges of the support polygon the margin is taken to be the least distance. */
const EDGES = 4;
const edgeName = (i: number) => `edge:${i}`;

/** The edges of a seat's support polygon that its margin is made of. */
export function marginEdges({ support, stances }: SeatState): PolygonEdge[] {
  return nearestEdges(support.polygon, stances.ready.centreOfMass, EDGES);
}

/** The same corners of the patches in another state of the seat. */
function sameEdge([p, q]: PolygonEdge, { patches }: Pick<Support, 'patches'>) {
  return [patches[p.contact][p.corner]!, patches[q.contact][q.corner]!] as const;
}

/** What presses on each contact with all held, newtons: negative where it would have to pull. */
function pressOn(
  when: 'rest' | 'drive',
  { knee, rearFoot, frontFoot }: Readonly<Record<Contact, number>>,
): Record<string, number> {
  return when === 'rest'
    ? { 'rest:knee': knee, 'rest:rearFoot': rearFoot, 'rest:frontFoot': frontFoot }
    : { 'drive:knee': knee, 'drive:rearFoot': rearFoot, 'drive:frontFoot': frontFoot };
}

/** The share of one contact, or its load, of what presses on all: no contact pulls, and the others carry the whole. */
function held(when: 'rest' | 'drive', contact: Contact, as: 'share' | 'load'): Fold {
  const value = ([knee, rearFoot, frontFoot]: readonly number[]) => {
    const press = { knee: knee!, rearFoot: rearFoot!, frontFoot: frontFoot! };
    return heldShares(press)[contact] * (as === 'share' ? 1 : knee! + rearFoot! + frontFoot!);
  };
  return { of: CONTACTS.map((name) => `${when}:${name}`), value, judgedBy: 'value' };
}

/** An included angle from its cosine. */
const angle = ([cosine]: readonly number[]) => Math.acos(Math.min(1, Math.max(-1, cosine!)));
const underZero = ([room]: readonly number[]) => Math.max(0, -room!);
const overZero = ([excess]: readonly number[]) => Math.max(0, excess!);

/** The folded quantities of a seat, each with the smooth values that it is made of. */
export function seatFolds(state: SeatState): Partial<Record<QuantityId, Fold>> {
  const { seat, body, stances } = state;
  const { rear } = legChains(stances.ready, lengthsOf(body));
  const kneeAt = ([whole, shank, excess]: readonly number[]) =>
    whole! - firstAngle(rear, { first: Math.max(0.05, shank!), excess: excess! });
  return {
    rearReach: { of: ['rearExcess'], value: overZero, judgedBy: 'smooth' },
    frontReach: { of: ['frontExcess'], value: overZero, judgedBy: 'smooth' },
    rearAnkle: { of: ['rearCosine'], value: angle, judgedBy: 'value' },
    frontKnee: { of: ['frontCosine'], value: angle, judgedBy: 'value' },
    kneelingKnee: {
      of: ['kneeToBall', 'shank', 'rearExcess'],
      value: kneeAt,
      judgedBy: 'value',
    },
    padBevel: { of: ['padInsideHull'], value: underZero, judgedBy: 'value' },
    restBevel: { of: ['restInsideHull'], value: underZero, judgedBy: 'value' },
    hipFlexorStretch: {
      of: ['kneelingHip', 'kneeToBall', 'shank', 'rearExcess'],
      value: ([hip, ...knee]) => Math.min(hip! - Math.PI, Math.PI / 2 - kneeAt(knee)),
      judgedBy: 'mean',
    },
    supportMargin: {
      of: marginEdges(state).map((_, i) => edgeName(i)),
      value: (distances) => Math.min(...distances),
      judgedBy: 'mean',
    },
    kneeShare: held('rest', 'knee', 'share'),
    rearShare: held('rest', 'rearFoot', 'share'),
    frontShare: held('rest', 'frontFoot', 'share'),
    kneeLoad: held('rest', 'knee', 'load'),
    rearLoad: held('rest', 'rearFoot', 'load'),
    frontLoad: held('rest', 'frontFoot', 'load'),
    driveKneeLoad: held('drive', 'knee', 'load'),
    driveRearLoad: held('drive', 'rearFoot', 'load'),
    driveFrontLoad: held('drive', 'frontFoot', 'load'),
    padPressure: {
      of: ['kneeLoad', 'kneeRadius'],
      value: ([load, radius]) => Math.max(0, load!) / kneeContactArea(seat.kneePad, Math.max(0.01, radius!)),
      judgedBy: 'value',
    },
  };
}

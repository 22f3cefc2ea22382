import { toPaddlerFrame } from '../frame/mirror.ts';
import { cornerAngle } from '../posture/angles.ts';
import { lengthsOf } from '../posture/contacts.ts';
import { chainCosine, excessOf, firstAngle, legChains } from '../posture/reach.ts';
import { kneeContactArea } from '../support/knee-contact.ts';
import { cornersOf, supportPatches } from '../support/support-patches.ts';
import { polygonMargin, supportPolygon } from '../support/support-polygon.ts';
import type { Fold } from './fold.ts';
import type { QuantityId } from './quantities.ts';
import type { SeatState } from './seat-state.ts';

/** Smooth values that folded quantities are made of and that are no quantities themselves. */
export function smoothValues({ stances: { ready }, body }: SeatState): Record<string, number> {
  const { rear, front } = legChains(ready, lengthsOf(body));
  const { kneelingHip, kneelingKnee, rearBall } = ready.points;
  return {
    rearExcess: excessOf(rear),
    frontExcess: excessOf(front),
    rearCosine: chainCosine(rear),
    frontCosine: chainCosine(front),
    shank: rear.first,
    /** Thigh over the line from knee to ball: the shank stands between the two. */
    kneeToBall: cornerAngle(kneelingHip, kneelingKnee, rearBall),
    kneeRadius: body.lengths.kneeRadius.value,
    thighRoll: ready.angles.thighRoll,
  };
}

const angle = ([cosine]: readonly number[]) => Math.acos(Math.min(1, Math.max(-1, cosine!)));
const overZero = ([excess]: readonly number[]) => Math.max(0, excess!);

/** The folded quantities of a seat, each with the smooth values that it is made of. */
export function seatFolds(state: SeatState): Partial<Record<QuantityId, Fold>> {
  const { seat, frame, body, stances } = state;
  const { rear } = legChains(stances.ready, lengthsOf(body));
  const corners = cornersOf(supportPatches(stances.ready, seat));
  const polygon = supportPolygon(corners.map((c) => ({ ...c, ...toPaddlerFrame({ ...c, z: 0 }, frame) })));
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
    hipFlexorStretch: {
      of: ['kneelingHip', 'kneeToBall', 'shank', 'rearExcess'],
      value: ([hip, ...knee]) => Math.min(hip! - Math.PI, Math.PI / 2 - kneeAt(knee)),
      judgedBy: 'mean',
    },
    supportMargin: {
      of: ['centreAft', 'centreOut'],
      value: ([aft, out]) => polygonMargin(polygon, { x: -aft!, y: out! }).margin,
      judgedBy: 'mean',
    },
    padPressure: {
      of: ['kneeLoad', 'kneeRadius'],
      value: ([load, radius]) => Math.max(0, load!) / kneeContactArea(seat.kneePad, Math.max(0.01, radius!)),
      judgedBy: 'value',
    },
  };
}

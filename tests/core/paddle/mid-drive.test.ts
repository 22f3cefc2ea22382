import { describe, expect, it } from 'vitest';
import type { BodyEstimate } from '../../../core/body/body.ts';
import { boatState } from '../../../core/evaluation/boat-state.ts';
import { seatFrame } from '../../../core/evaluation/seat-state.ts';
import {
  HEAD_LEVELS,
  headLevels,
  midDrive,
  nearestLevel,
  topHandSd,
} from '../../../core/paddle/mid-drive.ts';
import { paddleFit } from '../../../core/paddle/paddle-fit.ts';
import type { Phase, Stance } from '../../../core/posture/stance.ts';
import { strokeRow } from '../../../core/stroke/stroke-cycle.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../example/example-fit.ts';
import { valuesOf } from '../example/values-of.ts';

const degree = Math.PI / 180;

/** Lengths of the ratio table (Drillis & Contini 1966, as reproduced in Winter) for 1.80 m, the hand to its middle. */
const RATIO_BODY = {
  stature: 1.8,
  lengths: {
    trunk: { value: 0.288 * 1.8 },
    upperArm: { value: 0.186 * 1.8 },
    forearm: { value: 0.146 * 1.8 },
    hand: { value: 0.054 * 1.8 },
    headNeck: { value: 0.182 * 1.8 },
  } as unknown as BodyEstimate['lengths'],
};

/** A stance that says only what the middle of the drive asks of it. */
function stanceWith(
  pitchDeg: number,
  points: Record<string, { x: number; y: number; z: number }> = {},
): Stance {
  return { angles: { trunkPitch: pitchDeg * degree, trunkRoll: 0 }, points } as unknown as Stance;
}

const at = (z: number) => ({ x: 0, y: 0, z });
const STANCES: Record<Phase, Stance> = {
  ready: stanceWith(12, { midHip: at(0.6), kneelingKnee: at(0.2), topHand: at(1.36) }),
  catch: stanceWith(38, { lowerHand: at(0.8), kneelingKnee: at(0.2) }),
  exit: stanceWith(12),
};

describe('the middle of the drive, worked by hand for a paddler of 1.80 m', () => {
  it('puts the shoulders a trunk of 51.8 cm at 35° over the hips, and the hand 0.235 of a 69.5 cm arm over them', () => {
    const middle = midDrive({ body: RATIO_BODY, seat: { stroke: {} }, stances: STANCES });
    expect(middle.trunkPitch / degree).toBeCloseTo(35, 9);
    // 51.84 cm × cos 35° (0.81915) = 42.46 cm over hips at 60 cm.
    expect(middle.shoulderZ).toBeCloseTo(1.0246, 4);
    // (0.386 of stature) × 180 cm = 69.48 cm; × (0.40 + 0.07) ÷ 2 = 16.33 cm.
    expect(middle.topHandOver).toBeCloseTo(0.1633, 4);
    expect(middle.topHandZ).toBeCloseTo(1.1879, 3);
  });

  it('leans no farther than the athlete’s own limit lets the trunk go', () => {
    const limits = [{ joint: 'trunkForward' as const, maxDeg: 28, reason: 'invented' }];
    const seat = { stroke: {}, athlete: exampleAthlete({ limits }) };
    const stances = { ...STANCES, catch: { ...STANCES.catch, ...stanceWith(28) } };
    expect(midDrive({ body: RATIO_BODY, seat, stances }).trunkPitch / degree).toBeCloseTo(28, 9);
    // Without it: 35° less by half of the 10° that the catch is short of its usual 38°.
    const free = midDrive({ body: RATIO_BODY, seat: { stroke: {} }, stances });
    expect(free.trunkPitch / degree).toBeCloseTo(30, 9);
  });

  it('makes a paddle of 1.70 m with a blade of 60 cm, water at 9 cm', () => {
    const paddle = { lengthM: 1.7, bladeLengthM: 0.6, lowerHandM: 0.7, bladeAngleDeg: 0, massKg: 0.75 };
    const seat = { paddle, stroke: {} };
    const fit = paddleFit({ body: RATIO_BODY, seat, stances: STANCES, waterZ: 0.09, gunwaleZ: 0.3 });
    // 11 (knee over water) + 40 (thigh) + 42.46 (trunk) + 16.33 (hand) + 60 (blade) = 169.79 cm; rule: 170 cm.
    expect(fit.byStance.lengthM).toBeCloseTo(1.6979, 3);
    expect(fit.difference).toBeCloseTo(-0.0021, 3);
    expect(fit.topHand.byStature.over).toBeCloseTo(0.1654, 3);
    // The eyes are at 0.936 − 0.818 of stature, 21.2 cm over them.
    expect(fit.topHand.modelled.level).toBe('eyes');
  });

  it('has hips and hand where the solved figure has them when its shaft is upright, the trunk farther forward', () => {
    const fit = exampleFit();
    const report = valuesOf(fit);
    const seat = fit.seats[0]!;
    const state = { ...report.seats[0]!, seat, frame: seatFrame(fit.boat, seat, 0) };
    const { points } = strokeRow({ boat: boatState(fit), seats: [state] }, 1.5).seats[0]!.stance;
    const shaft = Math.atan2(points.topHand.x - points.lowerHand.x, points.topHand.z - points.lowerHand.z);
    expect(Math.abs(shaft)).toBeLessThan(3 * degree);
    const middle = midDrive({ body: state.body, seat, stances: state.stances });
    const shoulderToHand = points.topHand.z - points.midShoulder.z;
    expect(Math.abs(middle.topHandOver - shoulderToHand)).toBeLessThan(0.01);
    expect(Math.abs(middle.hipZ - points.midHip.z)).toBeLessThan(0.01);
  });

  it('is lower than the hand at rest: the reason why the length is not read off the ready stance', () => {
    const report = valuesOf(exampleFit());
    const { body, stances } = report.seats[0]!;
    const middle = midDrive({ body, seat: exampleSeat(), stances });
    expect(stances.ready.points.topHand.z - middle.topHandZ).toBeGreaterThan(0.02);
  });
});

describe('the height of the top hand', () => {
  it('is the measured one where there is one, and then better known', () => {
    const seat = { stroke: { topHandOverM: 0.11 } };
    expect(midDrive({ body: RATIO_BODY, seat, stances: STANCES }).topHandOver).toBe(0.11);
    expect(topHandSd({ body: RATIO_BODY, seat })).toBe(0.02);
    expect(topHandSd({ body: RATIO_BODY, seat: { stroke: {} } })).toBeCloseTo(0.03, 12);
  });

  it('is told by the nearest place of the head: 0, 9.4, 21.2 and 32.8 cm for 1.80 m', () => {
    const levels = headLevels(RATIO_BODY);
    expect(HEAD_LEVELS.map((level) => Math.round(levels[level] * 1000))).toEqual([0, 94, 212, 328]);
    const near = [-0.1, 0.04, 0.06, 0.14, 0.16, 0.26, 0.28, 0.5].map((over) =>
      nearestLevel(over, RATIO_BODY),
    );
    expect(near).toEqual(['shoulder', 'shoulder', 'chin', 'chin', 'eyes', 'eyes', 'crown', 'crown']);
  });

  it('goes with the athlete: levels of a taller body are farther apart', () => {
    const tall = valuesOf(exampleFit([exampleSeat({ athlete: exampleAthlete({ statureM: 1.95 }) })]));
    const short = valuesOf(exampleFit([exampleSeat({ athlete: exampleAthlete({ statureM: 1.6 }) })]));
    expect(headLevels(tall.seats[0]!.body).eyes).toBeGreaterThan(headLevels(short.seats[0]!.body).eyes);
  });
});

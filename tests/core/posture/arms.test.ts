import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { estimateBody } from '../../../core/body/estimate-body.ts';
import type { Seat } from '../../../core/document/seat-schema.ts';
import { dot, norm, subtract, type Vec3 } from '../../../core/frame/vec3.ts';
import { armsAt, armsHold, armsSlopeTo, blankArmsSlope } from '../../../core/posture/arms.ts';
import { lengthsOf } from '../../../core/posture/contacts.ts';
import { leaning } from '../../../core/posture/leaning.ts';
import type { Phase } from '../../../core/posture/stance.ts';
import { cases } from '../../cases.ts';
import { exampleSeat } from '../example/example-fit.ts';

const lengths = lengthsOf(estimateBody({ stature: 1.8, mass: 80, sex: 'male' }));
const PHASES = ['ready', 'catch', 'exit'] as const;
const UP = { x: 0, y: 0, z: 1 };
const hold = (phase: Phase, seat: Seat = exampleSeat()) => armsHold(lengths, seat, phase);

describe('armsHold', () => {
  it.each(PHASES)('%s: the hands stand as far apart as the lower hand is down the shaft', (phase) => {
    const { topHand, lowerHand } = hold(phase);
    expect(norm(subtract(lowerHand, topHand))).toBeCloseTo(0.7, 9);
  });

  it('leads with the blade at the catch and trails it at the exit, and stands within 12° of upright when ready', () => {
    const forward = (phase: Phase) => {
      const { topHand, lowerHand } = hold(phase);
      return (lowerHand.x - topHand.x) / (topHand.z - lowerHand.z);
    };
    expect(forward('catch')).toBeGreaterThan(0.3);
    expect(forward('exit')).toBeLessThan(-0.3);
    expect(Math.abs(forward('ready'))).toBeLessThan(Math.tan((12 * Math.PI) / 180));
  });

  it('is mirrored for somebody who kneels on the other knee than they paddle on', () => {
    const own = hold('catch');
    const other = hold('catch', exampleSeat({ kneels: 'right' }));
    for (const name of ['square', 'topHand', 'lowerHand'] as const) {
      expect(other[name]).toEqual({ ...own[name], y: -own[name].y });
    }
  });

  it('turns the shoulders as the athlete does at catch and exit, and as all do when ready', () => {
    const seat = exampleSeat({ stroke: { catchRotationDeg: 60, exitRotationDeg: -30 } });
    const turn = (phase: Phase) => (Math.asin(hold(phase, seat).square.x) * 180) / Math.PI;
    expect(turn('catch')).toBeCloseTo(60, 9);
    expect(turn('exit')).toBeCloseTo(-30, 9);
    expect(turn('ready')).toBeCloseTo((Math.asin(hold('ready').square.x) * 180) / Math.PI, 12);
  });
});

describe('armsAt', () => {
  it.each(PHASES)('%s: shoulders lie square to the trunk, half their distance to either side', (phase) => {
    const up = leaning(0.4, 0.1).up;
    const held = hold(phase);
    const { lowerShoulder, topShoulder } = armsAt(up, held);
    const before = subtract(lowerShoulder, held.travel);
    expect(dot(before, up)).toBeCloseTo(0, 9);
    expect(norm(before)).toBeCloseTo(lengths.shoulderSeparation / 2, 6);
    expect(norm(subtract(before, topShoulder))).toBeCloseTo(lengths.shoulderSeparation, 6);
  });

  it('brings the lower shoulder 9 cm toward its hand, as shoulder blade and ribs do', () => {
    const held = hold('ready');
    const { travel } = held;
    const way = subtract(held.lowerHand, armsAt(UP, held).lowerShoulder);
    expect(norm(travel)).toBeGreaterThan(0.08);
    expect(norm(travel)).toBeLessThan(0.1);
    expect(dot(travel, way) / norm(travel) / norm(way)).toBeGreaterThan(0.95);
  });

  it('keeps the upper arm its length where the hand is in reach', () => {
    const { lowerShoulder, topShoulder, lower, top } = armsAt(UP, hold('ready'));
    expect(lower.excess).toBeLessThan(0);
    expect(norm(subtract(lower.middle, lowerShoulder))).toBeCloseTo(lengths.upperArm, 2);
    expect(norm(subtract(top.middle, topShoulder))).toBeCloseTo(lengths.upperArm, 2);
  });

  it('has the elbows outside the hands’ lines: the lower one to the paddling side, the top one to the other', () => {
    const arms = armsAt(UP, hold('ready'));
    expect(arms.lower.out.y).toBeGreaterThan(0);
    expect(arms.top.out.y).toBeLessThan(0);
  });
});

describe('armsSlopeTo', () => {
  it('is what differences say, for any lean of the trunk', () => {
    const angle = fc.double({ min: -0.6, max: 0.6, noNaN: true });
    fc.assert(
      fc.property(angle, angle, fc.constantFrom(...PHASES), (pitch, roll, phase) => {
        const held = hold(phase);
        const { up, byPitch } = leaning(pitch, roll);
        const h = 1e-6;
        const { lower, top, ...shoulders } = armsSlopeTo(blankArmsSlope(), armsAt(up, held), byPitch);
        const slope = { ...shoulders, lowerElbow: lower.middle, topElbow: top.middle };
        const joints = (p: number) => {
          const arms = armsAt(leaning(p, roll).up, held);
          return {
            lowerShoulder: arms.lowerShoulder,
            topShoulder: arms.topShoulder,
            lowerElbow: arms.lower.middle,
            topElbow: arms.top.middle,
          };
        };
        const [more, less] = [joints(pitch + h), joints(pitch - h)];
        for (const name of ['lowerShoulder', 'topShoulder', 'lowerElbow', 'topElbow'] as const) {
          for (const axis of ['x', 'y', 'z'] as const satisfies readonly (keyof Vec3)[]) {
            const difference = (more[name][axis] - less[name][axis]) / (2 * h);
            expect(slope[name][axis], `${name} ${axis}`).toBeCloseTo(difference, 5);
          }
        }
      }),
      { seed: 22, numRuns: cases(40, 120) },
    );
  });
});

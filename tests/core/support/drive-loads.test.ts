import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { estimateBody } from '../../../core/body/estimate-body.ts';
import { solveStance } from '../../../core/posture/solve-stance.ts';
import { FREE_FORCE_SD } from '../../../core/support/blade-force.ts';
import { driveLoads } from '../../../core/support/drive-loads.ts';
import { supportLoads } from '../../../core/support/support-loads.ts';
import { GRAVITY } from '../../../core/units/gravity.ts';
import { exampleSeat } from '../example/example-fit.ts';

const body = estimateBody({ stature: 1.8, mass: 80, sex: 'male' });
const stanceOn = (side: 'left' | 'right') => {
  const seat = { ...exampleSeat(), side };
  const stance = solveStance({ body, seat, frame: { stationX: 0, floorZ: 0.1, side } });
  return { stance, seat };
};
const { stance: base, seat } = stanceOn('left');
const still = supportLoads(base, seat);

describe('the drive', () => {
  it('without a blade force moves no load and asks nothing of the pad', () => {
    const drive = driveLoads(base, { forceN: 0, atZ: -0.2, atY: 0.4 });
    expect(drive.padForwardN).toBe(0);
    expect(drive.padSidewaysN).toBe(0);
    for (const [contact, share] of Object.entries(still.shares)) {
      expect(drive.shares[contact as 'knee']).toBeCloseTo(share, 12);
    }
  });

  it('takes weight off the front foot and puts it on the rear foot: the water pushes below the pad', () => {
    const drive = driveLoads(base, { forceN: 200, atZ: -0.2, atY: 0.4 });
    expect(drive.shares.frontFoot).toBeLessThan(still.shares.frontFoot);
    expect(drive.shares.rearFoot).toBeGreaterThan(still.shares.rearFoot);
  });

  it('moves the loads forward when the force is above the knee, as it would be for a rope at chest height', () => {
    const drive = driveLoads(base, { forceN: 200, atZ: 0.9, atY: still.contacts.knee.y });
    expect(drive.shares.frontFoot).toBeGreaterThan(still.shares.frontFoot);
    expect(drive.padSidewaysN).toBeCloseTo(0, 12);
  });

  it('mirrors: the other side gives the same loads, the pad pressed toward the blade again', () => {
    const other = stanceOn('right').stance;
    const here = driveLoads(base, { forceN: 250, atZ: -0.15, atY: 0.42 });
    const there = driveLoads(other, { forceN: 250, atZ: -0.15, atY: -0.42 });
    expect(there.padSidewaysN).toBeCloseTo(here.padSidewaysN, 9);
    expect(there.loadsN.knee).toBeCloseTo(here.loadsN.knee, 6);
    expect(there.loadsN.frontFoot).toBeCloseTo(here.loadsN.frontFoot, 6);
  });

  it('stays finite with the front foot beside or behind the knee', () => {
    for (const x of [base.points.kneeContact.x, base.points.kneeContact.x - 0.5]) {
      const odd = { ...base, points: { ...base.points, frontBall: { ...base.points.frontBall, x } } };
      const drive = driveLoads(odd, { forceN: 300, atZ: -0.2, atY: 0.4 });
      expect(Object.values(drive.loadsN).every(Number.isFinite)).toBe(true);
      expect(Number.isFinite(drive.padSidewaysN)).toBe(true);
    }
  });

  it('is proportional to the force, seed 31', () => {
    const force = fc.double({ min: 1, max: 500, noNaN: true });
    const one = driveLoads(base, { forceN: 1, atZ: -0.2, atY: 0.4 });
    fc.assert(
      fc.property(force, (forceN) => {
        const drive = driveLoads(base, { forceN, atZ: -0.2, atY: 0.4 });
        expect(drive.padSidewaysN).toBeCloseTo(forceN * one.padSidewaysN, 6);
        const moved = drive.loadsN.frontFoot - still.loadsN.frontFoot;
        expect(moved).toBeCloseTo(forceN * (one.loadsN.frontFoot - still.loadsN.frontFoot), 6);
      }),
      { seed: 31 },
    );
  });
});

describe('where the model of the drive ends (our own estimates)', () => {
  const { kneeContact, frontBall } = base.points;
  const sideways = (ahead: number) => {
    const points = { ...base.points, frontBall: { ...frontBall, x: kneeContact.x + ahead } };
    return driveLoads({ ...base, points }, { forceN: 200, atZ: 0, atY: kneeContact.y + 0.3 }).padSidewaysN;
  };

  it('knee and foot count as at least 20 cm apart along the boat', () => {
    // The couple by hand: 200 N × 0.3 m over the lever.
    expect(sideways(0.4)).toBeCloseTo(60 / 0.4, 9);
    expect(sideways(0.21)).toBeCloseTo(60 / 0.21, 9);
    for (const ahead of [0.2, 0.1, -0.3]) expect(sideways(ahead)).toBeCloseTo(60 / 0.2, 9);
  });

  it('the contacts carry at least a fifth of the weight, however much the blade lifts', () => {
    const weight = base.totalMassKg * GRAVITY;
    const carried = (lift: number) => {
      const { knee, rearFoot, frontFoot } = driveLoads(base, {
        forceN: 0,
        atZ: 0,
        atY: 0,
        liftN: lift * weight,
      }).loadsN;
      return (knee + rearFoot + frontFoot) / weight;
    };
    expect(carried(0.79)).toBeCloseTo(0.21, 9);
    for (const lift of [0.8, 0.9, 1.5]) expect(carried(lift)).toBeCloseTo(0.2, 9);
  });

  it('an unknown push across is that of a shaft leaning out or in by 11°, lift that of 17° along the boat', () => {
    // Two standard deviations, as the source says of them.
    const lean = (sd: number) => (Math.atan(2 * sd) * 180) / Math.PI;
    expect(lean(FREE_FORCE_SD.out)).toBeCloseTo(11.3, 1);
    expect(lean(FREE_FORCE_SD.lift)).toBeCloseTo(16.7, 1);
  });
});

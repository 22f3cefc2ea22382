import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { estimateBody } from '../../core/body/estimate-body.ts';
import { add, cross, norm, subtract, type Vec3 } from '../../core/frame/vec3.ts';
import { solveStance } from '../../core/posture/solve-stance.ts';
import type { Stance } from '../../core/posture/stance.ts';
import type { BladeForce } from '../../core/support/drive-loads.ts';
import { driveLoads } from '../../core/support/drive-loads.ts';
import { supportLoads } from '../../core/support/support-loads.ts';
import { exampleSeat } from '../core/example/example-fit.ts';

/**
 * Statics of a rigid body, as in any textbook of mechanics (Hibbeler, Engineering Mechanics: Statics, chapter 5, the
 * equations of equilibrium): the forces sum to nothing and so do their moments about any point. Standard gravity 9.80665 m/s²
 * (3rd CGPM 1901). The figures of the worked examples are invented, the sums beside them done by hand.
 */
const G = 9.80665;
const seat = exampleSeat();
const base = solveStance({
  body: estimateBody({ stature: 1.8, mass: 80, sex: 'male' }),
  seat,
  frame: { stationX: 0, floorZ: 0.08, side: 'left' },
});

interface Force {
  readonly at: Vec3;
  readonly force: Vec3;
}

/** Resultant and moment about a point of everything that acts on paddler and paddle. */
function resultant(forces: readonly Force[], about: Vec3) {
  let force: Vec3 = { x: 0, y: 0, z: 0 };
  let moment: Vec3 = { x: 0, y: 0, z: 0 };
  for (const f of forces) {
    force = add(force, f.force);
    moment = add(moment, cross(subtract(f.at, about), f.force));
  }
  return { force: norm(force), moment: norm(moment) };
}

/** Everything that the model says acts on the paddler while the water pushes the blade forward. */
function forcesOn(stance: Stance, blade: BladeForce): Force[] {
  const { contacts } = supportLoads(stance, seat);
  const drive = driveLoads(stance, blade);
  const { atX = 1.1, liftN = 0, acrossN = 0 } = blade;
  // About the knee: what the foot holds across, and then what is left for the knee. Its size is the model's own.
  const lever = contacts.frontFoot.x - contacts.knee.x;
  const onFoot = (acrossN * (atX - contacts.knee.x) - blade.forceN * (blade.atY - contacts.knee.y)) / lever;
  const away = -Math.sign(acrossN - onFoot) * drive.padSidewaysN;
  const { knee, rearFoot, frontFoot } = drive.loadsN;
  return [
    { at: stance.centreOfMass, force: { x: 0, y: 0, z: -stance.totalMassKg * G } },
    { at: { x: atX, y: blade.atY, z: blade.atZ }, force: { x: blade.forceN, y: acrossN, z: liftN } },
    { at: contacts.knee, force: { x: -drive.padForwardN, y: away, z: knee } },
    { at: contacts.rearFoot, force: { x: 0, y: 0, z: rearFoot } },
    { at: contacts.frontFoot, force: { x: 0, y: -away - acrossN, z: frontFoot } },
  ];
}

const near = fc.double({ min: -0.5, max: 0.5, noNaN: true });

describe('paddler and paddle in balance', () => {
  it('whatever the blade’s force, lift and push across, its depth and its place, forces and moments about any point sum to nothing, seed 41', () => {
    const blade = fc.record({
      forceN: fc.double({ min: 0, max: 500, noNaN: true }),
      atZ: fc.double({ min: -0.5, max: 0.2, noNaN: true }),
      atY: fc.double({ min: -0.8, max: 0.8, noNaN: true }),
      atX: fc.double({ min: -0.2, max: 1.2, noNaN: true }),
      liftN: fc.double({ min: -200, max: 200, noNaN: true }),
      acrossN: fc.double({ min: -100, max: 100, noNaN: true }),
    });
    fc.assert(
      fc.property(blade, near, near, near, (force, x, y, z) => {
        const { force: left, moment } = resultant(forcesOn(base, force), { x, y, z });
        expect(left).toBeLessThan(1e-9);
        expect(moment).toBeLessThan(1e-9);
      }),
      { seed: 41, numRuns: 300 },
    );
  });

  it('is lost when the force is put at the lower hand: the pull of the arms is inside the body', () => {
    const { lowerHand } = base.points;
    const right = { forceN: 200, atZ: -0.15, atY: 0.4 };
    const atTheHand = forcesOn(base, { ...right, atZ: lowerHand.z });
    const wrong = atTheHand.map((f, i) => (i === 1 ? { ...f, at: { ...f.at, z: right.atZ } } : f));
    expect(resultant(wrong, { x: 0, y: 0, z: 0 }).moment).toBeGreaterThan(100);
  });
});

describe('a worked example of the drive', () => {
  const at = (x: number, y: number, z: number) => ({ x, y, z });
  const stance: Stance = {
    ...base,
    points: {
      ...base.points,
      kneeContact: at(-0.2, 0.05, 0.2),
      rearBall: at(-0.65, -0.1, 0.1),
      frontBall: at(0.4, -0.1, 0.1),
    },
    centreOfMass: at(0, 0, 0.8),
    totalMassKg: 80,
  };

  it('at rest: knee 66.7 %, rear foot 1.6 %, front foot 31.7 %', () => {
    // Across: knee × 0.15 = 0.10, so two thirds. Along, about the knee, y settled: −0.45 r + 0.6 f = 0.2 with r + f = 1/3.
    const { shares } = supportLoads(stance, seat);
    expect(shares.knee).toBeCloseTo(2 / 3, 12);
    expect(shares.frontFoot).toBeCloseTo((0.2 + 0.45 / 3) / 1.05, 12);
    expect(shares.rearFoot).toBeCloseTo(1 / 3 - (0.2 + 0.45 / 3) / 1.05, 12);
  });

  it('blade 0.2 m under the keel and 0.5 m out, 196.133 N (a quarter of the weight): pad 147.1 N toward the blade', () => {
    // Sideways 196.133 × (0.5 − 0.05) ÷ 0.6 = 147.09975. Weight seems 0.25 × (0.2 + 0.2) = 0.1 m further aft and
    // 0.1875 × (0.2 − 0.1) = 0.01875 m away from the blade. Across: knee × 0.15 = 0.10 − 0.01875.
    const drive = driveLoads(stance, { forceN: (80 * G) / 4, atZ: -0.2, atY: 0.5 });
    const knee = (0.1 - 0.01875) / 0.15;
    const front = (0.1 + 0.45 * (1 - knee)) / 1.05;
    expect(drive.padForwardN).toBeCloseTo(196.133, 9);
    expect(drive.padSidewaysN).toBeCloseTo(147.09975, 9);
    expect(drive.shares.knee).toBeCloseTo(knee, 12);
    expect(drive.shares.frontFoot).toBeCloseTo(front, 12);
    expect(drive.shares.rearFoot).toBeCloseTo(1 - knee - front, 12);
    expect(drive.loadsN.knee).toBeCloseTo(knee * 80 * G, 9);
  });

  it('a lift of 78.4532 N (a tenth of the weight) at 0.6 m forward and 0.5 m out takes it off there', () => {
    // Left: 706.0788 N. About the middle: along 0.1 × 0.6 ÷ 0.9 = 0.0667 m aft, across 0.1 × 0.5 ÷ 0.9 = 0.0556 m off. Across:
    // knee × 0.15 = 0.10 − 0.0556, so 0.2963; along, about the knee: −0.45 r + 0.6 f = 0.2 − 0.0667 with r + f = 0.7037.
    const drive = driveLoads(stance, { forceN: 0, atX: 0.6, atY: 0.5, atZ: -0.2, liftN: (80 * G) / 10 });
    const knee = (0.1 - 0.05 / 0.9) / 0.15;
    const front = (0.2 - 0.06 / 0.9 + 0.45 * (1 - knee)) / 1.05;
    expect(drive.loadsN.knee).toBeCloseTo(knee * 72 * G, 9);
    expect(drive.loadsN.frontFoot).toBeCloseTo(front * 72 * G, 9);
    expect(drive.loadsN.rearFoot).toBeCloseTo((1 - knee - front) * 72 * G, 9);
    expect(drive.padSidewaysN).toBeCloseTo(0, 12);
  });

  it('a push of 60 N across, level with the front foot’s ball and on its height, is the foot’s alone', () => {
    const across = driveLoads(stance, { forceN: 0, atX: 0.4, atY: 0, atZ: 0.1, acrossN: 60 });
    expect(across.padSidewaysN).toBeCloseTo(0, 12);
    const { shares } = supportLoads(stance, seat);
    expect(across.shares.knee).toBeCloseTo(shares.knee, 12);
  });
});

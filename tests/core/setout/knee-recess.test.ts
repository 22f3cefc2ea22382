import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  aftReach,
  floorLevel,
  foreReach,
  halfWidthAt,
  type KneeRecess,
  kneeBreadth,
  kneeRecess,
  recessOutline,
} from '../../../core/setout/knee-recess.ts';
import { cases } from '../../cases.ts';
import { inventedSetOut } from './invented-set-out.ts';
import { areaOf, boxOf } from './read-shapes.ts';

const SEED = 20260506;
/** A knee 110 across and 116 through, on a shin that rises 40 on its way to an ankle 400 behind. Millimetres. */
const RECESS: KneeRecess = {
  kneeDepth: 58,
  halfBreadth: 59,
  shankRun: 400,
  shankRise: 40,
  depth: 20,
  foreEnd: 117,
  aftEnd: -143,
};

/** Whether a leg at rest in the hollow fills a place: an ellipsoid ahead of the knee joint, ellipses along the shin. */
function inLeg(
  { kneeDepth: r, halfBreadth: b, shankRun, shankRise }: KneeRecess,
  x: number,
  y: number,
  z: number,
) {
  if (x >= 0) return (x / r) ** 2 + (y / b) ** 2 + ((z - r) / r) ** 2 <= 1;
  const share = Math.min(1, -x / shankRun);
  const [across, down] = [b * (1 - 0.38 * share), r * (1 - 0.3 * share)];
  return (y / across) ** 2 + ((z - (r + shankRise * share)) / down) ** 2 <= 1;
}

/** Whether lowering the leg from above clears a place: the leg fills it or a place straight below it. */
function isHollow(recess: KneeRecess, x: number, y: number, level: number): boolean {
  for (let z = level; z > -1; z -= 0.25) if (inLeg(recess, x, y, z)) return true;
  return false;
}

describe('the hollow of knee and shin', () => {
  it('at the knee is a circle’s or ellipse’s chord: half-breadth × √(1 − ((depth − z)/depth)²)', () => {
    for (const level of [5, 10, 20, 40]) {
      const wanted = 59 * Math.sqrt(1 - ((58 - level) / 58) ** 2);
      expect(halfWidthAt(RECESS, 0, { level, foam: 0 })).toBeCloseTo(wanted, 9);
    }
  });

  it('of a round knee of 50 is 40 wide to each side at 20 up: the 3-4-5 triangle', () => {
    const round = { ...RECESS, kneeDepth: 50, halfBreadth: 50 };
    expect(halfWidthAt(round, 0, { level: 20, foam: 0 })).toBeCloseTo(40, 9);
    expect(foreReach(round, { level: 20, foam: 0 })).toBeCloseTo(40, 9);
  });

  it('is just what a leg lowered into the wood clears, place by place', () => {
    const place = fc.tuple(
      fc.double({ min: -140, max: 70, noNaN: true }),
      fc.double({ min: 0, max: 70, noNaN: true }),
      fc.double({ min: 0.5, max: 50, noNaN: true }),
    );
    fc.assert(
      fc.property(place, ([x, y, level]) => {
        const half = halfWidthAt(RECESS, x, { level, foam: 0 });
        // Within a millimetre of the surface the search in steps of a quarter of one cannot tell.
        fc.pre(Math.abs((half ?? 0) - y) > 1.5 && Math.abs((floorLevel(RECESS, x, 0) ?? 99) - level) > 0.5);
        expect(half !== null && y < half).toBe(isHollow(RECESS, x, y, level));
      }),
      { seed: SEED, numRuns: cases(100, 400) },
    );
  });

  it('has its bottom at the bearing point, and rises ahead of it and behind', () => {
    expect(floorLevel(RECESS, 0, 0)).toBeCloseTo(0, 9);
    expect(floorLevel(RECESS, 30, 0)).toBeCloseTo(58 - Math.sqrt(58 ** 2 - 30 ** 2), 9);
    // A quarter of the way to the ankle: 7.5 % less deep, 10 higher.
    expect(floorLevel(RECESS, -100, 0)).toBeCloseTo(68 - 58 * 0.925, 9);
    expect(floorLevel(RECESS, 59, 0)).toBeNull();
  });

  it('narrows toward the ankle: a quarter of the way there it has lost a quarter of 38 %', () => {
    const across = 59 * (1 - 0.38 / 4);
    const chord = across * Math.sqrt(1 - ((68 - 30) / (58 * 0.925)) ** 2);
    expect(halfWidthAt(RECESS, -100, { level: 30, foam: 0 })).toBeCloseTo(chord, 9);
    expect(halfWidthAt(RECESS, -100, { level: 90, foam: 0 })).toBeCloseTo(across, 9);
  });

  it('is not there below its bottom', () => {
    expect(halfWidthAt(RECESS, 40, { level: 2, foam: 0 })).toBeNull();
    expect(foreReach(RECESS, { level: -1, foam: 0 })).toBe(0);
  });

  it('is cut deeper and wider for foam by the foam’s thickness, where it is measured square to it', () => {
    expect(floorLevel(RECESS, 0, 10)).toBeCloseTo(-10, 9);
    expect(halfWidthAt(RECESS, 0, { level: 58, foam: 10 })).toBeCloseTo(69, 9);
    expect(foreReach(RECESS, { level: 58, foam: 10 })).toBeCloseTo(68, 9);
  });
});

describe('the ends of the hollow', () => {
  it('reach aft as far as the shin is below the level', () => {
    const { x, open } = aftReach(RECESS, { level: 10, foam: 0 });
    expect(open).toBe(false);
    expect(floorLevel(RECESS, x, 0)).toBeCloseTo(10, 6);
  });

  it('run out of the block where the shin does not rise', () => {
    expect(aftReach({ ...RECESS, shankRise: -30 }, { level: 20, foam: 0 })).toEqual({ x: -143, open: true });
  });

  it('come to nothing below the bottom', () => {
    expect(aftReach(RECESS, { level: -5, foam: 0 })).toEqual({ x: 0, open: false });
  });
});

describe('the outline of the hollow', () => {
  it('goes round, is the same on both sides, and holds every half-width', () => {
    const { points, open } = recessOutline(RECESS, { level: 15, foam: 0 })!;
    expect(open).toBe(false);
    for (const [x, y] of points) {
      const half = halfWidthAt(RECESS, x, { level: 15, foam: 0 });
      if (half === null) continue;
      expect(Math.abs(y)).toBeCloseTo(half, 6);
    }
    const { low, high } = boxOf(points);
    expect(low).toBeCloseTo(-high, 9);
  });

  it('lies inside the one above it: depth lines never cross', () => {
    const areas = [5, 10, 15, 20].map((level) => {
      const { points } = recessOutline(RECESS, { level, foam: 0 })!;
      return Math.abs(areaOf(points));
    });
    expect(areas).toEqual([...areas].sort((a, b) => a - b));
    expect(new Set(areas).size).toBe(4);
  });

  it('ahead of a round knee is a circle to a twentieth of a millimetre, between its points too', () => {
    const round = { ...RECESS, kneeDepth: 50, halfBreadth: 50 };
    const { points } = recessOutline(round, { level: 20, foam: 0 })!;
    const ahead = points.filter(([x]) => x >= 0);
    ahead.slice(1).forEach((point, k) => {
      const before = ahead[k]!;
      const middle = Math.hypot((point[0] + before[0]) / 2, (point[1] + before[1]) / 2);
      expect(Math.hypot(...point)).toBeCloseTo(40, 6);
      expect(40 - middle).toBeLessThan(0.05);
    });
  });

  it('is none where there is no hollow, and open where it leaves the block', () => {
    expect(recessOutline(RECESS, { level: -1, foam: 0 })).toBeNull();
    expect(recessOutline({ ...RECESS, shankRise: -30 }, { level: 20, foam: 0 })!.open).toBe(true);
  });
});

describe('the knee that a recess is drawn for', () => {
  const { work } = inventedSetOut();

  it('is the measured one with what callipers are out by, where there is one', () => {
    const measured = { ...work, options: { ...work.options, kneeBreadthM: 0.104 } };
    expect(kneeBreadth(measured)).toEqual({ breadthMm: 104, doubtMm: 3, measured: true });
    expect(kneeRecess(measured, { foreEnd: 1, aftEnd: -1 }).halfBreadth).toBeCloseTo(52 + 4, 9);
  });

  it('is else an estimate that says so, with a doubt that a recess of foam cannot swallow', () => {
    const { breadthMm, doubtMm, measured } = kneeBreadth(work);
    expect(measured).toBe(false);
    expect(doubtMm).toBeGreaterThan(10);
    expect(doubtMm).toBeLessThan(20);
    // Bone breadths of adults as recalled, 80 to 112, and what a knee spreads when knelt on.
    expect(breadthMm).toBeGreaterThan(80);
    expect(breadthMm).toBeLessThan(125);
  });

  it('lies on the shank of the solved stance', () => {
    const { kneelingKnee: knee, kneelingAnkle: ankle } = work.solved.stances.ready.points;
    const { shankRun, shankRise } = kneeRecess(work, { foreEnd: 1, aftEnd: -1 });
    expect(shankRun).toBeCloseTo(1000 * Math.hypot(ankle.x - knee.x, ankle.y - knee.y), 9);
    expect(shankRise).toBeCloseTo(1000 * (ankle.z - knee.z), 9);
  });
});

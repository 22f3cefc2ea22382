import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { estimateBody } from '../../../core/body/estimate-body.ts';
import { solveStance } from '../../../core/posture/solve-stance.ts';
import type { Stance } from '../../../core/posture/stance.ts';
import { CONTACTS } from '../../../core/support/support.ts';
import { supportLoads } from '../../../core/support/support-loads.ts';
import { sharesOf, supportTriangle } from '../../../core/support/support-triangle.ts';
import { cases } from '../../cases.ts';
import { exampleSeat } from '../example/example-fit.ts';

const seat = exampleSeat();
const frame = { stationX: 0, floorZ: 0, side: 'left' as const };
const base = solveStance({ body: estimateBody({ stature: 1.8, mass: 80, sex: 'male' }), seat, frame });

/** The stance with contacts and centre of mass put where a worked example wants them; 100 kg in all. */
function arranged(
  knee: [number, number],
  rear: [number, number],
  front: [number, number],
  centre: [number, number],
): Stance {
  const at = ([x, y]: [number, number], z = 0) => ({ x, y, z });
  return {
    ...base,
    points: { ...base.points, kneeContact: at(knee), rearBall: at(rear), frontBall: at(front) },
    centreOfMass: at(centre, 0.75),
    totalMassKg: 100,
  };
}

describe('three loads by statics, worked by hand', () => {
  it('knee (0,0), rear (−0.6,−0.2), front (0.6,−0.2), centre (0,−0.05): 75, 12.5, 12.5 %', () => {
    // Moments about y: the two feet are level across, 0.2 to the off side; the centre is a quarter of the way.
    const { shares, loadsN, inside } = supportLoads(
      arranged([0, 0], [-0.6, -0.2], [0.6, -0.2], [0, -0.05]),
      seat,
    );
    expect(shares.knee).toBeCloseTo(0.75, 12);
    expect(shares.rearFoot).toBeCloseTo(0.125, 12);
    expect(shares.frontFoot).toBeCloseTo(0.125, 12);
    expect(loadsN.knee).toBeCloseTo(735.49875, 9);
    expect(inside).toBe(true);
  });

  it('knee (−0.2,0.04), rear (−0.65,−0.1), front (0.5,−0.06), centre (0,0): solved from three equations', () => {
    // Sum of loads 1; ΣxF = 0; ΣyF = 0, solved by Cramer's rule: determinant 0.1430.
    const { shares } = supportLoads(arranged([-0.2, 0.04], [-0.65, -0.1], [0.5, -0.06], [0, 0]), seat);
    const determinant = (-0.65 + 0.2) * (-0.06 - 0.04) - (0.5 + 0.2) * (-0.1 - 0.04);
    expect(determinant).toBeCloseTo(0.143, 12);
    expect(shares.knee).toBeCloseTo((-0.65 * -0.06 - 0.5 * -0.1) / determinant, 12);
    expect(shares.rearFoot).toBeCloseTo((0.5 * 0.04 - -0.2 * -0.06) / determinant, 12);
    expect(shares.frontFoot).toBeCloseTo((-0.2 * -0.1 - -0.65 * 0.04) / determinant, 12);
  });

  it('whatever the triangle, loads and their moments balance the weight', () => {
    // Whole millimetres: most doubles are all but zero, and their triangles have no height.
    const within = (most: number) => fc.integer({ min: -most, max: most }).map((mm) => mm / 1000);
    const xy = fc.tuple(within(1000), within(500));
    fc.assert(
      fc.property(xy, xy, xy, xy, (a, b, c, g) => {
        const support = supportLoads(arranged(a, b, c, g), seat);
        fc.pre(!support.inLine);
        for (const contact of CONTACTS) {
          expect(support.shares[contact]).toBeGreaterThanOrEqual(0);
          expect(support.shares[contact]).toBeLessThanOrEqual(1);
          const { least, most } = support.shareRanges[contact];
          expect(least).toBeGreaterThanOrEqual(0);
          expect(most).toBeLessThanOrEqual(1);
          expect(least).toBeLessThanOrEqual(most);
        }
        // Held by the nominal points themselves: then the moments balance too.
        fc.pre(
          Object.values(sharesOf(supportTriangle(support.contacts), { x: g[0], y: g[1] })).every(
            (v) => v >= 0,
          ),
        );
        const { knee, rearFoot, frontFoot } = support.shares;
        expect(knee + rearFoot + frontFoot).toBeCloseTo(1, 8);
        expect(knee * a[0] + rearFoot * b[0] + frontFoot * c[0]).toBeCloseTo(g[0], 8);
        expect(knee * a[1] + rearFoot * b[1] + frontFoot * c[1]).toBeCloseTo(g[1], 8);
      }),
      { seed: 17, numRuns: cases(25, 400) },
    );
  });
});

describe('turning the whole boat about the vertical', () => {
  it.each([0.3, 1.2, -2.5])('by %f rad changes no share', (turn) => {
    const turned = ([x, y]: [number, number]): [number, number] => [
      x * Math.cos(turn) - y * Math.sin(turn),
      x * Math.sin(turn) + y * Math.cos(turn),
    ];
    const places: [number, number][] = [
      [-0.18, 0.04],
      [-0.62, -0.1],
      [0.5, -0.06],
      [0.02, -0.01],
    ];
    const [a, b, c, g] = places as [[number, number], [number, number], [number, number], [number, number]];
    const before = supportLoads(arranged(a, b, c, g), seat);
    const after = supportLoads(arranged(turned(a), turned(b), turned(c), turned(g)), seat);
    expect(after.shares.knee).toBeCloseTo(before.shares.knee, 12);
    expect(after.shares.rearFoot).toBeCloseTo(before.shares.rearFoot, 12);
  });
});

describe('pad pressure', () => {
  it('is the knee’s load over the circle in which a knee, sunk 3 cm and more, is cut', () => {
    const { padPressurePa, loadsN } = supportLoads(base, seat);
    const { kneelingKnee, kneeContact } = base.points;
    const radius = kneelingKnee.z - kneeContact.z;
    const sunk = seat.kneePad.recessDepthM + seat.kneePad.foamGiveM + 0.003;
    const cut = Math.sqrt(radius ** 2 - (radius - sunk) ** 2);
    expect(padPressurePa).toBeCloseTo(
      loadsN.knee / (Math.PI * Math.min(cut, seat.kneePad.widthM / 2) ** 2),
      3,
    );
  });

  it('is nothing where the knee would lift', () => {
    const lifted = arranged([0, 0], [-0.6, -0.2], [0.6, -0.2], [0, -0.23]);
    expect(supportLoads(lifted, seat).padPressurePa).toBe(0);
  });
});

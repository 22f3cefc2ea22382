import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cross, dot, norm, plus, scale, subtract, type Vec3 } from '../../../core/frame/vec3.ts';
import { cornerAngle, hipAngle, hipAngleSlope, spanAtAngle } from '../../../core/posture/angles.ts';
import { cases } from '../../cases.ts';

const O = { x: 0, y: 0, z: 0 };
const X = { x: 1, y: 0, z: 0 };
const Y = { x: 0, y: 1, z: 0 };
const Z = { x: 0, y: 0, z: 1 };
const DOWN = scale(Z, -1);
const deg = (r: number) => (r * 180) / Math.PI;
const coordinate = fc.double({ min: -1, max: 1, noNaN: true });
const vector = fc.record({ x: coordinate, y: coordinate, z: coordinate });

describe('cornerAngle', () => {
  it.each([
    [X, Z, 90],
    [X, scale(X, -2), 180],
    [X, scale(X, 3), 0],
    [X, { x: 1, y: 1, z: 0 }, 45],
    [X, { x: -1, y: Math.sqrt(3), z: 0 }, 120],
  ] as const)('between %o and %o is %f°', (a, b, expected) => {
    expect(deg(cornerAngle(a, O, b))).toBeCloseTo(expected, 10);
  });

  it('does not mind where the corner stands, nor how long the ways are, nor which comes first', () => {
    fc.assert(
      fc.property(vector, vector, vector, (a, b, at) => {
        fc.pre(norm(a) > 0.1 && norm(b) > 0.1);
        const move = (v: Vec3) => subtract(v, scale(at, -1));
        const angle = cornerAngle(a, O, b);
        expect(cornerAngle(move(a), at, move(b))).toBeCloseTo(angle, 6);
        expect(cornerAngle(scale(b, 3), O, a)).toBeCloseTo(angle, 10);
      }),
      { seed: 5, numRuns: cases(25, 100) },
    );
  });
});

describe('hipAngle', () => {
  // Seen from the left, facing +x: trunk up, the line of the hips toward the right, the thigh as said.
  const across = scale(Y, -1);
  const thighAt = (flexionDeg: number): Vec3 => {
    const a = (flexionDeg * Math.PI) / 180;
    return { x: Math.sin(a), y: 0, z: -Math.cos(a) };
  };

  it.each([
    [0, 180],
    [90, 90],
    [30, 150],
    [120, 60],
  ])('a thigh lifted forward by %i° makes %i°', (flexion, expected) => {
    expect(deg(hipAngle({ up: Z, across, thigh: thighAt(flexion) }))).toBeCloseTo(expected, 10);
  });

  it('goes on past a straight line: a thigh 10° behind is extended to 190°', () => {
    expect(deg(hipAngle({ up: Z, across, thigh: thighAt(-10) }))).toBeCloseTo(190, 10);
  });

  it('does not mind a thigh spread sideways', () => {
    const spread = { ...thighAt(40), y: 0.7 };
    expect(deg(hipAngle({ up: Z, across, thigh: spread }))).toBeCloseTo(140, 10);
  });

  it('has the slope that differences have', () => {
    fc.assert(
      fc.property(vector, vector, vector, vector, (up, thigh, dUp, dThigh) => {
        const ways = { up: { ...up, z: up.z + 2 }, across, thigh: { ...thigh, z: thigh.z - 2 } };
        const change = { up: dUp, across: scale(X, 0.3), thigh: dThigh };
        const at = (h: number) =>
          hipAngle({
            up: subtract(ways.up, scale(change.up, -h)),
            across: subtract(ways.across, scale(change.across, -h)),
            thigh: subtract(ways.thigh, scale(change.thigh, -h)),
          });
        const h = 1e-6;
        expect(hipAngleSlope(ways, change)).toBeCloseTo((at(h) - at(-h)) / (2 * h), 6);
      }),
      { seed: 6, numRuns: cases(50, 200) },
    );
  });

  it('has a finite slope even where there is no angle', () => {
    const nothing = { up: O, across, thigh: O };
    expect(Number.isFinite(hipAngleSlope(nothing, { up: X, across: O, thigh: DOWN }))).toBe(true);
  });
});

describe('spanAtAngle', () => {
  it.each([
    [Math.PI, 7],
    [Math.PI / 2, 5],
    [0, 1],
  ])('links of 3 and 4 at %f rad have their ends %f apart', (angle, span) => {
    expect(spanAtAngle(angle, 3, 4).span).toBeCloseTo(span, 6);
  });

  it('grows with the angle as differences say, and stands still when straight', () => {
    for (const angle of [0.5, 1.2, 2, 2.9]) {
      const h = 1e-6;
      const difference =
        (spanAtAngle(angle + h, 0.44, 0.43).span - spanAtAngle(angle - h, 0.44, 0.43).span) / (2 * h);
      expect(spanAtAngle(angle, 0.44, 0.43).slope).toBeCloseTo(difference, 7);
    }
    expect(spanAtAngle(Math.PI, 0.44, 0.43).slope).toBeCloseTo(0, 12);
  });
});

describe('turning the whole figure', () => {
  /** A vector turned by `angle` about a unit axis (Rodrigues' formula). */
  function turned(v: Vec3, axis: Vec3, angle: number): Vec3 {
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    const along = dot(axis, v) * (1 - c);
    return plus(plus(scale(v, c), s, cross(axis, v)), along, axis);
  }

  const around = fc.double({ min: -Math.PI, max: Math.PI, noNaN: true });
  /** Unit vectors, evenly enough over the sphere. */
  const way = fc
    .record({ around, height: fc.double({ min: -0.99, max: 0.99, noNaN: true }) })
    .map(({ around: at, height: z }): Vec3 => {
      const flat = Math.sqrt(1 - z * z);
      return { x: flat * Math.cos(at), y: flat * Math.sin(at), z };
    });

  it('keeps every angle, about any axis and by any amount', () => {
    fc.assert(
      fc.property(way, way, way, way, around, (a, b, across, axis, by) => {
        const turn = (v: Vec3) => turned(v, axis, by);
        expect(cornerAngle(turn(a), O, turn(b))).toBeCloseTo(cornerAngle(a, O, b), 7);
        fc.pre(norm(cross(a, across)) > 0.1 && norm(cross(b, across)) > 0.1);
        const here = hipAngle({ up: a, across, thigh: b });
        const there = hipAngle({ up: turn(a), across: turn(across), thigh: turn(b) });
        expect(Math.sin(there - here)).toBeCloseTo(0, 6);
        expect(Math.cos(there - here)).toBeCloseTo(1, 6);
      }),
      { seed: 10, numRuns: cases(38, 150) },
    );
  });
});

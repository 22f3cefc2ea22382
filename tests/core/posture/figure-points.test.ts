import { describe, expect, it } from 'vitest';
import { estimateBody } from '../../../core/body/estimate-body.ts';
import { norm, subtract, type Vec3 } from '../../../core/frame/vec3.ts';
import { figureAt } from '../../../core/posture/figure.ts';
import { figureAngles, figurePoints } from '../../../core/posture/figure-points.ts';
import { FIGURE_POINTS, STANCE_ANGLES } from '../../../core/posture/stance.ts';
import { stanceProblem } from '../../../core/posture/stance-problem.ts';
import { exampleSeat } from '../example/example-fit.ts';

const body = estimateBody({ stature: 1.8, mass: 80, sex: 'male' });
const problem = stanceProblem(body, exampleSeat(), { phase: 'ready' });
const at = (...unknowns: number[]) => {
  const q = Float64Array.from(unknowns);
  const figure = figureAt(q, problem);
  const points = figurePoints(problem, figure);
  return { figure, points, angles: figureAngles(problem, { figure, points, q }) };
};
const { points, angles } = at(0.15, 0.05, 0.15, 0.2, 0.05);
const apart = (a: Vec3, b: Vec3) => norm(subtract(a, b));
const degrees = (r: number) => (r * 180) / Math.PI;

describe('figurePoints', () => {
  it('has every point that the figure is drawn through, each once and finite', () => {
    expect(Object.keys(points).toSorted()).toEqual([...FIGURE_POINTS].toSorted());
    for (const p of Object.values(points)) expect(Number.isFinite(p.x + p.y + p.z)).toBe(true);
  });

  it('has neck and head on the line from mid-shoulder to the top of the head, in that order', () => {
    const whole = apart(points.midShoulder, points.headTop);
    expect(apart(points.midShoulder, points.neck)).toBeCloseTo(0.28 * whole, 9);
    expect(apart(points.midShoulder, points.headCentre)).toBeCloseTo(0.64 * whole, 9);
    expect(apart(points.neck, points.headTop)).toBeCloseTo(0.72 * whole, 9);
  });

  it('has both arms from their shoulders over the elbows to the hands', () => {
    for (const arm of ['lower', 'top'] as const) {
      const upper = apart(points[`${arm}Shoulder`], points[`${arm}Elbow`]);
      expect(upper).toBeCloseTo(body.lengths.upperArm.value, 2);
    }
    expect(apart(points.topHand, points.lowerHand)).toBeCloseTo(0.7, 9);
  });
});

describe('figureAngles', () => {
  it('has every angle that a coach reads', () => {
    expect(Object.keys(angles).toSorted()).toEqual([...STANCE_ANGLES].toSorted());
  });

  it('gives the unknowns back as they are', () => {
    const { thighPitch, thighRoll, pelvisYaw, trunkPitch, trunkRoll } = angles;
    expect([thighPitch, thighRoll, pelvisYaw, trunkPitch, trunkRoll]).toEqual([0.15, 0.05, 0.15, 0.2, 0.05]);
  });

  it('by the law of cosines: front knee and kneeling knee from three distances each', () => {
    for (const [angle, hip, knee, ankle] of [
      ['frontKnee', 'frontHip', 'frontKnee', 'frontAnkle'],
      ['kneelingKnee', 'kneelingHip', 'kneelingKnee', 'kneelingAnkle'],
    ] as const) {
      const [a, b, c] = [
        apart(points[hip], points[knee]),
        apart(points[knee], points[ankle]),
        apart(points[hip], points[ankle]),
      ];
      expect(angles[angle], angle).toBeCloseTo(Math.acos((a * a + b * b - c * c) / (2 * a * b)), 9);
    }
  });

  it('a kneeling hip with trunk and thigh upright is straight, and bends by the trunk’s lean', () => {
    expect(degrees(at(0, 0, 0, 0, 0).angles.kneelingHip)).toBeCloseTo(180, 6);
    expect(degrees(at(0, 0, 0, 0.35, 0).angles.kneelingHip)).toBeCloseTo(180 - degrees(0.35), 6);
    expect(degrees(at(0.2, 0, 0, 0, 0).angles.kneelingHip)).toBeCloseTo(180 + degrees(0.2), 6);
  });
});

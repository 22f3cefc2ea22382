import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { estimateBody } from '../../../core/body/estimate-body.ts';
import { plus, scale, type Vec3 } from '../../../core/frame/vec3.ts';
import { figureAt } from '../../../core/posture/figure.ts';
import {
  blankCentreSlope,
  centreOf,
  centreSlopeTo,
  massesBetweenJoints,
  placedMasses,
} from '../../../core/posture/figure-masses.ts';
import { figurePoints } from '../../../core/posture/figure-points.ts';
import { figureSlopes } from '../../../core/posture/figure-slopes.ts';
import { stanceProblem } from '../../../core/posture/stance-problem.ts';
import { cases } from '../../cases.ts';
import { exampleSeat } from '../example/example-fit.ts';

const body = estimateBody({ stature: 1.8, mass: 80, sex: 'male' });
const seat = exampleSeat();
const masses = massesBetweenJoints(body, seat);
const unknowns = fc.tuple(
  ...[0.5, 0.3, 0.6, 0.8, 0.3].map((r) => fc.double({ min: -r, max: r, noNaN: true })),
);
const PHASES = ['ready', 'catch', 'exit'] as const;

describe('massesBetweenJoints', () => {
  it('adds up to body and paddle', () => {
    const sum = masses.reduce((kg, mass) => kg + mass.massKg, 0);
    expect(sum).toBeCloseTo(80 + seat.paddle.massKg, 9);
  });

  it('has every paired segment twice and the others once', () => {
    const kinds = masses.map(({ segment }) => segment);
    expect(new Set(kinds).size).toBe(kinds.length);
    expect(kinds).toHaveLength(2 + 6 + 2 + 2 + 2 + 1);
  });

  it('puts forearm and fist on one line from elbow to grip, the fist’s centre at the grip', () => {
    const [forearm, hand] = ['lowerForearm', 'lowerHand'].map((s) => masses.find((m) => m.segment === s)!);
    const { forearm: length, hand: toGrip } = body.lengths;
    const wrist = length.value / (length.value + toGrip.value);
    expect(forearm!.share).toBeCloseTo(body.segments.forearm.centreFraction * wrist, 12);
    expect(hand!.share).toBeCloseTo(1, 12);
  });

  it('has the paddle’s centre 58 % down from the grip, past the lower hand', () => {
    const paddle = masses.find((m) => m.segment === 'paddle')!;
    expect(paddle.share * seat.paddle.lowerHandM).toBeCloseTo(0.58 * seat.paddle.lengthM, 12);
  });
});

describe('the centre of mass', () => {
  it('is the weighed mean of the segments’ own centres, however the figure is turned, in every phase', () => {
    fc.assert(
      fc.property(unknowns, fc.constantFrom(...PHASES), (q, phase) => {
        const problem = stanceProblem(body, seat, { phase });
        const figure = figureAt(Float64Array.from(q), problem);
        const placed = placedMasses(masses, figurePoints(problem, figure));
        let sum: Vec3 = { x: 0, y: 0, z: 0 };
        let kg = 0;
        for (const { massKg, centre } of placed) {
          sum = plus(sum, massKg, centre);
          kg += massKg;
        }
        const mean = scale(sum, 1 / kg);
        const centre = centreOf(figure, problem.weighing);
        for (const axis of ['x', 'y', 'z'] as const) expect(centre[axis]).toBeCloseTo(mean[axis], 10);
      }),
      { seed: 25, numRuns: cases(27, 80) },
    );
  });

  it('moves with every unknown as differences say', () => {
    fc.assert(
      fc.property(unknowns, fc.constantFrom(...PHASES), (q, phase) => {
        const problem = stanceProblem(body, seat, { phase });
        const { weighing } = problem;
        const at = (x: readonly number[]) => {
          const figure = figureAt(Float64Array.from(x), problem);
          return { figure, centre: centreOf(figure, weighing) };
        };
        const { figure } = at(q);
        const h = 1e-6;
        figureSlopes(figure, problem).forEach((slope, k) => {
          const exact = centreSlopeTo(blankCentreSlope(), { figure, slope }, weighing);
          const [more, less] = [h, -h].map((by) => at(q.map((v, i) => (i === k ? v + by : v))).centre);
          for (const axis of ['x', 'y', 'z'] as const) {
            expect(exact[axis]).toBeCloseTo((more![axis] - less![axis]) / (2 * h), 6);
          }
        });
      }),
      { seed: 26, numRuns: cases(20, 60) },
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { estimateBody } from '../../../core/body/estimate-body.ts';
import { norm, scale, subtract, type Vec3 } from '../../../core/frame/vec3.ts';
import { figureAt, type SolverFigure } from '../../../core/posture/figure.ts';
import { figureSlopes } from '../../../core/posture/figure-slopes.ts';
import { STANCE_UNKNOWNS } from '../../../core/posture/stance.ts';
import { stanceProblem } from '../../../core/posture/stance-problem.ts';
import { cases } from '../../cases.ts';
import { exampleSeat } from '../example/example-fit.ts';

const body = estimateBody({ stature: 1.74, mass: 70, sex: 'unspecified' });
const problem = stanceProblem(body, exampleSeat(), { phase: 'ready' });
const { lengths, contacts } = problem;
const at = (...q: number[]) => figureAt(Float64Array.from(q), problem);
const apart = (a: Vec3, b: Vec3) => norm(subtract(a, b));
const unknowns = fc.tuple(
  ...[0.5, 0.3, 0.6, 0.8, 0.3].map((r) => fc.double({ min: -r, max: r, noNaN: true })),
);

describe('figureAt', () => {
  it('with nothing leaning stands every joint over the knee, by the lengths between them', () => {
    const figure = at(0, 0, 0, 0, 0);
    const { knee } = contacts;
    expect(figure.kneelingHip.x).toBeCloseTo(knee.x, 12);
    expect(figure.kneelingHip.z).toBeCloseTo(knee.z + lengths.thigh, 9);
    expect(figure.frontHip.y).toBeCloseTo(knee.y - lengths.hipSeparation, 12);
    expect(figure.midShoulder.z).toBeCloseTo(knee.z + lengths.thigh + lengths.trunk, 9);
    expect(figure.headTop.z).toBeCloseTo(figure.midShoulder.z + lengths.headNeck, 9);
  });

  it('keeps every segment its length, however it is turned', () => {
    fc.assert(
      fc.property(unknowns, (q) => {
        const figure = at(...q);
        expect(apart(figure.kneelingHip, contacts.knee)).toBeCloseTo(lengths.thigh, 9);
        expect(apart(figure.kneelingHip, figure.frontHip)).toBeCloseTo(lengths.hipSeparation, 9);
        expect(apart(figure.kneelingHip, figure.midHip)).toBeCloseTo(lengths.hipSeparation / 2, 9);
        expect(apart(figure.midHip, figure.midShoulder)).toBeCloseTo(lengths.trunk, 9);
        expect(apart(figure.midShoulder, figure.headTop)).toBeCloseTo(lengths.headNeck, 9);
      }),
      { seed: 23, numRuns: cases(34, 100) },
    );
  });

  it('turns the off hip forward with the pelvis', () => {
    expect(at(0, 0, 0.3, 0, 0).frontHip.x).toBeGreaterThan(at(0, 0, 0, 0, 0).frontHip.x);
  });

  it('leans the trunk toward the paddling side, whichever knee is knelt on', () => {
    const crossed = stanceProblem(body, exampleSeat({ kneels: 'right' }), { phase: 'ready' });
    const lean = (p: typeof problem) => figureAt(Float64Array.from([0, 0, 0, 0, 0.1]), p).trunk.up.y;
    expect(lean(problem)).toBeGreaterThan(0);
    expect(lean(crossed)).toBeCloseTo(-lean(problem), 12);
  });

  it('bends the front knee forward and up from the line of the leg', () => {
    const { leg, frontHip } = at(0.15, 0, 0.1, 0.2, 0);
    const way = subtract(contacts.frontAnkle, frontHip);
    const out = subtract(subtract(leg.middle, frontHip), scale(leg.unit, leg.along));
    expect(norm(way)).toBeCloseTo(leg.apart, 5);
    expect(out.x).toBeGreaterThan(0.1);
    expect(out.z).toBeGreaterThan(0);
  });
});

describe('figureSlopes', () => {
  const POINTS = ['kneelingHip', 'frontHip', 'midHip', 'midShoulder', 'frontKnee'] as const;
  const pointOf = (figure: SolverFigure, name: (typeof POINTS)[number]) =>
    name === 'frontKnee' ? figure.leg.middle : figure[name];

  it('are what differences say, for every unknown and joint', () => {
    fc.assert(
      fc.property(unknowns, (q) => {
        const slopes = figureSlopes(at(...q), problem);
        const h = 1e-6;
        STANCE_UNKNOWNS.forEach((unknown, k) => {
          const moved = (by: number) => at(...q.map((v, i) => (i === k ? v + by : v)));
          const [more, less] = [moved(h), moved(-h)];
          for (const name of POINTS) {
            for (const axis of ['x', 'y', 'z'] as const) {
              const difference = (pointOf(more, name)[axis] - pointOf(less, name)[axis]) / (2 * h);
              const slope = name === 'frontKnee' ? slopes[k]!.leg.middle : slopes[k]![name];
              expect(slope[axis], `${name}.${axis} by ${unknown}`).toBeCloseTo(difference, 5);
            }
          }
          expect(slopes[k]!.leg.apart).toBeCloseTo((more.leg.apart - less.leg.apart) / (2 * h), 5);
        });
      }),
      { seed: 24, numRuns: cases(20, 60) },
    );
  });
});

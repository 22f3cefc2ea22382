import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { describe, expect, it } from 'vitest';
import { estimateBody } from '../../core/body/estimate-body.ts';
import { NEUTRAL } from '../../core/stance/neutral-posture.ts';
import { stanceProblem } from '../../core/stance/objective.ts';
import { solveStance } from '../../core/stance/solve-stance.ts';
import { STANCE_UNKNOWNS } from '../../core/stance/stance.ts';
import { STANCE_TERMS } from '../../core/stance/stance-terms.ts';
import { exampleSeat } from '../core/example/example-fit.ts';
import { residualsAt } from '../core/stance/residuals-at.ts';

/**
 * The same residuals handed to an independent least-squares library (ml-levenberg-marquardt, from the npm registry): its
 * "data" are the term numbers with target 0, its own numerical differences stand for the derivatives.
 */
function byLibrary(problem: ReturnType<typeof stanceProblem>): readonly number[] {
  const x = STANCE_TERMS.map((_, i) => i);
  const fitted = levenbergMarquardt(
    { x, y: x.map(() => 0) },
    (q: number[]) => {
      const residuals = residualsAt(q, problem);
      return (term: number) => residuals[term]!;
    },
    {
      initialValues: STANCE_UNKNOWNS.map((name) => NEUTRAL[name].at + 0.05),
      gradientDifference: 1e-6,
      centralDifference: true,
      damping: 0.01,
      maxIterations: 400,
      errorTolerance: 0,
    },
  );
  return fitted.parameterValues;
}

describe('an independent least-squares library on the same objective reaches the same stance', () => {
  const cases = [
    { stature: 1.8, mass: 80, sex: 'male' as const, forwardM: 0.4 },
    { stature: 1.62, mass: 58, sex: 'female' as const, forwardM: 0.33 },
    { stature: 1.95, mass: 95, sex: 'male' as const, forwardM: 0.46 },
    { stature: 1.45, mass: 40, sex: 'unspecified' as const, forwardM: 0.25 },
  ];
  it.each(cases)(
    'stature $stature m, front heel $forwardM m forward, within 0.01°',
    ({ forwardM, ...who }) => {
      const body = estimateBody(who);
      const seat = exampleSeat();
      const placed = {
        ...seat,
        rearRest: { ...seat.rearRest, aftM: 0.175 + 0.247 * who.stature },
        frontFoot: { ...seat.frontFoot, forwardM },
      };
      const ours = solveStance({ body, seat: placed, frame: { stationX: 0, floorZ: 0, side: 'left' } });
      const theirs = byLibrary(stanceProblem(body, placed, 'ready'));
      STANCE_UNKNOWNS.forEach((name, i) => {
        expect(Math.abs(((ours.angles[name] - theirs[i]!) * 180) / Math.PI), name).toBeLessThan(0.01);
      });
    },
  );
});

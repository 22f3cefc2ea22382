import { describe, expect, it } from 'vitest';
import { estimateBody } from '../../../core/body/estimate-body.ts';
import { norm } from '../../../core/frame/vec3.ts';
import { NEUTRAL } from '../../../core/posture/neutral-posture.ts';
import { stanceObjective } from '../../../core/posture/objective.ts';
import { STANCE_UNKNOWNS } from '../../../core/posture/stance.ts';
import { soleOf, stanceProblem } from '../../../core/posture/stance-problem.ts';
import { STANCE_TERMS } from '../../../core/posture/stance-terms.ts';
import { exampleSeat } from '../example/example-fit.ts';
import { residualsAt } from './residuals-at.ts';

const body = estimateBody({ stature: 1.8, mass: 80, sex: 'male' });
const problem = stanceProblem(body, exampleSeat(), { phase: 'ready' });
const neutral = STANCE_UNKNOWNS.map((name) => NEUTRAL[name].at);
const residual = (q: readonly number[], term: (typeof STANCE_TERMS)[number]) =>
  residualsAt(q, problem)[STANCE_TERMS.indexOf(term)]!;

describe('stanceProblem', () => {
  it('has unit vectors for shank and sole, the sole along the foot', () => {
    expect(norm(problem.shankWay)).toBeCloseTo(1, 9);
    expect(norm(problem.soleWay)).toBeCloseTo(1, 9);
    expect(problem.soleWay.x).toBeCloseTo(1, 9);
    expect(soleOf(problem.contacts)).toEqual(problem.soleWay);
  });

  it('weighs body and paddle', () => {
    expect(problem.weighing.weights.massKg).toBeCloseTo(80.75, 9);
  });
});

describe('stanceObjective', () => {
  it('costs nothing for unknowns at their neutral values', () => {
    for (const name of STANCE_UNKNOWNS) expect(residual(neutral, name)).toBeCloseTo(0, 12);
  });

  it('counts a trunk one tolerance forward as one', () => {
    const leaning = neutral.map((v, i) => (i === 3 ? v + NEUTRAL.trunkPitch.tolerance : v));
    expect(residual(leaning, 'trunkPitch')).toBeCloseTo(1, 12);
  });

  it('counts limits only past them', () => {
    expect(residual(neutral, 'trunkRollLimit')).toBe(0);
    expect(residual([0, 0, 0, 0, 0.9], 'trunkRollLimit')).toBeGreaterThan(1);
    expect(residual([0, 0, 0, 0, -0.9], 'trunkRollLimit')).toBeLessThan(-1);
  });

  it('brings the weight toward the paddling side when the trunk leans there', () => {
    const lean = (roll: number) => residual([0.1, 0, 0, 0.2, roll], 'balanceAcross');
    expect(lean(0.1)).toBeGreaterThan(lean(0));
  });

  it('has as many terms as there are names', () => {
    expect(stanceObjective(problem).terms).toBe(STANCE_TERMS.length);
  });
});

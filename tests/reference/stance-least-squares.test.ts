import fc from 'fast-check';
import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { describe, expect, it } from 'vitest';
import { estimateBody } from '../../core/body/estimate-body.ts';
import type { Seat } from '../../core/document/seat-schema.ts';
import { NEUTRAL } from '../../core/posture/neutral-posture.ts';
import { solveStance } from '../../core/posture/solve-stance.ts';
import { type Phase, STANCE_UNKNOWNS } from '../../core/posture/stance.ts';
import { stanceProblem } from '../../core/posture/stance-problem.ts';
import { STANCE_TERMS } from '../../core/posture/stance-terms.ts';
import { cases } from '../cases.ts';
import { exampleSeat } from '../core/example/example-fit.ts';
import { frame, plausible } from '../core/posture/plausible.ts';
import { residualsAt } from '../core/posture/residuals-at.ts';

/** Two searches for one least cost may end this far apart in any angle. */
const SAME_DEG = 0.01;

type Held = readonly (number | null)[];
const NOTHING_HELD: Held = STANCE_UNKNOWNS.map(() => null);

/**
 * The same residuals handed to an independent least-squares library (ml-levenberg-marquardt, from the npm registry): its
 * "data" are the term numbers with target 0, its own numerical differences stand for the derivatives. Held unknowns are
 * left out of what it may move.
 */
function byLibrary(problem: ReturnType<typeof stanceProblem>, held: Held): number[] {
  const x = STANCE_TERMS.map((_, i) => i);
  const free = held.flatMap((at, i) => (at === null ? [i] : []));
  const whole = (q: readonly number[]) => held.map((at, i) => at ?? q[free.indexOf(i)]!);
  const fitted = levenbergMarquardt(
    { x, y: x.map(() => 0) },
    (q: number[]) => {
      const residuals = residualsAt(whole(q), problem);
      return (term: number) => residuals[term]!;
    },
    {
      initialValues: free.map((i) => NEUTRAL[STANCE_UNKNOWNS[i]!].at + 0.05),
      gradientDifference: 1e-6,
      centralDifference: true,
      damping: 0.01,
      maxIterations: 400,
      errorTolerance: 0,
    },
  );
  return whole(fitted.parameterValues);
}

const costOf = (q: readonly number[], problem: ReturnType<typeof stanceProblem>) =>
  residualsAt(q, problem).reduce((sum, r) => sum + r * r, 0);

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
      const theirs = byLibrary(stanceProblem(body, placed, { phase: 'ready' }), NOTHING_HELD);
      STANCE_UNKNOWNS.forEach((name, i) => {
        expect(Math.abs(((ours.angles[name] - theirs[i]!) * 180) / Math.PI), name).toBeLessThan(SAME_DEG);
      });
    },
  );
});

const CASES = cases(6, 60);

describe('over the whole plausible range of bodies and fittings', () => {
  /** Our stance of a case, the library's, and the problem both solved. */
  function both({ body, seat }: { body: ReturnType<typeof estimateBody>; seat: Seat }, phase: Phase) {
    const stance = solveStance({ body, seat, frame, phase });
    const ours = STANCE_UNKNOWNS.map((name) => stance.angles[name]);
    const pinned = (name: (typeof STANCE_UNKNOWNS)[number]) =>
      seat.pins[`${name}Deg`] !== undefined || (phase !== 'ready' && name === 'trunkPitch');
    const held = STANCE_UNKNOWNS.map((name, i) => (pinned(name) ? ours[i]! : null));
    const problem = stanceProblem(body, seat, { phase });
    return { ours, theirs: byLibrary(problem, held), problem };
  }

  /** The library stops where it makes no headway; where it stopped short of our cost it has not found the least. */
  function expectNoneBetter({ ours, theirs, problem }: ReturnType<typeof both>) {
    const [least, library] = [costOf(ours, problem), costOf(theirs, problem)];
    expect(least).toBeLessThanOrEqual(library * (1 + 1e-9) + 1e-12);
    const apart = ours.map((angle, i) => Math.abs(((angle - theirs[i]!) * 180) / Math.PI));
    return library < least * (1 + 1e-9) + 1e-9 ? Math.max(...apart) : 0;
  }

  it('the library never finds a lower cost, and the same angles where it finds as low a one', () => {
    let agreed = 0;
    fc.assert(
      fc.property(plausible, fc.constantFrom<Phase>('ready', 'catch', 'exit'), (at, phase) => {
        const apart = expectNoneBetter(both(at, phase));
        expect(apart).toBeLessThan(SAME_DEG);
        if (apart > 0) agreed++;
      }),
      { seed: 314, numRuns: CASES },
    );
    expect(agreed).toBeGreaterThan(0.75 * CASES);
  });

  it('nor with angles held as measured', () => {
    fc.assert(
      fc.property(
        plausible,
        fc.double({ min: -5, max: 25, noNaN: true }),
        fc.double({ min: -4, max: 10, noNaN: true }),
        ({ body, seat }, trunkPitchDeg, trunkRollDeg) => {
          const held = { ...seat, pins: { trunkPitchDeg, trunkRollDeg } };
          expect(expectNoneBetter(both({ body, seat: held }, 'ready'))).toBeLessThan(SAME_DEG);
        },
      ),
      { seed: 315, numRuns: CASES / 2 },
    );
  });
});

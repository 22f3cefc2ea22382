import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { estimateBody } from '../../../core/body/estimate-body.ts';
import { solveStance } from '../../../core/posture/solve-stance.ts';
import { stanceProblem } from '../../../core/posture/stance-problem.ts';
import { supportLoads } from '../../../core/support/support-loads.ts';
import { cases } from '../../cases.ts';
import { exampleSeat } from '../example/example-fit.ts';
import { degrees, frame, place, plausible, unknownsOf } from './plausible.ts';
import { equationsAt, residualsAt, slopesAt } from './residuals-at.ts';

const man = estimateBody({ stature: 1.8, mass: 80, sex: 'male' });

describe('the usual posture (feasibility prototype of the same form, few-degree agreement)', () => {
  const seat = place(exampleSeat(), { foot: { forwardM: 0.4, outM: -0.06 } });
  const stance = solveStance({ body: man, seat, frame });
  const support = supportLoads(stance, seat);

  it.each([
    ['frontKnee', 118, 5],
    ['kneelingKnee', 90, 5],
    ['trunkPitch', 12, 3],
    ['trunkRoll', 3, 1.5],
  ] as const)('%s is %i° within %f°', (angle, expected, within) => {
    expect(Math.abs(degrees(stance.angles[angle]) - expected)).toBeLessThan(within);
  });

  it('carries about 64 % on the knee, 6 % on the rear foot, 30 % on the front foot', () => {
    expect(support.shares.knee).toBeCloseTo(0.64, 1);
    expect(support.shares.rearFoot).toBeCloseTo(0.06, 1);
    expect(support.shares.frontFoot).toBeCloseTo(0.3, 1);
    expect(support.inside).toBe(true);
  });

  it('converges in few iterations with every part reached', () => {
    expect(stance.converged).toBe(true);
    expect(stance.iterations).toBeLessThan(12);
    expect(stance.shortfalls).toEqual([]);
  });
});

describe('the objective', () => {
  it('has exact derivatives: against central differences all over the plausible range', () => {
    const unknown = fc.tuple(
      ...[0.3, 0.15, 0.5, 0.6, 0.15].map((r) => fc.double({ min: -r, max: r, noNaN: true })),
    );
    fc.assert(
      fc.property(
        plausible,
        unknown,
        fc.constantFrom('ready', 'catch', 'exit'),
        ({ body, seat }, q, phase) => {
          const problem = stanceProblem(body, seat, { phase });
          const exact = slopesAt(q, problem);
          const h = 1e-6;
          exact.forEach((slopes, k) => {
            const at = (by: number) =>
              residualsAt(
                q.map((v, i) => (i === k ? v + by : v)),
                problem,
              );
            const more = at(h);
            const less = at(-h);
            slopes.forEach((slope, i) => {
              const kink = (more[i] === 0) !== (less[i] === 0);
              const difference = (more[i]! - less[i]!) / (2 * h);
              if (!kink)
                expect(Math.abs(slope - difference)).toBeLessThan(1e-6 * Math.max(1, Math.abs(difference)));
            });
          });
        },
      ),
      { seed: 12, numRuns: cases(15, 60) },
    );
  });
});

describe('the equations of a step', () => {
  it('are those of the slopes term by term, though terms of one measure are added up first', () => {
    const unknown = fc.array(fc.double({ min: -0.6, max: 0.6, noNaN: true }), { minLength: 5, maxLength: 5 });
    fc.assert(
      fc.property(plausible, unknown, ({ body, seat }, q) => {
        const problem = stanceProblem(body, seat, { phase: 'ready' });
        const [residuals, slopes] = [residualsAt(q, problem), slopesAt(q, problem)];
        const { normal, gradient } = equationsAt(q, problem);
        const product = (a: readonly number[], b: readonly number[]) =>
          a.reduce((sum, v, t) => sum + v * b[t]!, 0);
        slopes.forEach((row, i) => {
          expect(gradient[i]).toBeCloseTo(product(row, residuals), 6);
          slopes.slice(0, i + 1).forEach((other, j) => {
            expect(normal[i * 5 + j]).toBeCloseTo(product(row, other), 6);
          });
        });
      }),
      { seed: 13, numRuns: cases(10, 200) },
    );
  });
});

describe('pins and limits', () => {
  it('holds a pinned angle exactly and lets the others answer', () => {
    const pinned = solveStance({ body: man, seat: exampleSeat({ pins: { trunkPitchDeg: 25 } }), frame });
    expect(degrees(pinned.angles.trunkPitch)).toBeCloseTo(25, 10);
    expect(pinned.angles.thighPitch).not.toBeCloseTo(
      solveStance({ body: man, seat: exampleSeat(), frame }).angles.thighPitch,
      3,
    );
  });

  it('with all five pinned there is nothing to solve', () => {
    const pins = { thighPitchDeg: 5, thighRollDeg: 1, pelvisYawDeg: 3, trunkPitchDeg: 8, trunkRollDeg: 2 };
    const held = solveStance({ body: man, seat: exampleSeat({ pins }), frame });
    expect(
      unknownsOf(held)
        .map(degrees)
        .map((d) => Number(d.toFixed(9))),
    ).toEqual([5, 1, 3, 8, 2]);
  });

  it('says what forces a stance: shares add to one, the strongest first', () => {
    const { forcing } = solveStance({
      body: man,
      seat: place(exampleSeat(), { foot: { forwardM: 0.15 } }),
      frame,
    });
    expect(forcing.reduce((sum, f) => sum + f.share, 0)).toBeCloseTo(1, 9);
    expect(forcing[0]!.term).toBe('frontKnee');
    expect(forcing.map((f) => f.share)).toEqual(forcing.map((f) => f.share).toSorted((a, b) => b - a));
  });
});

describe('whatever is asked of it', () => {
  it('a pad two metres away does not reach, with the shortfall', () => {
    const far = solveStance({ body: man, seat: place(exampleSeat(), { pad: { aftM: 2 } }), frame });
    const shortfall = (part: string) => far.shortfalls.find((s) => s.part === part)?.shortfall ?? 0;
    expect(shortfall('rearRest')).toBeGreaterThan(0.5);
    expect(shortfall('frontFoot')).toBeGreaterThan(0.5);
  });

  it('is never NaN, for any finite fittings and any body', () => {
    const wild = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });
    fc.assert(
      fc.property(
        fc.record({ stature: wild(0.8, 2.6), aft: wild(-3, 3), out: wild(-1, 1), height: wild(0, 0.5) }),
        fc.record({
          aft: wild(-3, 4),
          out: wild(-1, 1),
          forward: wild(-3, 4),
          toe: wild(-90, 90),
          hand: wild(0.2, 2),
        }),
        (a, b) => {
          const seat = place(exampleSeat(), {
            pad: { aftM: a.aft, outM: a.out, heightM: a.height },
            rest: { aftM: b.aft, outM: b.out },
            foot: { forwardM: b.forward, toeOutDeg: b.toe },
          });
          const body = estimateBody({ stature: a.stature, mass: 70, sex: 'unspecified' });
          const stance = solveStance({
            body,
            seat: { ...seat, paddle: { ...seat.paddle, lowerHandM: b.hand } },
            frame,
          });
          for (const p of Object.values(stance.points)) expect(Number.isFinite(p.x + p.y + p.z)).toBe(true);
          for (const angle of Object.values(stance.angles)) expect(Number.isFinite(angle)).toBe(true);
          const { margin, padPressurePa } = supportLoads(stance, seat);
          expect(Number.isFinite(margin + padPressurePa)).toBe(true);
        },
      ),
      { seed: 99, numRuns: cases(38, 150) },
    );
  });

  it('nor in any phase, with any angles held, kneeling on either knee, a kilometre away', () => {
    const wild = (reach: number) => fc.double({ min: -reach, max: reach, noNaN: true });
    fc.assert(
      fc.property(
        fc.record({ pad: wild(1000), out: wild(1000), rest: wild(1000), foot: wild(1000), wedge: wild(60) }),
        fc.record(
          { trunkPitchDeg: wild(90), thighRollDeg: wild(80), pelvisYawDeg: wild(90) },
          { requiredKeys: [] },
        ),
        fc.constantFrom('left' as const, 'right' as const),
        fc.constantFrom('ready' as const, 'catch' as const, 'exit' as const),
        (at, pins, kneels, phase) => {
          const far = place(exampleSeat({ pins, kneels }), {
            pad: { aftM: at.pad, outM: at.out },
            rest: { aftM: at.rest },
            foot: { forwardM: at.foot, wedgeDeg: at.wedge },
          });
          const stance = solveStance({ body: man, seat: far, frame, phase });
          const numbers = [
            ...Object.values(stance.points).flatMap(({ x, y, z }) => [x, y, z]),
            ...Object.values(stance.angles),
            ...stance.shortfalls.map(({ shortfall }) => shortfall),
            ...stance.forcing.flatMap(({ residual, share }) => [residual, share]),
            stance.centreOfMass.x + stance.centreOfMass.y + stance.centreOfMass.z,
          ];
          expect(numbers.every(Number.isFinite)).toBe(true);
        },
      ),
      { seed: 100, numRuns: cases(38, 150) },
    );
  });

  it('never flips a limb: a millimetre of pad moves no joint by more than three centimetres', () => {
    fc.assert(
      fc.property(plausible, ({ body, seat }) => {
        const here = solveStance({ body, seat, frame });
        const near = solveStance({
          body,
          seat: place(seat, { pad: { aftM: seat.kneePad.aftM + 0.001 } }),
          frame,
        });
        for (const [name, p] of Object.entries(here.points)) {
          const n = near.points[name as keyof typeof near.points];
          expect(Math.hypot(n.x - p.x, n.y - p.y, n.z - p.z), name).toBeLessThan(0.03);
        }
      }),
      { seed: 31, numRuns: cases(20, 80) },
    );
  });
});

describe('a personal limit', () => {
  const limited = (joint: 'trunkForward' | 'frontKneeFlexion' | 'kneelingHipExtension', maxDeg: number) => {
    const seat = exampleSeat();
    const athlete = { ...seat.athlete!, limits: [{ joint, maxDeg, reason: 'sore' }] };
    return { ...seat, athlete };
  };
  const at = (seat = exampleSeat()) => solveStance({ body: man, seat, frame });

  it('past where the joint would rest changes nothing', () => {
    expect(at(limited('trunkForward', 40)).angles).toEqual(at().angles);
  });

  it.each([
    ['trunkForward', 5, 'trunkPitch', 5],
    ['kneelingHipExtension', -20, 'kneelingHip', 160],
  ] as const)('%s of %i° brings the joint back within it', (joint, maxDeg, angle, limit) => {
    const [free, held] = [at(), at(limited(joint, maxDeg))];
    const over = (stance: typeof free) => degrees(stance.angles[angle]) - limit;
    expect(over(free)).toBeGreaterThan(5);
    expect(over(held)).toBeLessThan(0);
    expect(over(held)).toBeGreaterThan(-1);
  });

  it('on the trunk binds catch and exit too, unless the coach has set them', () => {
    const pitch = (phase: 'catch' | 'exit', seat: ReturnType<typeof exampleSeat>) =>
      degrees(solveStance({ body: man, seat, frame, phase }).angles.trunkPitch);
    expect(pitch('catch', limited('trunkForward', 20))).toBeCloseTo(20, 9);
    expect(pitch('exit', limited('trunkForward', 20))).toBeCloseTo(12, 9);
    expect(pitch('exit', limited('trunkForward', 5))).toBeCloseTo(5, 9);
    const set = { ...limited('trunkForward', 20), stroke: { catchPitchDeg: 45 } };
    expect(pitch('catch', set)).toBeCloseTo(45, 9);
  });

  it('says so among what forces the stance', () => {
    const { forcing } = at(limited('kneelingHipExtension', -20));
    expect(forcing.filter(({ residual }) => residual !== 0).map((f) => f.term)).toContain('kneelingHipLimit');
  });
});

describe('catch and exit', () => {
  const seat = exampleSeat();
  const at = (phase: 'ready' | 'catch' | 'exit', own = seat) =>
    solveStance({ body: man, seat: own, frame, phase });

  it('hold the trunk where the stroke has it, the athlete’s own if set', () => {
    expect(degrees(at('catch').angles.trunkPitch)).toBeCloseTo(38, 9);
    const own = { ...seat, stroke: { catchPitchDeg: 45, exitPitchDeg: 2 } };
    expect(degrees(at('catch', own).angles.trunkPitch)).toBeCloseTo(45, 9);
    expect(degrees(at('exit', own).angles.trunkPitch)).toBeCloseTo(2, 9);
    expect(at('ready', own).angles).toEqual(at('ready').angles);
  });

  it('keep a pinned thigh in every phase, for that is how this athlete kneels', () => {
    const pinned = { ...seat, pins: { thighPitchDeg: 15, trunkPitchDeg: 5 } };
    for (const phase of ['ready', 'catch', 'exit'] as const) {
      expect(degrees(at(phase, pinned).angles.thighPitch)).toBeCloseTo(15, 9);
    }
    expect(degrees(at('ready', pinned).angles.trunkPitch)).toBeCloseTo(5, 9);
    expect(degrees(at('catch', pinned).angles.trunkPitch)).toBeCloseTo(38, 9);
  });

  it('leave what the fittings hold where it is', () => {
    const [ready, reaching] = [at('ready').points, at('catch').points];
    for (const point of ['kneelingKnee', 'kneelingAnkle', 'rearBall', 'frontHeel', 'frontAnkle'] as const) {
      expect(reaching[point]).toEqual(ready[point]);
    }
  });
});

describe('kneeling on the other knee than the paddling side', () => {
  it('mirrors the fittings and not the lean: a trunk held toward the paddling side leans there', () => {
    const seat = exampleSeat({ side: 'left', kneels: 'right', pins: { trunkRollDeg: 5 } });
    const { points } = solveStance({ body: man, seat, frame: { ...frame, side: 'right' } });
    expect(points.kneelingKnee.y).toBeLessThan(0);
    expect(points.lowerHand.y).toBeGreaterThan(0);
    expect(points.midShoulder.y).toBeGreaterThan(points.midHip.y);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BODY_LENGTHS, type BodyEstimate } from '../../../core/body/body.ts';
import { estimateBody } from '../../../core/body/estimate-body.ts';
import type { Seat } from '../../../core/fit/seat-schema.ts';
import { stanceProblem } from '../../../core/stance/objective.ts';
import { solveStance } from '../../../core/stance/solve-stance.ts';
import { STANCE_ANGLES, STANCE_UNKNOWNS, type Stance } from '../../../core/stance/stance.ts';
import { supportLoads } from '../../../core/support/support-loads.ts';
import { exampleSeat } from '../example/example-fit.ts';
import { residualsAt, slopesAt } from './residuals-at.ts';

const degrees = (r: number) => (r * 180) / Math.PI;
const frame = { stationX: 0, floorZ: 0.03, side: 'left' as const };
const man = estimateBody({ stature: 1.8, mass: 80, sex: 'male' });

function place(seat: Seat, more: { pad?: object; rest?: object; foot?: object }): Seat {
  return {
    ...seat,
    kneePad: { ...seat.kneePad, ...more.pad },
    rearRest: { ...seat.rearRest, ...more.rest },
    frontFoot: { ...seat.frontFoot, ...more.foot },
  };
}

const unknownsOf = (s: Stance) => STANCE_UNKNOWNS.map((name) => s.angles[name]);

/** Bodies and fittings over the whole plausible range and somewhat past it. */
const plausible = fc
  .record({
    stature: fc.double({ min: 1.3, max: 2.1, noNaN: true }),
    sex: fc.constantFrom('male' as const, 'female' as const, 'unspecified' as const),
    aft: fc.double({ min: 0.1, max: 0.26, noNaN: true }),
    out: fc.double({ min: 0, max: 0.1, noNaN: true }),
    height: fc.double({ min: 0.05, max: 0.2, noNaN: true }),
    restBehind: fc.double({ min: 0.2, max: 0.3, noNaN: true }),
    restOut: fc.double({ min: -0.2, max: 0, noNaN: true }),
    footAhead: fc.double({ min: 0.22, max: 0.36, noNaN: true }),
    footOut: fc.double({ min: -0.14, max: 0.02, noNaN: true }),
    toeOut: fc.double({ min: -10, max: 25, noNaN: true }),
  })
  .map((p) => ({
    body: estimateBody({ stature: p.stature, mass: 22 * p.stature ** 2, sex: p.sex }),
    seat: place(exampleSeat(), {
      pad: { aftM: p.aft, outM: p.out, heightM: p.height },
      rest: { aftM: p.aft + p.restBehind * p.stature, outM: p.restOut },
      foot: { forwardM: p.footAhead * p.stature - p.aft, outM: p.footOut, toeOutDeg: p.toeOut },
    }),
  }));

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
          const problem = stanceProblem(body, seat, phase);
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
      { seed: 12, numRuns: 60 },
    );
  });
});

describe('no path dependence', () => {
  const PHASES = ['ready', 'catch', 'exit'] as const;
  const PATH_DEG = 0.01;

  function expectSame(a: readonly number[], b: readonly number[], what: string) {
    a.forEach((angle, i) => {
      expect(Math.abs(degrees(angle - b[i]!)), `${STANCE_UNKNOWNS[i]} ${what}`).toBeLessThan(PATH_DEG);
    });
  }

  it('cold start, warm start and any other start agree within 0.01° in every phase, and the search ends', () => {
    const start = fc.tuple(
      ...[0.4, 0.3, 0.5, 0.7, 0.3].map((r) => fc.double({ min: -r, max: r, noNaN: true })),
    );
    fc.assert(
      fc.property(plausible, start, ({ body, seat }, from) => {
        for (const phase of PHASES) {
          const cold = solveStance({ body, seat, frame, phase });
          const other = solveStance({ body, seat, frame, phase, start: from });
          const warm = solveStance({ body, seat, frame, phase, start: unknownsOf(cold) });
          expectSame(unknownsOf(cold), unknownsOf(other), `${phase}, other start`);
          expectSame(unknownsOf(cold), unknownsOf(warm), `${phase}, warm start`);
          expect(cold.converged && other.converged).toBe(true);
          expect(cold.iterations).toBeLessThan(60);
        }
      }),
      { seed: 2026, numRuns: 1500 },
    );
  });

  it('dragging any fitting out and back, each step started from the last, comes home within 0.01°', () => {
    const drag = fc.constantFrom(
      { pad: 'aftM', far: 0.25 },
      { pad: 'heightM', far: 0.12 },
      { pad: 'outM', far: -0.15 },
      { rest: 'aftM', far: 0.3 },
      { rest: 'outM', far: 0.2 },
      { foot: 'forwardM', far: 0.35 },
      { foot: 'forwardM', far: -0.3 },
      { foot: 'toeOutDeg', far: 40 },
    );
    fc.assert(
      fc.property(plausible, drag, fc.constantFrom(...PHASES), ({ body, seat }, { far, ...where }, phase) => {
        const [[part, field]] = Object.entries(where) as [['pad' | 'rest' | 'foot', string]];
        const fitting = { pad: seat.kneePad, rest: seat.rearRest, foot: seat.frontFoot }[part];
        const from = (fitting as unknown as Record<string, number>)[field]!;
        const home = unknownsOf(solveStance({ body, seat, frame, phase }));
        let q = home;
        for (let i = 0; i <= 40; i++) {
          const to = from + far * Math.sin((Math.PI * i) / 40);
          q = unknownsOf(
            solveStance({ body, seat: place(seat, { [part]: { [field]: to } }), frame, phase, start: q }),
          );
        }
        expectSame(home, q, `${phase}, after dragging ${part}.${field}`);
      }),
      { seed: 515, numRuns: 60 },
    );
  });
});

describe('laws', () => {
  it('the mirrored paddler has the same angles, and points with y negated', () => {
    fc.assert(
      fc.property(plausible, ({ body, seat }) => {
        const left = solveStance({ body, seat, frame });
        const right = solveStance({
          body,
          seat: { ...seat, side: 'right' },
          frame: { ...frame, side: 'right' },
        });
        for (const angle of STANCE_ANGLES) expect(right.angles[angle]).toBe(left.angles[angle]);
        for (const [name, p] of Object.entries(left.points)) {
          const m = right.points[name as keyof typeof right.points];
          expect([m.x, m.y, m.z]).toEqual([p.x, p.y === 0 ? m.y : -p.y, p.z]);
        }
      }),
      { seed: 8, numRuns: 30 },
    );
  });

  it('moving the seat’s datum moves every point and nothing else', () => {
    const seat = exampleSeat();
    const here = solveStance({ body: man, seat, frame });
    const there = solveStance({ body: man, seat, frame: { ...frame, stationX: 1.4 } });
    expect(there.angles).toEqual(here.angles);
    expect(there.points.headTop.x - here.points.headTop.x).toBeCloseTo(1.4, 12);
  });

  it('scaling every length keeps every angle, in every phase, to rounding', () => {
    // Nothing in the objective is a length of its own: its tolerances in metres grow with the stature.
    const factor = fc.double({ min: 0.5, max: 1.6, noNaN: true });
    fc.assert(
      fc.property(
        plausible,
        factor,
        fc.constantFrom('ready', 'catch', 'exit'),
        ({ body, seat }, k, phase) => {
          const before = solveStance({ body, seat, frame, phase });
          const after = solveStance({ body: scaledBody(body, k), seat: scaledSeat(seat, k), frame, phase });
          for (const angle of STANCE_ANGLES) {
            expect(Math.abs(degrees(after.angles[angle] - before.angles[angle])), angle).toBeLessThan(1e-6);
          }
        },
      ),
      { seed: 70, numRuns: 60 },
    );
  });
});

/** A body with every length multiplied; its masses stay. */
function scaledBody(body: BodyEstimate, k: number): BodyEstimate {
  const lengths = Object.fromEntries(
    BODY_LENGTHS.map((name) => [name, { ...body.lengths[name], value: body.lengths[name].value * k }]),
  ) as BodyEstimate['lengths'];
  return { ...body, stature: body.stature * k, lengths };
}

/** A seat with every length that the stance depends on multiplied. */
function scaledSeat(seat: Seat, k: number): Seat {
  const { kneePad, rearRest, frontFoot, paddle } = seat;
  const moved = place(seat, {
    pad: {
      aftM: kneePad.aftM * k,
      outM: kneePad.outM * k,
      heightM: kneePad.heightM * k,
      foamGiveM: kneePad.foamGiveM * k,
    },
    rest: { aftM: rearRest.aftM * k, outM: rearRest.outM * k, heightM: rearRest.heightM * k },
    foot: {
      forwardM: frontFoot.forwardM * k,
      outM: frontFoot.outM * k,
      heightM: frontFoot.heightM * k,
    },
  });
  return { ...moved, paddle: { ...paddle, lengthM: paddle.lengthM * k, lowerHandM: paddle.lowerHandM * k } };
}

describe('facts a coach would swear to (common practice, no source)', () => {
  const seat = exampleSeat();
  const base = solveStance({ body: man, seat, frame });
  const move = (more: Parameters<typeof place>[1]) =>
    solveStance({ body: man, seat: place(seat, more), frame });

  it('rest further aft opens the kneeling knee', () => {
    expect(move({ rest: { aftM: 0.64 } }).angles.kneelingKnee).toBeGreaterThan(base.angles.kneelingKnee);
  });
  it('front foot further forward opens the front knee', () => {
    expect(move({ foot: { forwardM: 0.42 } }).angles.frontKnee).toBeGreaterThan(base.angles.frontKnee);
  });
  it('pad further aft opens the front knee and brings the weight aft', () => {
    const aft = move({ pad: { aftM: 0.2 } });
    expect(aft.angles.frontKnee).toBeGreaterThan(base.angles.frontKnee);
    expect(aft.centreOfMass.x).toBeLessThan(base.centreOfMass.x);
  });
  it('pad higher raises the centre of mass and opens the front knee', () => {
    const high = move({ pad: { heightM: 0.13 } });
    expect(high.centreOfMass.z).toBeGreaterThan(base.centreOfMass.z);
    expect(high.angles.frontKnee).toBeGreaterThan(base.angles.frontKnee);
  });
  it('pad further out asks for no less lean to the water', () => {
    expect(move({ pad: { outM: 0.055 } }).centreOfMass.y).toBeGreaterThan(base.centreOfMass.y);
  });
  it('at the catch the weight is further forward than at ready', () => {
    const reaching = solveStance({ body: man, seat, frame, phase: 'catch' });
    expect(reaching.centreOfMass.x).toBeGreaterThan(base.centreOfMass.x);
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
      { seed: 99, numRuns: 150 },
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
      { seed: 31, numRuns: 80 },
    );
  });
});

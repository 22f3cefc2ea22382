import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BODY_LENGTHS, type BodyEstimate } from '../../../core/body/body.ts';
import { estimateBody } from '../../../core/body/estimate-body.ts';
import type { Seat } from '../../../core/document/seat-schema.ts';
import { solveStance } from '../../../core/posture/solve-stance.ts';
import { STANCE_ANGLES, STANCE_UNKNOWNS } from '../../../core/posture/stance.ts';
import { cases } from '../../cases.ts';
import { exampleSeat } from '../example/example-fit.ts';
import { degrees, frame, place, plausible, unknownsOf } from './plausible.ts';

const man = estimateBody({ stature: 1.8, mass: 80, sex: 'male' });

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
      { seed: 2026, numRuns: cases(50, 1500) },
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
      { seed: 515, numRuns: cases(6, 60) },
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
      { seed: 8, numRuns: cases(10, 30) },
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
      { seed: 70, numRuns: cases(20, 60) },
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

describe('the same facts for every body and fitting of the plausible range', () => {
  const STEP = 0.02;
  type Case = { body: BodyEstimate; seat: Seat };
  const solve = ({ body, seat }: Case) => solveStance({ body, seat, frame });
  const moved = ({ body, seat }: Case, part: 'pad' | 'rest' | 'foot', field: string) => {
    const fitting = { pad: seat.kneePad, rest: seat.rearRest, foot: seat.frontFoot }[part];
    const to = (fitting as unknown as Record<string, number>)[field]! + STEP;
    return solve({ body, seat: place(seat, { [part]: { [field]: to } }) });
  };
  const holds = (seed: number, fact: (at: Case) => void) =>
    fc.assert(fc.property(plausible, fact), { seed, numRuns: cases(10, 150) });

  it('rest farther aft opens the kneeling knee, where it reaches', () => {
    holds(101, (at) => {
      const [here, there] = [solve(at), moved(at, 'rest', 'aftM')];
      fc.pre(!there.shortfalls.some(({ part }) => part === 'rearRest'));
      // With a rest so near that the foot stands steep, the ankle still rises on the way aft and closes the knee first.
      fc.pre(degrees(here.angles.rearAnkle) > 100);
      expect(there.angles.kneelingKnee).toBeGreaterThan(here.angles.kneelingKnee);
    });
  });

  it('front foot farther forward opens the front knee and brings the weight forward', () => {
    holds(102, (at) => {
      const [here, there] = [solve(at), moved(at, 'foot', 'forwardM')];
      expect(there.angles.frontKnee).toBeGreaterThan(here.angles.frontKnee);
      expect(there.centreOfMass.x).toBeGreaterThan(here.centreOfMass.x);
    });
  });

  it('pad farther aft opens the front knee and brings the weight aft, by less than the pad went', () => {
    holds(103, (at) => {
      const [here, there] = [solve(at), moved(at, 'pad', 'aftM')];
      expect(there.angles.frontKnee).toBeGreaterThan(here.angles.frontKnee);
      const aft = here.centreOfMass.x - there.centreOfMass.x;
      expect(aft).toBeGreaterThan(0);
      expect(aft).toBeLessThan(STEP);
    });
  });

  it('pad higher raises the weight, by less than the pad rose', () => {
    holds(104, (at) => {
      const up = moved(at, 'pad', 'heightM').centreOfMass.z - solve(at).centreOfMass.z;
      expect(up).toBeGreaterThan(0);
      expect(up).toBeLessThan(STEP);
    });
  });

  it('pad farther out brings the weight out, but by far less: the paddler leans against it', () => {
    holds(105, (at) => {
      const out = moved(at, 'pad', 'outM').centreOfMass.y - solve(at).centreOfMass.y;
      expect(out).toBeGreaterThan(0);
      expect(out).toBeLessThan(STEP / 2);
    });
  });

  it('at the catch the weight is farther forward than at ready', () => {
    holds(106, ({ body, seat }) => {
      const [ready, reaching] = (['ready', 'catch'] as const).map((phase) =>
        solveStance({ body, seat, frame, phase }),
      );
      expect(reaching!.centreOfMass.x).toBeGreaterThan(ready!.centreOfMass.x);
    });
  });

  it('weight alone changes no posture: body and paddle twice as heavy kneel alike, to rounding', () => {
    holds(107, ({ body, seat }) => {
      const segments = Object.fromEntries(
        Object.entries(body.segments).map(([name, s]) => [name, { ...s, massKg: 2 * s.massKg }]),
      ) as BodyEstimate['segments'];
      const paddle = { ...seat.paddle, massKg: 2 * seat.paddle.massKg };
      const [once, twice] = [
        solve({ body, seat }),
        solve({ body: { ...body, segments }, seat: { ...seat, paddle } }),
      ];
      expect(twice.totalMassKg).toBeCloseTo(2 * once.totalMassKg, 9);
      for (const angle of STANCE_ANGLES) {
        expect(Math.abs(degrees(twice.angles[angle] - once.angles[angle])), angle).toBeLessThan(1e-6);
      }
    });
  });
});

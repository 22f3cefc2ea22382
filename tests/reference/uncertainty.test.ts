import { describe, expect, it } from 'vitest';
import { BODY_LENGTHS, type BodyEstimate } from '../../core/body/body.ts';
import { bodyOfAthlete } from '../../core/body/body-of-athlete.ts';
import { boatState } from '../../core/fit/boat-state.ts';
import { computeBoat } from '../../core/fit/computed-fit.ts';
import { squareRootOf } from '../../core/fit/covariance-root.ts';
import { evaluateFit } from '../../core/fit/evaluator.ts';
import type { Fit } from '../../core/fit/fit-schema.ts';
import {
  BODY_MASS_SD_KG,
  PLACING_SD_M,
  POSTURE_SD_DEG,
  TURNING_SD_DEG,
} from '../../core/fit/quantity-spreads.ts';
import type { Seat } from '../../core/fit/seat-schema.ts';
import { seatFrame, solveSeat } from '../../core/fit/seat-state.ts';
import { exampleFit } from '../core/example/example-fit.ts';

/** Seeded uniform numbers in (0, 1): mulberry32. */
function uniform(seed: number): () => number {
  let a = seed;
  return () => {
    a = (a + 0x6d2b79f5) | 0;
    let t = Math.imul(a ^ (a >>> 15), 1 | a);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return (((t ^ (t >>> 14)) >>> 0) + 0.5) / 4294967296;
  };
}

/** Standard normal numbers by Box and Muller (1958). */
function normal(seed: number): () => number {
  const next = uniform(seed);
  return () => Math.sqrt(-2 * Math.log(next())) * Math.cos(2 * Math.PI * next());
}

const SAMPLES = 10_000;
const SEED = 20_261_125;

/** A body drawn from the estimate's own distribution of lengths, and a body mass about the weighed one. */
function drawBody(
  body: BodyEstimate,
  roots: readonly (readonly number[])[],
  draw: () => number,
): BodyEstimate {
  const z = roots.map(draw);
  const lengths = Object.fromEntries(
    BODY_LENGTHS.map((name, i) => {
      const moved = roots.reduce((sum, column, k) => sum + column[i]! * z[k]!, body.lengths[name].value);
      return [name, { ...body.lengths[name], value: moved }];
    }),
  ) as BodyEstimate['lengths'];
  const factor = 1 + (BODY_MASS_SD_KG * draw()) / body.mass;
  const segments = Object.fromEntries(
    Object.entries(body.segments).map(([name, s]) => [name, { ...s, massKg: s.massKg * factor }]),
  ) as BodyEstimate['segments'];
  return { ...body, mass: body.mass * factor, lengths, segments };
}

/** Fittings as they come out when set with tape and bevel. */
function drawPlaces(seat: Seat, draw: () => number): Seat {
  const place = (value: number) => value + PLACING_SD_M * draw();
  const turn = (value: number) => value + TURNING_SD_DEG * draw();
  const { kneePad, rearRest, frontFoot } = seat;
  return {
    ...seat,
    kneePad: {
      ...kneePad,
      aftM: place(kneePad.aftM),
      outM: place(kneePad.outM),
      heightM: place(kneePad.heightM),
      recessTurnDeg: turn(kneePad.recessTurnDeg),
    },
    rearRest: {
      ...rearRest,
      aftM: place(rearRest.aftM),
      outM: place(rearRest.outM),
      heightM: place(rearRest.heightM),
      turnDeg: turn(rearRest.turnDeg),
    },
    frontFoot: {
      ...frontFoot,
      forwardM: place(frontFoot.forwardM),
      outM: place(frontFoot.outM),
      toeOutDeg: turn(frontFoot.toeOutDeg),
    },
  };
}

/** Standard deviations of every seat quantity over the samples, the posture pinned as solved (no posture spread). */
function monteCarlo(fit: Fit): Map<string, number> {
  const seat = fit.seats[0]!;
  const body = bodyOfAthlete(seat.athlete!);
  const roots = squareRootOf(body.covariance);
  const draw = normal(SEED);
  const boat = boatState(fit);
  const sums = new Map<string, { n: number; mean: number; m2: number }>();
  for (let i = 0; i < SAMPLES; i++) {
    const state = solveSeat({
      seat: drawPlaces(seat, draw),
      body: drawBody(body, roots, draw),
      frame: seatFrame(fit.boat, seat, 0),
    });
    for (const q of computeBoat(boat, [state], null).quantities) {
      const sum = sums.get(q.id) ?? { n: 0, mean: 0, m2: 0 };
      const before = q.value - sum.mean;
      sum.n++;
      sum.mean += before / sum.n;
      sum.m2 += before * (q.value - sum.mean);
      sums.set(q.id, sum);
    }
  }
  return new Map([...sums].map(([id, { n, m2 }]) => [id, Math.sqrt(m2 / (n - 1))]));
}

/** The posture spread is left out of both sides: pins with no doubt would hide the solve, so its part is subtracted. */
describe('first-order spreads against a 10 000-sample Monte Carlo of the whole pipeline (GUM, JCGM 101:2008)', () => {
  const fit = exampleFit();
  const sampled = monteCarlo(fit);
  const report = evaluateFit(fit, { posture: false, hull: false });

  it.each([
    'frontKnee',
    'kneelingKnee',
    'kneelingHip',
    'frontHip',
    'trunkPitch',
    'trunkRoll',
    'kneeShare',
    'frontShare',
    'kneeLoad',
    'supportMargin',
    'centreHeight',
    'centreAft',
    'trimRest',
    'trimCatch',
    'draft',
    'transverseGm',
    'leastFreeboard',
  ])('%s within a tenth', (id) => {
    const sd = report.quantities.find((q) => q.id === id)!.sd!;
    expect(sd / sampled.get(id)!).toBeGreaterThan(0.9);
    expect(sd / sampled.get(id)!).toBeLessThan(1.1);
  });

  it('counts posture as one more source: no spread shrinks when it is added', () => {
    const whole = evaluateFit(fit);
    for (const q of report.quantities) {
      const with_ = whole.quantities.find((w) => w.id === q.id && w.seat === q.seat)!;
      expect(with_.sd ?? 0, q.id).toBeGreaterThanOrEqual((q.sd ?? 0) - 1e-15);
    }
    expect(Object.keys(POSTURE_SD_DEG)).toHaveLength(5);
  });
});

import { describe, expect, it } from 'vitest';
import { createEvaluator } from '../../../core/fit/evaluator.ts';
import { seatFromSingle, transferFit } from '../../../core/transfer/transfer-fit.ts';
import { exampleBoat, exampleFit, exampleSeat } from '../example/example-fit.ts';

const evaluator = createEvaluator();
const angles = (r: ReturnType<typeof evaluator.evaluate>) => r.seats[0]!.stances.ready.angles;

describe('transferFit', () => {
  const fit = exampleFit();
  const other = { ...exampleBoat(), name: 'Shorter', massKg: 16 };
  if (other.hull.kind === 'tape') {
    other.hull = {
      ...other.hull,
      stations: other.hull.stations.map((s) => ({ ...s, sheerBeamM: s.sheerBeamM * (1 - 0.06 * s.xM) })),
    };
  }
  const moved = transferFit(evaluator, fit, other);

  it('keeps the stance: joint angles are as they were', () => {
    const was = angles(evaluator.evaluate(fit));
    for (const r of [moved.asIs.report, moved.trimKept!.report]) {
      const is = angles(r);
      for (const key of Object.keys(was) as (keyof typeof was)[]) {
        expect(Math.abs(is[key] - was[key]), key).toBeLessThan((1 * Math.PI) / 180);
      }
    }
  });

  it('finds the shift that gives the trim the old boat had', () => {
    const trim = (r: ReturnType<typeof evaluator.evaluate>) =>
      r.afloat.ready.kind === 'afloat' ? r.afloat.ready.trim : Number.NaN;
    expect(Math.abs(trim(moved.trimKept!.report) - trim(evaluator.evaluate(fit)))).toBeLessThan(1e-4);
  });

  it('refuses a boat with another number of seats', () => {
    expect(() => transferFit(evaluator, fit, exampleBoat(2))).toThrow(RangeError);
  });
});

describe('seatFromSingle', () => {
  it('starts a crew seat from the athlete’s own single', () => {
    const crew = exampleFit([exampleSeat(), exampleSeat({ side: 'right', locks: ['paddle'] })]);
    const single = exampleFit([exampleSeat({ kneePad: { ...exampleSeat().kneePad, aftM: 0.19 } })]);
    const joined = seatFromSingle(crew, 1, single);
    expect(joined.seats[1]!.kneePad.aftM).toBe(0.19);
    expect(joined.seats[1]!.locks).toEqual(['paddle']);
    expect(joined.seats[0]).toBe(crew.seats[0]);
  });
});

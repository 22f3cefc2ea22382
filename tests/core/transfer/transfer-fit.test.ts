import { describe, expect, it } from 'vitest';
import { createEvaluator } from '../../../core/evaluation/evaluator.ts';
import { inNearestHoles, seatFromSingle, transferFit } from '../../../core/transfer/transfer-fit.ts';
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

  it('stands in the new boat’s nearest holes, no farther than half a pitch from where the trim is kept', () => {
    expect(moved.inHoles).toBe(null);
    const pitch = 0.025;
    const hardware = { ...other.hardware, padHolePitchM: pitch, restHolePitchM: pitch };
    const drilled = transferFit(evaluator, fit, { ...other, hardware });
    const [kept, holes] = [drilled.trimKept!.fit.seats[0]!, drilled.inHoles!.fit.seats[0]!];
    for (const aft of [holes.kneePad.aftM, holes.rearRest.aftM]) {
      expect(Math.abs(aft / pitch - Math.round(aft / pitch))).toBeLessThan(1e-6);
    }
    const by = holes.kneePad.aftM - kept.kneePad.aftM;
    expect(Math.abs(by)).toBeLessThanOrEqual(pitch / 2 + 1e-9);
    expect(holes.frontFoot.forwardM).toBeCloseTo(kept.frontFoot.forwardM - by, 6);
    expect(Math.abs(holes.rearRest.aftM - kept.rearRest.aftM - by)).toBeLessThanOrEqual(pitch / 2 + 1e-9);
    expect(drilled.inHoles!.report).toEqual(evaluator.evaluate(drilled.inHoles!.fit));
  });

  it('keeps no trim in a boat that does not carry the paddler, and says nothing of a shift', () => {
    const thimble = exampleBoat();
    if (thimble.hull.kind !== 'tape') throw new Error('the example is taped');
    thimble.hull = {
      ...thimble.hull,
      stations: thimble.hull.stations.map((s) => ({
        ...s,
        sheerM: s.keelM + 0.05,
        beams: [{ aboveKeelM: 0.02, beamM: 0.5 * s.sheerBeamM }],
      })),
    };
    const sunk = transferFit(evaluator, fit, thimble);
    expect(sunk.asIs.report.afloat.ready.kind).not.toBe('afloat');
    expect(sunk.trimKept).toBe(null);
  });

  it('shifts nothing into a twin of the boat', () => {
    const twin = transferFit(evaluator, fit, { ...fit.boat, name: 'Twin' });
    expect(Math.abs(twin.trimKept!.shiftAft)).toBeLessThan(1e-4);
    expect(twin.asIs.fit.seats).toEqual(fit.seats);
  });

  it('shifts a paddler of the other side as far', () => {
    const mirrored = exampleFit([exampleSeat({ side: 'right' })]);
    const there = transferFit(evaluator, mirrored, other);
    expect(there.trimKept!.shiftAft).toBeCloseTo(moved.trimKept!.shiftAft, 6);
  });

  it('shifts a crew together: distances between the seats and every stance are kept', () => {
    const crew = exampleFit([exampleSeat(), exampleSeat({ side: 'right' })]);
    const boat = { ...exampleBoat(2), name: 'Fuller aft' };
    if (boat.hull.kind !== 'tape') throw new Error('the example is taped');
    const hull = {
      ...boat.hull,
      stations: boat.hull.stations.map((s) => ({ ...s, sheerBeamM: s.sheerBeamM * (1 - 0.05 * s.xM) })),
    };
    const { trimKept } = transferFit(evaluator, crew, { ...boat, hull });
    const shifts = trimKept!.fit.seats.map((seat, i) => seat.kneePad.aftM - crew.seats[i]!.kneePad.aftM);
    expect(shifts[1]).toBeCloseTo(shifts[0]!, 6);
    const was = evaluator.evaluate(crew);
    for (const i of [0, 1]) {
      const knee = (r: typeof was) => r.seats[i]!.stances.ready.angles.kneelingKnee;
      expect(Math.abs(knee(trimKept!.report) - knee(was))).toBeLessThan((1 * Math.PI) / 180);
    }
  });

  it('goes to the last hole of a row that ends before the setting, not to one that is not there', () => {
    const hardware = {
      padHolePitchM: 0.025,
      restHolePitchM: 0.02,
      padTravelM: [0, 0.16],
      restTravelM: [0.2, 0.55],
    };
    const ends = { ...fit, boat: { ...fit.boat, hardware } } as typeof fit;
    const { kneePad, rearRest } = inNearestHoles(ends)!.seats[0]!;
    expect(kneePad.aftM).toBe(0.15);
    expect(rearRest.aftM).toBe(0.54);
  });

  it('leaves a setting that stands in holes already where it is', () => {
    const hardware = { ...fit.boat.hardware, padHolePitchM: 0.01, restHolePitchM: 0.02 };
    const drilled = inNearestHoles({ ...fit, boat: { ...fit.boat, hardware } })!;
    expect(inNearestHoles(drilled)).toEqual(drilled);
    expect(inNearestHoles(fit)).toBe(null);
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

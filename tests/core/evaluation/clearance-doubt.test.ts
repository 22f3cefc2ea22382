import { describe, expect, it } from 'vitest';
import { bodyOfAthlete } from '../../../core/body/body-of-athlete.ts';
import { boatSchema } from '../../../core/document/boat-schema.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { boatState } from '../../../core/evaluation/boat-state.ts';
import { computeBoat } from '../../../core/evaluation/computed-fit.ts';
import { createEvaluator } from '../../../core/evaluation/evaluator.ts';
import type { Quantity } from '../../../core/evaluation/finding.ts';
import { hullSpread } from '../../../core/evaluation/hull-spread.ts';
import { judge } from '../../../core/evaluation/judge.ts';
import { roomIn } from '../../../core/evaluation/part-clearances.ts';
import { findQuantity, type QuantityId } from '../../../core/evaluation/quantities.ts';
import { doubtOf } from '../../../core/evaluation/quantity-spreads.ts';
import { hullClearances } from '../../../core/evaluation/seat-quantities.ts';
import { seatFrame, solveSeat } from '../../../core/evaluation/seat-state.ts';
import { suggestChange } from '../../../core/evaluation/suggest-change.ts';
import { keyOf } from '../../../core/evaluation/value-table.ts';
import { familyStations } from '../../../core/hull/hull-family.ts';
import { usualHull } from '../../../core/hull/usual-hull.ts';
import { USUAL_NUMBERS, usualLines } from '../../../core/hull/usual-lines.ts';
import { notEmpty } from '../../not-empty.ts';
import { normalOf, uniform } from '../../random32.ts';
import { sampleBoat } from '../../reference/proposal-random.ts';
import { exampleFit, exampleSeat } from '../example/example-fit.ts';
import { madeHull } from '../hull/made-hull.ts';

/** Hulls drawn of each family: the spread of 100 is known to 7 %. */
const DRAWN = 100;

const evaluator = createEvaluator();
const usualBoat = (boatClass: 'C1' | 'C2' | 'C4') =>
  boatSchema.parse({ ...usualHull({ boatClass }), name: `Usual ${boatClass}` });

/** The example paddler in every seat of a boat that nobody has measured. */
function unmeasured(boatClass: 'C1' | 'C2' | 'C4'): Fit {
  const boat = usualBoat(boatClass);
  return { ...exampleFit(boat.seats.map(() => exampleSeat())), boat };
}

const sdOf = (fit: Fit, id: QuantityId, sources = {}) =>
  findQuantity(evaluator.evaluate(fit, sources).quantities, id, 0)!.sd!;

const TO_HULL = [
  'padInsideHull',
  'restInsideHull',
  'footInsideHull',
  'kneeInsideHull',
  'padHolesToSkin',
  'restHolesToSkin',
] as const;

describe('a clearance to a hull that nobody has measured', () => {
  /** Standard deviations of the first seat's clearances over drawn hulls of a class, as `tests/core/hull/usual-hull.test.ts` draws them. */
  function drawnSpreads(fit: Fit, boatClass: 'C1' | 'C2' | 'C4'): Map<string, number> {
    const { boat, seats } = fit;
    const seat = seats[0]!;
    const body = bodyOfAthlete(seat.athlete!);
    const state = solveSeat({ seat, body, frame: seatFrame(boat, seat, 0) });
    const lines = usualLines(USUAL_NUMBERS[boatClass]);
    const draw = normalOf(uniform(11));
    const drawn = Array.from({ length: DRAWN }, () => {
      const one = {
        ...lines,
        planFore: lines.planFore + 0.2 * draw(),
        planAft: lines.planAft + 0.2 * draw(),
        flatness: lines.flatness * Math.exp(0.15 * draw()),
        bilge: lines.bilge * Math.exp(0.1 * draw()),
        flare: Math.max(0, lines.flare + 0.06 * draw()),
        rockerM: Math.max(0, lines.rockerM + 0.012 * draw()),
        depthM: lines.depthM * Math.exp(0.05 * draw()),
      };
      const hull = madeHull({ name: 'drawn', stations: familyStations(one), between: 'chords' });
      return hullClearances(state, 0, { boat, room: { hull, roomOf: roomIn({ boat, hull }) } });
    });
    return new Map(
      TO_HULL.map((id) => {
        const values = drawn.map((one) => one[id]!);
        const mean = values.reduce((a, b) => a + b) / DRAWN;
        return [id, Math.sqrt(values.reduce((sum, v) => sum + (v - mean) ** 2, 0) / (DRAWN - 1))];
      }),
    );
  }

  it.each(['C1', 'C2', 'C4'] as const)(
    'is as doubtful as the family of its class, drawn over, within a factor of 1.6: %s',
    (boatClass) => {
      const fit = unmeasured(boatClass);
      const found = drawnSpreads(fit, boatClass);
      for (const id of TO_HULL) {
        const told = Math.sqrt(sdOf(fit, id) ** 2 - sdOf(fit, id, { hull: false }) ** 2);
        expect(told / found.get(id)!, id).toBeGreaterThan(1 / 1.6);
        // A drawn hull has the greatest beam that was asked for: beside the knee, near the sheer, nothing is in doubt there.
        if (id !== 'kneeInsideHull') expect(told / found.get(id)!, id).toBeLessThan(1.6);
      }
    },
  );

  it('makes what is cut off a block as doubtful where it is cut, and hardly where it stands free', () => {
    const fit = unmeasured('C1');
    const { kneePad } = fit.seats[0]!;
    const at = (outM: number): Fit => ({
      ...fit,
      seats: [{ ...fit.seats[0]!, kneePad: { ...kneePad, outM } }],
    });
    expect(sdOf(at(0.12), 'padBevel') / sdOf(at(0.12), 'padInsideHull')).toBeCloseTo(1, 1);
    expect(sdOf(at(0.02), 'padInsideHull')).toBeGreaterThan(0.003);
    expect(sdOf(at(0.02), 'padBevel')).toBeLessThan(0.0005);
  });
});

it.each([
  ['by tape', exampleFit().boat, 0.003],
  ['from offsets', sampleBoat('single'), 0.001],
] as const)('a hull known %s adds no more than its own small doubt', (_, boat, most) => {
  const fit = { ...exampleFit(), boat };
  for (const id of TO_HULL) {
    const own = sdOf(fit, id, { hull: false });
    expect(Math.sqrt(sdOf(fit, id) ** 2 - own ** 2), id).toBeLessThan(most);
  }
});

describe('a clearance in doubt', () => {
  /** The example with its rest as far out as its edge just lies within its limit by so much, metres. */
  function nearLimit(fit: Fit): Fit {
    const { rearRest } = fit.seats[0]!;
    const at = (outM: number): Fit => ({
      ...fit,
      seats: [{ ...fit.seats[0]!, rearRest: { ...rearRest, outM } }],
    });
    for (let outM = 0; outM > -0.2; outM -= 0.002) {
      const { value, band } = evaluator.evaluate(at(outM)).findings.find((f) => f.id === 'restBevel@0')!;
      if (value > band.max! - 0.003) return at(outM);
    }
    throw new Error('the rest meets no hull');
  }

  it('in a hull that nobody has measured asks for its beams, and moves no wood', () => {
    const fit = nearLimit(unmeasured('C1'));
    const report = evaluator.evaluate(fit);
    const finding = report.findings.find(({ id }) => id === 'restBevel@0')!;
    expect(finding).toMatchObject({ severity: 'check', settledBy: 'beams' });
    expect(suggestChange({ evaluator, fit, report, finding })).toEqual({ kind: 'measure', what: 'beams' });
  });

  it('in a hull by tape asks for no tape', () => {
    const { findings } = evaluator.evaluate(nearLimit(exampleFit()));
    expect(findings.some(({ settledBy }) => settledBy === 'beams')).toBe(false);
  });

  it('is said once for the hull, where it is most likely', () => {
    const fit = unmeasured('C2');
    const near = (seat: number, value: number): Quantity => ({
      id: 'padInsideHull',
      seat,
      value,
      sd: 0.007,
      unit: 'm',
      byHull: true,
    });
    const said = judge(fit, [near(0, 0.013), near(1, 0.016)]).map(({ id, severity }) => [id, severity]);
    expect(said).toEqual([
      ['padInsideHull@1', 'check'],
      ['padInsideHull@0', 'good'],
    ]);
    const taped = { ...fit, boat: { ...fit.boat, hull: exampleFit().boat.hull } };
    const each = judge(taped, [near(0, 0.013), near(1, 0.016)]);
    expect(each.map(({ severity, settledBy }) => [severity, settledBy])).toEqual([
      ['check', undefined],
      ['check', undefined],
    ]);
  });
});

it('a photograph of the paddler leaves the hull as doubtful as it was', () => {
  const fit = unmeasured('C1');
  const boat = boatState(fit);
  const seat = fit.seats[0]!;
  const state = solveSeat({ seat, body: bodyOfAthlete(seat.athlete!), frame: seatFrame(fit.boat, seat, 0) });
  const computed = computeBoat(boat, [state], null);
  const { looks } = doubtOf(computed);
  const { trimRest } = hullSpread(fit.boat, computed.afloat.ready, boat.hull);
  for (const after of notEmpty(Object.values(looks[0]!.looks))) {
    expect(after.get(keyOf('trimRest', null))!).toBeGreaterThan(trimRest);
    expect(after.get(keyOf('padInsideHull', 0))!).toBeCloseTo(sdOf(fit, 'padInsideHull'), 9);
  }
});

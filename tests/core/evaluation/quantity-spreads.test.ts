import { describe, expect, it } from 'vitest';
import { bodyOfAthlete } from '../../../core/body/body-of-athlete.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import type { Pins } from '../../../core/document/seat-schema.ts';
import { boatState, loadsAboard } from '../../../core/evaluation/boat-state.ts';
import { computeBoat } from '../../../core/evaluation/computed-fit.ts';
import { PINNED_SD_DEG, type SpreadSources } from '../../../core/evaluation/doubt-sources.ts';
import { createEvaluator } from '../../../core/evaluation/evaluator.ts';
import { floatSlopes } from '../../../core/evaluation/float-slopes.ts';
import { productOf } from '../../../core/evaluation/measured-rows.ts';
import { findQuantity, type QuantityId } from '../../../core/evaluation/quantities.ts';
import { heldSpreads, withSpreads } from '../../../core/evaluation/quantity-spreads.ts';
import { seatRows } from '../../../core/evaluation/seat-rows.ts';
import { seatFrame, solveSeat } from '../../../core/evaluation/seat-state.ts';
import { withUnpinnedCatch } from '../../../core/evaluation/unpinned-catch.ts';
import { keyOf } from '../../../core/evaluation/value-table.ts';
import { usualHull } from '../../../core/hull/usual-hull.ts';
import { notEmpty } from '../../not-empty.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../example/example-fit.ts';

const evaluator = createEvaluator();
const spreadOf = (fit: Fit, id: QuantityId, sources?: SpreadSources, seat: number | null = 0) =>
  findQuantity(evaluator.evaluate(fit, sources).quantities, id, seat)!.sd!;
const degreesOf = (...of: Parameters<typeof spreadOf>) => (spreadOf(...of) * 180) / Math.PI;
const fit = exampleFit();

describe('posture', () => {
  // Pelvic inclination at rest 15.2 ± 4.3°, lumbar angles 4–7° between persons: López-Miñarro, Muyor, Alacid 2011, J Hum Kinet.
  it.each([
    ['trunkPitch', 3.5, 6],
    ['pelvisYaw', 4, 8],
    ['thighPitch', 2, 5],
    ['trunkRoll', 1.5, 4],
  ] as const)('makes %s uncertain by %f° to %f°, as persons differ', (id, least, most) => {
    expect(degreesOf(fit, id)).toBeGreaterThan(least);
    expect(degreesOf(fit, id)).toBeLessThan(most);
  });

  it('leaves the weight over the boat to a few millimetres: whoever leans balances it', () => {
    expect(spreadOf(fit, 'offCentre', {}, null)).toBeGreaterThan(0.002);
    expect(spreadOf(fit, 'offCentre', {}, null)).toBeLessThan(0.005);
  });

  it('counts little for an angle that was measured: that is known better than the reading alone', () => {
    for (const id of ['trunkPitch', 'trunkRoll', 'thighPitch', 'pelvisYaw'] as const) {
      const pins: Pins = { [`${id}Deg`]: 5 };
      const sd = degreesOf(exampleFit([exampleSeat({ pins })]), id);
      expect(sd).toBeLessThan(PINNED_SD_DEG[id]);
      expect(sd).toBeGreaterThan(0.6 * PINNED_SD_DEG[id]);
    }
  });
});

describe('what is measured', () => {
  it('of a body narrows what depends on it: two tapes take a fifth off the front knee’s', () => {
    const tape = Object.fromEntries(
      [
        ['kneeHeightSitting', 0.57],
        ['buttockKneeLength', 0.63],
      ].map(([name, valueM]) => [name, { valueM }]),
    );
    const measured = exampleFit([exampleSeat({ athlete: exampleAthlete({ tape }) })]);
    const sources = { posture: false } as const;
    expect(spreadOf(measured, 'frontKnee', sources)).toBeLessThan(0.85 * spreadOf(fit, 'frontKnee', sources));
  });

  it('by setting it is exact: set-out tolerances belong to the sheet', () => {
    for (const id of ['padAft', 'padHeight', 'restTurn', 'padToRest'] as const) {
      expect(findQuantity(evaluator.evaluate(fit).quantities, id, 0)!.sd ?? 0).toBe(0);
    }
  });
});

describe('a leg at full stretch', () => {
  const seat = exampleSeat();

  it('has an honest doubt of its ankle, which all but stands still at the stance itself', () => {
    const far = (aftM: number) => exampleFit([{ ...seat, rearRest: { ...seat.rearRest, aftM } }]);
    const { aftM } = seat.rearRest;
    const spare = findQuantity(evaluator.evaluate(far(aftM)).quantities, 'rearReach', 0)!.judged!.value;
    const straight = far(aftM - spare - 0.001);
    expect(findQuantity(evaluator.evaluate(straight).quantities, 'rearAnkle', 0)!.value).toBeGreaterThan(2.7);
    expect(degreesOf(straight, 'rearAnkle')).toBeGreaterThan(5);
  });

  it('is judged by the whole distance: a reach a centimetre short is in doubt, as is one just reaching', () => {
    const excess = (aftM: number) => {
      const moved = exampleFit([{ ...seat, rearRest: { ...seat.rearRest, aftM } }]);
      const report = evaluator.evaluate(moved);
      return {
        whole: findQuantity(report.quantities, 'rearReach', 0)!.judged!.value,
        finding: report.findings.find((f) => f.id === 'rearReach@0')!,
      };
    };
    const { rearRest } = seat;
    const near = excess(rearRest.aftM - 0.05);
    expect(near.whole).toBeLessThan(-0.04);
    expect(near.finding.severity).toBe('good');
    // About a centimetre to spare, of a leg known to 12 mm.
    const edge = excess(rearRest.aftM - near.whole - 0.05 - 0.01);
    expect(edge.whole).toBeLessThan(0);
    expect(edge.finding.value).toBe(edge.whole);
    expect(edge.finding.severity).toBe('check');
    expect(edge.finding.probability).toBeGreaterThan(0.1);
  });
});

describe('spreads of a report', () => {
  const report = evaluator.evaluate(fit);

  it('are held for the values of another: the same fit comes back the same', () => {
    const bare = report.quantities.map(({ judged, uninformed: _, ...q }) => ({
      ...q,
      sd: null,
      ...(judged?.smooth && { judged: { ...judged, sd: 0 } }),
    }));
    const again = withSpreads(bare, heldSpreads(report));
    expect(again).toHaveLength(report.quantities.length);
    again.forEach(({ sd, judged, uninformed }, i) => {
      const was = report.quantities[i]!;
      expect([sd, uninformed, judged?.sd]).toEqual([was.sd, was.uninformed, was.judged?.sd]);
      expect(judged?.value ?? 0).toBeCloseTo(was.judged?.value ?? 0, 12);
    });
  });

  it('are unknown where nothing is known', () => {
    const stranger = { id: 'frontKnee', seat: 3, value: 1, sd: null, unit: 'rad' } as const;
    expect(withSpreads([stranger], heldSpreads(report))[0]!.sd).toBeNull();
  });

  it('of one seat do not grow by another’s doubts where the two share nothing', () => {
    const crew = exampleFit([exampleSeat(), exampleSeat({ side: 'right' })]);
    expect(spreadOf(crew, 'frontKnee')).toBeCloseTo(spreadOf(fit, 'frontKnee'), 9);
    expect(spreadOf(crew, 'trimRest', {}, null)).toBeGreaterThan(0);
  });
});

describe('whose doubt a value’s is', () => {
  it('is the boat’s where more than half of its variance is', () => {
    const usual = { ...fit, boat: usualHull({ boatClass: 'C1' }) };
    const without = evaluator.evaluate(usual, { hull: false }).quantities;
    const shares = evaluator
      .evaluate(usual)
      .quantities.filter(({ seat, sd }) => seat === null && sd)
      .map(({ id, sd, byHull = false }) => {
        const rest = findQuantity(without, id as QuantityId, null)!.sd!;
        return { id, byHull, share: 1 - (rest / sd!) ** 2 };
      });
    for (const { id, byHull, share } of notEmpty(shares)) expect(byHull, id).toBe(share > 0.5);
    // Near the half, so that it is the half that decides.
    expect(shares.some(({ share }) => share > 0.5 && share < 0.65)).toBe(true);
  });

  it('of a stroke’s own pitch is a reading’s of 3°, of the usual one 6.3° (López-Miñarro, Muyor, Alacid 2011)', () => {
    const lean = (catchPitchDeg?: number) =>
      exampleFit([exampleSeat({ stroke: catchPitchDeg === undefined ? {} : { catchPitchDeg } })]);
    const trim = (of: Fit) =>
      findQuantity(evaluator.evaluate(of, { hull: false }).quantities, 'trimCatch', null)!;
    const perDegree = (trim(lean(39)).value - trim(lean(37)).value) / 2;
    const less = trim(lean()).sd! ** 2 - trim(lean(38)).sd! ** 2;
    const ratio = less / (perDegree ** 2 * (6.3 ** 2 - 3 ** 2));
    expect(Math.abs(ratio - 1)).toBeLessThan(0.1);
  });

  it('of two blades’ distance is both paddlers’', () => {
    const pair = exampleFit([exampleSeat(), exampleSeat()]);
    const one = (more: object) =>
      exampleFit([exampleSeat(), exampleSeat({ stroke: { catchPitchDeg: 38 }, ...more })]);
    const apart = spreadOf(pair, 'bladeSpacing');
    // The same body in both seats: half of the variance each.
    expect(apart / (Math.SQRT2 * spreadOf(fit, 'catchReach'))).toBeCloseTo(1, 1);
    expect(spreadOf(one({}), 'bladeSpacing')).toBeLessThan(apart);
  });
});

it('a trunk read on a picture is uninformed where its doubt stays over nine tenths of that before', () => {
  const key = keyOf('trunkPitch', 0);
  const boat = boatState(fit);
  // Readings of these standard deviations leave 0.85 and 0.91 of it.
  const shares = [6, 8].map((sdDeg) => {
    const seat = exampleSeat({
      pins: { trunkPitchDeg: 12 },
      pinReadings: { trunkPitchDeg: { atDeg: 12, sdDeg } },
    });
    const body = bodyOfAthlete(seat.athlete!);
    const state = solveSeat({ seat, body, frame: seatFrame(fit.boat, seat, 0) });
    const computed = withUnpinnedCatch(computeBoat(boat, [state], null));
    const slopesIn = (phase: 'ready' | 'catch') =>
      floatSlopes(boat, loadsAboard(boat, computed.seats, phase), computed.afloat[phase]);
    const floats = { ready: slopesIn('ready'), catch: slopesIn('catch') };
    const { rows, usual } = seatRows({ computed, index: 0, floats });
    const before = productOf(rows.get(key)!, rows.get(key)!) + usual.get(key)!;
    const { sd, uninformed = false } = findQuantity(
      evaluator.evaluate(exampleFit([seat])).quantities,
      'trunkPitch',
      0,
    )!;
    return { share: sd! / Math.sqrt(before), uninformed };
  });
  expect(shares).toEqual([
    { share: expect.closeTo(0.85, 2), uninformed: false },
    { share: expect.closeTo(0.91, 2), uninformed: true },
  ]);
});

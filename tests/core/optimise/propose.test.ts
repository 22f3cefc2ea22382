import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bodyOfAthlete } from '../../../core/body/body-of-athlete.ts';
import { COORDINATES } from '../../../core/document/coordinates.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { withCoordinate } from '../../../core/document/fitting-coordinate.ts';
import { createEvaluator } from '../../../core/evaluation/evaluator.ts';
import type { Report } from '../../../core/evaluation/report.ts';
import { firstSetting } from '../../../core/optimise/first-setting.ts';
import { seriousCount, totalViolation } from '../../../core/optimise/objective.ts';
import { propose } from '../../../core/optimise/propose.ts';
import { cases } from '../../cases.ts';
import { firstFit, randomAthletes, sampleBoat } from '../../reference/proposal-random.ts';
import { exampleAthlete, exampleBoat, exampleFit, exampleSeat } from '../example/example-fit.ts';

const evaluator = createEvaluator();

function spoilt(): Fit {
  const seat = exampleSeat();
  return exampleFit([
    {
      ...seat,
      kneePad: { ...seat.kneePad, aftM: 0.26, outM: 0.0 },
      rearRest: { ...seat.rearRest, turnDeg: 2 },
      frontFoot: { ...seat.frontFoot, forwardM: 0.2 },
    },
  ]);
}

describe('propose', () => {
  const fit = spoilt();
  const before = evaluator.evaluate(fit);
  const proposal = propose(evaluator, fit);

  it('brings the trouble down and clears serious findings', () => {
    expect(totalViolation(proposal.report)).toBeLessThan(0.2 * totalViolation(before));
    expect(seriousCount(proposal.report)).toBeLessThan(seriousCount(before));
  });

  it('says what it moved, in whole millimetres and half degrees', () => {
    expect(proposal.moves.length).toBeGreaterThan(0);
    for (const move of proposal.moves) {
      const grains = move.to / COORDINATES[move.coordinate].snapStep;
      expect(grains).toBeCloseTo(Math.round(grains), 6);
    }
  });

  it('is the same every time', () => {
    expect(propose(createEvaluator(), spoilt()).fit).toEqual(proposal.fit);
  });

  it('is not beaten by any single coordinate tried on a coarse grid', () => {
    const best = totalViolation(proposal.report);
    for (const [coordinate, { moveUnit: scale }] of Object.entries(COORDINATES)) {
      for (let steps = -8; steps <= 8; steps += 2) {
        const place = { seat: 0, coordinate: coordinate as keyof typeof COORDINATES };
        const [fitting, field] = coordinate.split('.') as ['kneePad', 'aftM'];
        const tried = withCoordinate(fit, place, fit.seats[0]![fitting][field] + steps * scale);
        expect(totalViolation(evaluator.evaluateHolding(tried, before))).toBeGreaterThanOrEqual(best * 0.999);
      }
    }
  });

  it('leaves locked fittings alone', () => {
    const locked = { ...fit, seats: fit.seats.map((s) => ({ ...s, locks: ['frontFoot' as const] })) };
    const moves = propose(evaluator, locked).moves;
    expect(moves.some((m) => m.coordinate.startsWith('frontFoot'))).toBe(false);
  });

  it('leaves a fit without trouble as it is', () => {
    const settled = propose(evaluator, propose(evaluator, fit).fit);
    expect(totalViolation(settled.report)).toBeLessThanOrEqual(totalViolation(proposal.report) + 1e-9);
  });
});

describe('from athlete and boat alone', () => {
  it.each([
    ['female', 1.52, 46],
    ['female', 1.7, 64],
    ['male', 1.68, 62],
    ['male', 1.95, 98],
  ] as const)('%s, %f m, %f kg: nothing says stop', (sex, statureM, massKg) => {
    const athlete = exampleAthlete({ sex, statureM, massKg });
    // A boat whose board fits its hull: the example's lies so low that a bolt through it meets the skin, which is a stop by right.
    const boat = sampleBoat('single');
    const stationX = boat.seats[0]!.stationM;
    const start = firstSetting({ body: bodyOfAthlete(athlete), boat, stationX, side: 'left' });
    const { report } = propose(evaluator, { ...exampleFit([{ ...start, athlete }]), boat });
    expect(report.findings.filter((f) => f.severity === 'stop').map((f) => f.id)).toEqual([]);
  });
});

describe('whatever fit it is given', () => {
  const offset = (reach: number) => fc.double({ min: -reach, max: reach, noNaN: true });
  const disturbed = fc
    .record({
      statureM: fc.double({ min: 1.5, max: 2, noNaN: true }),
      aft: offset(0.1),
      out: offset(0.05),
      height: offset(0.05),
      rest: offset(0.12),
      restOut: offset(0.1),
      foot: offset(0.15),
      locks: fc.subarray(['kneePad', 'rearRest', 'frontFoot', 'paddle'] as const),
    })
    .map(({ statureM, locks, ...by }): Fit => {
      const athlete = exampleAthlete({ statureM, massKg: 22.5 * statureM ** 2 });
      const { kneePad, rearRest, frontFoot, ...seat } = exampleSeat({ athlete, locks });
      return exampleFit([
        {
          ...seat,
          kneePad: {
            ...kneePad,
            aftM: kneePad.aftM + by.aft,
            outM: kneePad.outM + by.out,
            heightM: kneePad.heightM + by.height,
          },
          rearRest: { ...rearRest, aftM: rearRest.aftM + by.rest, outM: rearRest.outM + by.restOut },
          frontFoot: { ...frontFoot, forwardM: frontFoot.forwardM + by.foot },
        },
      ]);
    });

  it('it is never worse, leaves locks alone, stays between the ends of each rule, and lists just what it moved', () => {
    fc.assert(
      fc.property(disturbed, (fit) => {
        const before = evaluator.evaluate(fit);
        const { report, moves, uncleared, fit: after } = propose(evaluator, fit);
        if (seriousCount(report) >= seriousCount(before)) {
          expect(totalViolation(report)).toBeLessThanOrEqual(totalViolation(before) + 1e-9);
        }
        expect(uncleared.length).toBe(
          report.findings.filter((f) => f.severity === 'change' || f.severity === 'stop').length,
        );
        let rebuilt = fit;
        for (const { seat, coordinate, from, to } of moves) {
          const {
            usual: [least, most],
            fitting,
          } = COORDINATES[coordinate];
          expect(fit.seats[0]!.locks).not.toContain(fitting);
          expect(to).toBeGreaterThanOrEqual(Math.min(least, from) - 1e-9);
          expect(to).toBeLessThanOrEqual(Math.max(most, from) + 1e-9);
          rebuilt = withCoordinate(rebuilt, { seat, coordinate }, to);
        }
        expect(rebuilt).toEqual(after);
      }),
      { seed: 61, numRuns: cases(3, 15) },
    );
  });
});

describe('in a crew', () => {
  const crew = () =>
    exampleFit([exampleSeat(), exampleSeat({ side: 'right', athlete: exampleAthlete({ side: 'right' }) })]);

  it('moves every seat at once, or the named ones alone', () => {
    const seatsOf = (seats?: readonly number[]) =>
      new Set(propose(evaluator, crew(), seats).moves.map(({ seat }) => seat));
    expect([...seatsOf()].toSorted()).toEqual([0, 1]);
    expect([...seatsOf([1])]).toEqual([1]);
  });

  it('leaves an empty seat as it is', () => {
    const fit = crew();
    const half = { ...fit, seats: fit.seats.map((seat, i) => (i === 1 ? { ...seat, athlete: null } : seat)) };
    const { fit: after, moves } = propose(evaluator, half);
    expect(moves.every(({ seat }) => seat === 0)).toBe(true);
    expect(after.seats[1]).toBe(half.seats[1]);
  });
});

describe('change before check', () => {
  it('sets no pad past its band to spare a trim that says check either way: a single with its mark at mid-length', () => {
    // Squares alone set this pad 21 cm aft, which says change, and left the bow at the catch saying check all the same.
    const boat = { ...sampleBoat('single'), seats: [{ stationM: 0 }] };
    const athlete = exampleAthlete({ sex: 'male', statureM: 1.791, massKg: 75.9 });
    const start = firstSetting({ body: bodyOfAthlete(athlete), boat, stationX: 0, side: 'left' });
    const { fit, report, uncleared } = propose(evaluator, { ...exampleFit([{ ...start, athlete }]), boat });
    expect(uncleared).toEqual([]);
    expect(fit.seats[0]!.kneePad.aftM).toBeLessThanOrEqual(0.2 + 1e-9);
    expect(report.findings.find((f) => f.quantity === 'trimCatch')!.severity).toBe('check');
  });
});

describe('few screws for little trouble', () => {
  const checks = ({ findings }: Report) => findings.filter((f) => f.severity === 'check').length;
  const small = randomAthletes(77, 11).filter(({ statureM }) => statureM < 1.66);

  it.each(small)(
    'a paddler of $statureM m: no finding reads worse, and at most three fittings go anywhere',
    (athlete) => {
      const fit = firstFit(sampleBoat('single'), athlete);
      const before = evaluator.evaluate(fit);
      expect(seriousCount(before)).toBe(0);
      const { report, moves } = propose(evaluator, fit);
      expect(seriousCount(report)).toBe(0);
      expect(checks(report)).toBeLessThanOrEqual(checks(before));
      expect(moves.length).toBeLessThanOrEqual(3);
    },
  );
});

describe('rails', () => {
  const railed = (hardware: object): Fit => ({
    ...spoilt(),
    boat: { ...exampleBoat(), hardware: { ...exampleBoat().hardware, ...hardware } },
  });
  const seatOf = (hardware: object) => propose(evaluator, railed(hardware)).fit.seats[0]!;

  it('end where they end: no pad is proposed past its own, however much a finding would like it', () => {
    // Without an end this pad goes to 19 or 20 cm aft, for the trim.
    expect(seatOf({}).kneePad.aftM).toBeGreaterThan(0.165);
    expect(seatOf({ padTravelM: [0.02, 0.1634] }).kneePad.aftM).toBeLessThanOrEqual(0.1634 + 1e-9);
    expect(seatOf({ restTravelM: [0.2, 0.58] }).rearRest.aftM).toBeLessThanOrEqual(0.58 + 1e-9);
  });

  it('have no hole past their end', () => {
    const { kneePad } = seatOf({ padHolePitchM: 0.025, padTravelM: [0, 0.17] });
    expect(kneePad.aftM).toBeCloseTo(0.15, 9);
  });
});

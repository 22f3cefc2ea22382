import { describe, expect, it } from 'vitest';
import { evaluateFit } from '../../../core/evaluation/evaluator.ts';
import {
  CHANGES,
  COURSES,
  trimIsForHandling,
  underWayOfFit,
  usualSpeed,
} from '../../../core/under-way/under-way-of-fit.ts';
import { cases } from '../../cases.ts';
import { boatOf, crewFit, randomAthletes } from '../../reference/proposal-random.ts';
import { exampleFit } from '../example/example-fit.ts';

const fit = exampleFit();
const report = evaluateFit(fit);
const asked = { speed: 4.2, depth: null, ratePerMin: 60 };
const found = underWayOfFit(fit, report, asked)!;
const cost = (of: string) => found.costs.find((each) => each.of === of)!;

describe('underWayOfFit', () => {
  it('gives a curve that rises with speed and meets the speed asked for', () => {
    const totals = found.curve.map(({ total }) => total);
    for (let i = 1; i < totals.length; i++) expect(totals[i]!).toBeGreaterThan(totals[i - 1]!);
    const [below, above] = [4, 4.25].map((speed) => found.curve.find((each) => each.speed === speed)!);
    expect(found.at.total).toBeGreaterThan(below!.total);
    expect(found.at.total).toBeLessThan(above!.total);
  });

  it('gives what its formulas took: friction (ITTC 1957) and air come out by hand', () => {
    const { waterDensity, reynolds, airDragArea } = found.given;
    const plate = 0.5 * waterDensity * asked.speed ** 2 * found.at.wettedSurface;
    expect(found.at.friction / ((plate * 1.05 * 0.075) / (Math.log10(reynolds) - 2) ** 2)).toBeCloseTo(1, 12);
    expect(found.at.air / (0.5 * 1.225 * airDragArea * asked.speed ** 2)).toBeCloseTo(1, 12);
    // Fresh water of 15 °C and a waterline of some five metres: 4.2 × 5 / 1.14e-6.
    expect(reynolds).toBeGreaterThan(1.5e7);
    expect(reynolds).toBeLessThan(2.1e7);
  });

  it('says that trim is a matter of handling: 35 mm of bow are under 1.2 %, ten kilograms over 5 %', () => {
    expect(Math.abs(cost('bowUp').share)).toBeLessThan(0.012);
    expect(Math.abs(cost('bowDown').share)).toBeLessThan(0.012);
    expect(cost('mass').share).toBeGreaterThan(0.05);
    expect(Math.abs(cost('heel').share)).toBeLessThan(0.01);
  });

  // What stands at trim's finding: “For handling”, or that it counts for speed too.
  it.each(
    (
      [
        ['single', true],
        ['training', false],
        ['pair', true],
        ['four', true],
      ] as const
    ).slice(0, cases(1, 4)),
  )(
    'in the sample %s trim is for handling alone: %s; half a millimetre is nothing in any',
    (name, handling) => {
      const crewed = crewFit(boatOf(name), randomAthletes(3, 4));
      const question = { speed: usualSpeed(crewed.seats.length), depth: null, ratePerMin: 60 };
      const water = underWayOfFit(crewed, evaluateFit(crewed), question)!;
      expect(trimIsForHandling(water)).toBe(handling);
      const trims = water.costs.filter(({ of }) => of === 'bowUp' || of === 'bowDown');
      expect(trims).toHaveLength(2);
      // Half a millimetre is at most its part of 35, were the cost straight; it is curved, and less.
      for (const { share } of trims) expect((Math.abs(share) * 0.5) / 35).toBeLessThan(0.0003);
    },
  );

  it('tells seconds in proportion to the course, slower where resistance is higher', () => {
    const { seconds, newtons } = cost('mass');
    expect(newtons).toBeGreaterThan(0);
    expect(seconds[0]!).toBeGreaterThan(0);
    expect(seconds[2]! / seconds[0]!).toBeCloseTo(COURSES[2] / COURSES[0], 9);
    // Power goes like speed cubed and more: a share of resistance costs about a third of it in time.
    const share = seconds[2]! / (1000 / 4.2);
    expect(share / cost('mass').share).toBeGreaterThan(0.2);
    expect(share / cost('mass').share).toBeLessThan(0.4);
  });

  it('compares with another state, and a state with itself costs nothing', () => {
    const same = underWayOfFit(fit, report, { ...asked, against: { fit, report } })!.costs[0]!;
    expect(same).toMatchObject({ of: 'other', newtons: 0, sd: 0 });
    const heavy = {
      ...fit,
      boat: { ...fit.boat, massKg: fit.boat.massKg + CHANGES.massKg },
    };
    const other = underWayOfFit(fit, report, {
      ...asked,
      against: { fit: heavy, report: evaluateFit(heavy) },
    })!;
    expect(other.costs[0]!.newtons / cost('mass').newtons).toBeGreaterThan(0.8);
    expect(other.costs[0]!.newtons / cost('mass').newtons).toBeLessThan(1.2);
  });

  it('is null for a boat that does not float', () => {
    const ready = { kind: 'overloaded', massKg: 400, mostKg: 300 } as const;
    const sunk = { ...report, afloat: { ...report.afloat, ready } };
    expect(underWayOfFit(fit, sunk, asked)).toBeNull();
  });
});

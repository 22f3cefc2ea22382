import { describe, expect, it } from 'vitest';
import { boatState } from '../../../core/evaluation/boat-state.ts';
import { evaluateFit } from '../../../core/evaluation/evaluator.ts';
import { strokeRow } from '../../../core/stroke/stroke-cycle.ts';
import { reportAt, strokeOfFit } from '../../../core/stroke/stroke-of-fit.ts';
import { GRAVITY } from '../../../core/units/gravity.ts';
import { exampleFit, exampleSeat } from '../example/example-fit.ts';

const fit = exampleFit();
const report = evaluateFit(fit);
const crew = strokeOfFit(fit, report);

describe('strokeOfFit', () => {
  it('carries the solved seats as they are, and empty ones as empty', () => {
    const pair = exampleFit([exampleSeat({ side: 'right' }), exampleSeat({ athlete: null })]);
    const solved = evaluateFit(pair);
    const { seats } = strokeOfFit(pair, solved);
    expect(seats[0]!.stances).toBe(solved.seats[0]!.stances);
    expect(seats[0]!.frame.side).toBe('right');
    expect(seats[1]).toBeNull();
  });

  it('knows the boat from before while boat, water and heel are the same', () => {
    const seats = fit.seats.map((seat) => ({ ...seat }));
    expect(strokeOfFit({ ...fit, seats }, report).boat).toBe(crew.boat);
    for (const other of [{ heelDeg: 2 }, { water: { ...fit.water } }, { boat: { ...fit.boat } }]) {
      expect(boatState({ ...fit, ...other })).not.toBe(crew.boat);
      expect(boatState({ ...fit, ...other }).hull).toBe(crew.boat.hull);
    }
  });
});

describe('reportAt', () => {
  it('at ready is the report itself but for the findings', () => {
    const drawn = reportAt(fit, report, strokeRow(crew, 0));
    expect(drawn.findings).toEqual([]);
    expect(drawn.seats[0]!.stances.ready).toBe(report.seats[0]!.stances.ready);
    for (const contact of ['knee', 'rearFoot', 'frontFoot'] as const) {
      const { shares } = report.seats[0]!.support;
      expect(drawn.seats[0]!.support.shares[contact]).toBeCloseTo(shares[contact], 9);
    }
    expect(drawn.quantities).toBe(report.quantities);
  });

  it('at the catch stands where the catch was solved, and the boat lies as it lay then', () => {
    const drawn = reportAt(fit, report, strokeRow(crew, 1));
    expect(drawn.seats[0]!.stances.ready).toBe(report.seats[0]!.stances.catch);
    const [now, solved] = [drawn.afloat.ready, report.afloat.catch];
    if (now.kind !== 'afloat' || solved.kind !== 'afloat') throw new Error('not afloat');
    expect(now.trim).toBeCloseTo(solved.trim, 9);
    expect(drawn.afloat.catch).toBe(report.afloat.catch);
  });

  it('in the drive shows loads with the blade’s force: they carry the weight, and differ from those at rest', () => {
    const row = strokeRow(crew, 1.5);
    const { support } = reportAt(fit, report, row).seats[0]!;
    const weight = row.seats[0]!.stance.totalMassKg * GRAVITY;
    const { knee, rearFoot, frontFoot } = support.loadsN;
    expect(knee + rearFoot + frontFoot).toBeCloseTo(weight, 6);
    expect(support.loadsN).toEqual(row.seats[0]!.loadsN);
    expect(support.shares.knee + support.shares.rearFoot + support.shares.frontFoot).toBeCloseTo(1, 9);
    expect(Math.abs(support.shares.knee - report.seats[0]!.support.shares.knee)).toBeGreaterThan(0.02);
  });

  it('leaves an empty seat empty', () => {
    const pair = exampleFit([exampleSeat(), exampleSeat({ athlete: null })]);
    const solved = evaluateFit(pair);
    expect(reportAt(pair, solved, strokeRow(strokeOfFit(pair, solved), 1)).seats[1]).toBeNull();
  });
});

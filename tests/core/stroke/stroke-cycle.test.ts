import { describe, expect, it } from 'vitest';
import { bodyOfAthlete } from '../../../core/body/body-of-athlete.ts';
import { PEAK_OVER_MEAN } from '../../../core/document/stroke-defaults.ts';
import { boatState } from '../../../core/evaluation/boat-state.ts';
import { evaluateFit } from '../../../core/evaluation/evaluator.ts';
import { seatFrame, solveSeat } from '../../../core/evaluation/seat-state.ts';
import { norm, subtract } from '../../../core/frame/vec3.ts';
import { midDrive } from '../../../core/paddle/mid-drive.ts';
import type { Stance } from '../../../core/posture/stance.ts';
import { strokeCycle, strokeRow } from '../../../core/stroke/stroke-cycle.ts';
import { strokeSummary } from '../../../core/stroke/stroke-summary.ts';
import { notEmpty } from '../../not-empty.ts';
import { exampleFit, exampleSeat } from '../example/example-fit.ts';

const fit = exampleFit();
const report = evaluateFit(fit);
const boat = boatState(fit);
const solved = fit.seats.map((seat, index) =>
  solveSeat({ seat, body: bodyOfAthlete(seat.athlete!), frame: seatFrame(fit.boat, seat, index) }),
);
const crew = { boat, seats: solved, afloat: report.afloat.ready };
const rows = strokeCycle(crew, 20);

describe('strokeCycle', () => {
  it('passes through ready, catch and exit as the report has them', () => {
    for (const [at, phase] of [
      [0, 'ready'],
      [1, 'catch'],
      [2, 'exit'],
      [3, 'ready'],
    ] as const) {
      const row = rows.find((r) => r.at === at)!;
      const there = report.afloat[phase];
      expect(row.phase).toBe(phase);
      if (row.afloat.kind !== 'afloat' || there.kind !== 'afloat') throw new Error('not afloat');
      expect(row.afloat.bowOverStern).toBeCloseTo(there.bowOverStern, 8);
      expect(row.afloat.freeboardBow).toBeCloseTo(there.freeboardBow, 8);
    }
  });

  it('is smooth: trim and centre of mass never jump by more than a small part of their swing', () => {
    const summary = strokeSummary(rows)!;
    const trims = rows.map((r) => (r.afloat.kind === 'afloat' ? r.afloat.bowOverStern : Number.NaN));
    const travels = rows.map((r) => r.seats[0]!.travel.x);
    for (let i = 1; i < rows.length; i++) {
      expect(Math.abs(trims[i]! - trims[i - 1]!)).toBeLessThan(0.2 * summary.trim.by);
      expect(Math.abs(travels[i]! - travels[i - 1]!)).toBeLessThan(0.2 * summary.travel[0]!.by);
    }
  });

  it('the same row comes from any place of the slider as from the cycle', () => {
    const row = strokeRow(crew, rows[27]!.at);
    expect(row.seats[0]!.travel).toEqual(rows[27]!.seats[0]!.travel);
    expect(row.phase).toBeNull();
  });

  it('brings places outside the cycle inside', () => {
    expect(strokeRow(crew, -1).at).toBe(0);
    expect(strokeRow(crew, 9).at).toBe(3);
  });

  it('the centre of mass goes forward to the catch by centimetres, and the bow goes down with it', () => {
    const [ready, , atCatch] = [rows[0]!, rows[10]!, rows[20]!];
    expect(atCatch.seats[0]!.travel.x).toBeGreaterThan(0.02);
    expect(atCatch.seats[0]!.travel.x).toBeLessThan(0.3);
    if (ready.afloat.kind !== 'afloat' || atCatch.afloat.kind !== 'afloat') throw new Error('not afloat');
    expect(atCatch.afloat.bowOverStern).toBeLessThan(ready.afloat.bowOverStern);
    expect(atCatch.afloat.freeboardBow).toBeLessThan(ready.afloat.freeboardBow);
  });

  it('the loads hold up the weight at every instant, and only the drive has a blade force', () => {
    const weight = rows[0]!.seats[0]!.stance.totalMassKg * 9.80665;
    for (const row of notEmpty(rows)) {
      const { loadsN, bladeForceN } = row.seats[0]!;
      if (!loadsN) throw new Error('not afloat');
      expect(loadsN.knee + loadsN.rearFoot + loadsN.frontFoot).toBeCloseTo(weight, 6);
      if (row.at <= 1 || row.at >= 2) expect(bladeForceN).toBeCloseTo(0, 9);
      else expect(bladeForceN).toBeGreaterThan(0);
    }
  });

  it('the default force has the peak that single blades are reported with, and its mean is the drive force', () => {
    const forces = rows.filter((r) => r.at >= 1 && r.at <= 2).map((r) => r.seats[0]!.bladeForceN);
    const peak = Math.max(...forces);
    // 16.3 N·kg^(−2/3) × 80^(2/3); the rows stand an eighth of the drive apart and one of them at its peak.
    expect(peak).toBeCloseTo(302.63, 1);
    const mean = forces.reduce((sum, f) => sum + f, 0) / (forces.length - 1);
    expect(mean / (302.63 / PEAK_OVER_MEAN)).toBeCloseTo(1, 1);
    expect(PEAK_OVER_MEAN).toBeCloseTo(1.5708, 4);
  });

  it('the trunk is as far forward at mid-drive as the paddle’s length is found at: 35°', () => {
    const { angles } = strokeRow(crew, 1.5).seats[0]!.stance;
    expect((angles.trunkPitch * 180) / Math.PI).toBeCloseTo(35, 3);
    expect(angles.trunkPitch).toBeCloseTo(midDrive(solved[0]!).trunkPitch, 5);
  });

  it('bones keep their length on the way to a few per cent', () => {
    const bones = [
      ['kneelingKnee', 'kneelingHip'],
      ['midHip', 'midShoulder'],
      ['frontHip', 'frontKnee'],
      ['lowerShoulder', 'lowerElbow'],
      ['topElbow', 'topHand'],
    ] as const;
    const length = (points: Stance['points'], [a, b]: (typeof bones)[number]) =>
      norm(subtract(points[a], points[b]));
    for (const bone of notEmpty(bones)) {
      const whole = length(rows[0]!.seats[0]!.stance.points, bone);
      for (const row of rows) {
        const ratio = length(row.seats[0]!.stance.points, bone) / whole;
        expect(ratio, `${bone.join('–')} at ${row.at}`).toBeGreaterThan(0.95);
        expect(ratio, `${bone.join('–')} at ${row.at}`).toBeLessThan(1.02);
      }
    }
  });
});

describe('a crew with an empty seat', () => {
  const pair = exampleFit([exampleSeat(), exampleSeat({ athlete: null })]);
  const seats = pair.seats.map((seat, index) =>
    seat.athlete
      ? solveSeat({ seat, body: bodyOfAthlete(seat.athlete), frame: seatFrame(pair.boat, seat, index) })
      : null,
  );

  it('leaves the empty seat empty in every row and in the summary', () => {
    const cycle = strokeCycle({ boat: boatState(pair), seats }, 2);
    expect(cycle).toHaveLength(7);
    for (const row of cycle) expect(row.seats[1]).toBeNull();
    expect(strokeSummary(cycle)!.travel[1]).toBeNull();
  });
});

describe('a boat that does not float', () => {
  it('has rows but no summary', () => {
    const sunk = boatState({ ...fit, boat: { ...fit.boat, massKg: 900 } });
    const cycle = strokeCycle({ boat: sunk, seats: solved }, 1);
    expect(cycle.every((row) => row.afloat.kind !== 'afloat')).toBe(true);
    expect(strokeSummary(cycle)).toBeNull();
    expect(strokeSummary([])).toBeNull();
  });
});

import { describe, expect, it } from 'vitest';
import type { Seat } from '../../core/document/seat-schema.ts';
import { inventedSetOut } from '../core/setout/invented-set-out.ts';

/**
 * Wedges, turns and diagonals against right triangles whose sides are whole numbers (Pythagorean triples, Euclid X 29) and
 * against printed five-figure tables of sines and tangents. The sheet rounds to whole millimetres.
 */

const { seat } = inventedSetOut().work;
const DEG = 180 / Math.PI;

const rested = (more: Partial<Seat['rearRest']>) =>
  inventedSetOut({ seat: { rearRest: { ...seat.rearRest, ...more } } });
const padded = (more: Partial<Seat['kneePad']>) =>
  inventedSetOut({ seat: { kneePad: { ...seat.kneePad, ...more } } });

describe('a rest whose face is a triangle of whole sides', () => {
  // height, ahead, slope
  const TRIPLES = [
    [40, 30, 50],
    [60, 25, 65],
    [80, 60, 100],
    [72, 21, 75],
  ] as const;

  it.each(TRIPLES)('%i up over %i aft is %i up the slope', (up, ahead, slope) => {
    const out = rested({ heightM: up / 1000, tiltDeg: Math.atan2(up, ahead) * DEG });
    const tilt = out.angles.find(({ angle }) => angle === 'restTilt')!;
    expect([tilt.byMm, tilt.overMm]).toEqual([up, ahead]);
    expect(out.heights.find(({ height }) => height === 'restEdge')!.check.lengthMm).toBe(slope);
  });
});

describe('a pad whose diagonals are whole', () => {
  it.each([
    [240, 100, 260],
    [240, 180, 300],
    [280, 96, 296],
  ])('%i × %i has diagonals of %i, however it is turned', (length, width, diagonal) => {
    for (const recessTurnDeg of [0, 7, 12, 25]) {
      const out = padded({ lengthM: length / 1000, widthM: width / 1000, recessTurnDeg });
      for (const [from, to] of [
        ['P1', 'P3'],
        ['P2', 'P4'],
      ]) {
        const check = out.checks.find((each) => each.from === from && each.to === to)!;
        // Each mark is rounded to a whole millimetre in both directions.
        expect(Math.abs(check.lengthMm - diagonal)).toBeLessThanOrEqual(1.5);
      }
    }
  });
});

describe('turns laid off with a tape, by a printed table of tangents', () => {
  /** Angle in degrees and its tangent to five figures. */
  const TANGENTS = [
    [5, 0.08749],
    [8, 0.14054],
    [10, 0.17633],
    [12, 0.21256],
    [15, 0.26795],
    [20, 0.36397],
    [25, 0.46631],
  ] as const;

  it.each(TANGENTS)('%i° is %f of the length', (degrees, tangent) => {
    const out = padded({ recessTurnDeg: degrees });
    const turn = out.angles.find(({ angle }) => angle === 'padTurn')!;
    expect(turn.overMm).toBe(200);
    expect(Math.abs(turn.byMm - 200 * tangent)).toBeLessThanOrEqual(0.5 + 1e-3);
  });
});

describe('a wedge under a foot of 260, by a printed table of sines', () => {
  const SINES = [
    [3, 0.05234],
    [5, 0.08716],
    [8, 0.13917],
    [10, 0.17365],
    [15, 0.25882],
  ] as const;

  it.each(SINES)('of %i° raises the toes by %f of the foot', (wedgeDeg, sine) => {
    const frontFoot = { ...seat.frontFoot, heightM: 0.01, wedgeDeg };
    const out = inventedSetOut({ seat: { frontFoot } });
    const toes = out.heights.find(({ height }) => height === 'toes')!;
    expect(Math.abs(toes.aboveFloorMm - (10 + out.fittings.foot.length * sine))).toBeLessThanOrEqual(0.51);
  });
});

describe('check dimensions of a foot set by whole triangles', () => {
  it('M to F is the long side of 3-4-5, 5-12-13 and 8-15-17', () => {
    for (const [forward, out, long] of [
      [400, 300, 500],
      [360, 150, 390],
      [450, 240, 510],
    ] as const) {
      const frontFoot = { ...seat.frontFoot, forwardM: forward / 1000, outM: -out / 1000 };
      const { checks } = inventedSetOut({ seat: { frontFoot } });
      expect(checks.find(({ from, to }) => from === 'M' && to === 'F')!.lengthMm).toBe(long);
    }
  });
});

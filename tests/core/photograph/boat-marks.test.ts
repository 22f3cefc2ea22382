import { describe, expect, it } from 'vitest';
import { BOAT_MARKS, boatMarks } from '../../../core/photograph/boat-marks.ts';
import { exampleFit, exampleSeat } from '../example/example-fit.ts';

describe('points of the boat for a picture', () => {
  const marks = boatMarks(exampleFit(), 0)!;

  it('lie where the boat has them', () => {
    expect(Object.keys(marks)).toEqual([...BOAT_MARKS]);
    // The example boat is 5.2 m long, 44 cm wide at the sheer amidships and 30 cm deep there; its board's top is 6 cm up.
    expect(marks.bow.x - marks.stern.x).toBeCloseTo(5.2, 6);
    expect(marks.sheerPort.y).toBeCloseTo(0.22, 3);
    expect(marks.sheerStarboard).toEqual({ ...marks.sheerPort, y: -marks.sheerPort.y });
    expect(marks.seatMark).toEqual({ x: 0, y: 0, z: 0.06 });
    expect(marks.sheerForePort.x - marks.sheerAftPort.x).toBeCloseTo(2, 12);
  });

  it('have the pad’s corners around the knee, at the pad’s height and over', () => {
    const corners = [marks.padForePort, marks.padForeStarboard, marks.padAftPort, marks.padAftStarboard];
    const middle = corners.reduce((sum, { x }) => sum + x / 4, 0);
    expect(middle).toBeCloseTo(-0.175, 1);
    for (const { z } of corners) expect(z).toBeGreaterThan(0.1);
    expect(marks.restPort.x).toBeCloseTo(-0.6, 0);
  });

  it('belong to the seat that is asked for', () => {
    const pair = exampleFit([exampleSeat(), exampleSeat()]);
    expect(boatMarks(pair, 0)!.seatMark.x - boatMarks(pair, 1)!.seatMark.x).toBeCloseTo(1.15, 9);
    expect(boatMarks(pair, 2)).toBeNull();
  });
});

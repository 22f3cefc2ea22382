import { describe, expect, it } from 'vitest';
import { boardHalfWidthAt, boardStations, boardTopAt, insideBoard } from '../../../core/parts/board.ts';

const level = { heightM: 0.03, widthM: 0.24, aftEndXM: -1, foreEndXM: 1, thicknessM: 0.008 };
const tapered = {
  ...level,
  outline: [
    { xM: 1, widthM: 0.2 },
    { xM: -1, widthM: 0.3 },
  ],
  profile: [
    { xM: -1, heightM: 0.05 },
    { xM: 0.2, heightM: 0.03 },
  ],
};

describe('the floorboard', () => {
  it('is level and straight where nothing else is said', () => {
    expect(boardTopAt(level, 0.4)).toBe(0.03);
    expect(boardHalfWidthAt(level, 0.4)).toBe(0.12);
  });

  it('goes straight from one given place to the next, whatever their order, and on as at the last', () => {
    expect(boardHalfWidthAt(tapered, 0)).toBeCloseTo(0.125, 12);
    expect(boardHalfWidthAt(tapered, 5)).toBeCloseTo(0.1, 12);
    expect(boardTopAt(tapered, -0.4)).toBeCloseTo(0.04, 12);
    expect(boardTopAt(tapered, 0.9)).toBe(0.03);
  });

  it('has a place inside by its least distance to side or end', () => {
    expect(insideBoard(level, { x: 0, y: -0.1 })).toBeCloseTo(0.02, 12);
    expect(insideBoard(level, { x: 0.99, y: 0 })).toBeCloseTo(0.01, 12);
    expect(insideBoard(level, { x: -1.3, y: 0 })).toBeCloseTo(-0.3, 12);
    expect(insideBoard(tapered, { x: 0, y: 0.15 })).toBeCloseTo(-0.025, 12);
  });

  it('names the stations where it bends, with its ends', () => {
    expect(boardStations(level)).toEqual([-1, 1]);
    expect(boardStations(tapered)).toEqual([-1, 0.2, 1]);
  });
});

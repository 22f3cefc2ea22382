import { describe, expect, it } from 'vitest';
import { footShape, padShape, restShape, restTilt } from '../../../core/parts/part-shapes.ts';

const frame = { stationX: 1, floorZ: 0.03, side: 'left' as const };
const right = { ...frame, side: 'right' as const };
const DEG = Math.PI / 180;

describe('the side profile of a pad', () => {
  const sizes = {
    aftM: 0.19,
    outM: 0.03,
    heightM: 0.12,
    recessTurnDeg: 12,
    recessDepthM: 0.02,
    lengthM: 0.26,
    widthM: 0.16,
  };

  it('is a rectangle, 45 % of its length ahead of the knee, as high as bearing and recess together', () => {
    const { shape } = padShape(sizes, frame);
    expect(shape.baseFore).toBeCloseTo(0.117, 12);
    expect(shape.baseAft).toBeCloseTo(-0.143, 12);
    expect([shape.topFore, shape.topAft]).toEqual([shape.baseFore, shape.baseAft]);
    expect(shape.half).toBeCloseTo(0.08, 12);
    expect(shape.foreHeight).toBeCloseTo(0.14, 12);
    expect(shape.aftHeight).toBeCloseTo(0.14, 12);
  });

  it('stands aft of the mark and out to the kneeling side, its aft end turned to the off side', () => {
    const { place } = padShape(sizes, frame);
    expect(place.x).toBeCloseTo(0.81, 12);
    expect(place.y).toBeCloseTo(0.03, 12);
    expect(place.turn).toBeCloseTo(12 * DEG, 12);
    const other = padShape(sizes, right).place;
    expect([other.x, other.y, other.turn]).toEqual([place.x, -place.y, -place.turn]);
  });
});

describe('the side profile of a rear rest', () => {
  const sizes = { aftM: 0.6, outM: -0.04, heightM: 0.05, turnDeg: 20, tiltDeg: 60, widthM: 0.14 };

  it('slopes from the floorboard up to its edge at 60°: its foot lies 5 cm · cot 60° ahead, the top behind the edge is flat', () => {
    const { shape } = restShape(sizes, frame);
    expect(shape.baseFore).toBeCloseTo(0.05 / Math.sqrt(3), 12);
    expect(shape.topFore).toBe(0);
    expect(shape.topAft).toBe(shape.baseAft);
    expect(shape.baseAft).toBeLessThan(0);
    expect([shape.foreHeight, shape.aftHeight]).toEqual([0.05, 0.05]);
    expect(shape.half).toBeCloseTo(0.07, 12);
  });

  it('is upright at 90°, and never flatter than can be made', () => {
    expect(restShape({ ...sizes, tiltDeg: 90 }, frame).shape.baseFore).toBe(0);
    expect(restTilt({ tiltDeg: 60 })).toBe(60);
    expect(restTilt({ tiltDeg: 3 })).toBe(15);
  });
});

describe('what the front foot stands on', () => {
  const sizes = { forwardM: 0.4, outM: -0.06, heightM: 0.01, toeOutDeg: 6, wedgeDeg: 10 };

  it('is a wedge under a foot of 26 cm: 25.6 cm of board, toes 4.5 cm over the heel', () => {
    const { shape, place } = footShape(sizes, 0.26, frame);
    expect(shape.baseFore).toBeCloseTo(0.2561, 4);
    expect([shape.topFore, shape.baseAft, shape.topAft]).toEqual([shape.baseFore, 0, 0]);
    expect(shape.foreHeight - shape.aftHeight).toBeCloseTo(0.0451, 4);
    expect(shape.aftHeight).toBe(0.01);
    expect(place.x).toBeCloseTo(1.4, 12);
    expect(place.turn).toBeCloseTo(-6 * DEG, 12);
  });

  it('is never nothing: on the bare board there is still a sheet', () => {
    const { shape } = footShape({ ...sizes, heightM: 0, wedgeDeg: 0 }, 0.26, frame);
    expect(shape.aftHeight).toBeGreaterThan(0);
    expect(shape.foreHeight).toBe(shape.aftHeight);
    expect(shape.aftHeight).toBeLessThan(0.005);
  });
});

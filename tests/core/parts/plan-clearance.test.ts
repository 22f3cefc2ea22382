import { describe, expect, it } from 'vitest';
import { planClearance } from '../../../core/parts/plan-clearance.ts';

const square = (x: number, y: number, half = 0.5) => [
  { x: x + half, y: y + half, z: 0 },
  { x: x - half, y: y + half, z: 0 },
  { x: x - half, y: y - half, z: 0 },
  { x: x + half, y: y - half, z: 0 },
];

describe('planClearance', () => {
  it('is the gap between facing edges', () => {
    expect(planClearance(square(0, 0), square(1.3, 0))).toBeCloseTo(0.3, 12);
  });

  it('is the distance between corners where only corners face', () => {
    expect(planClearance(square(0, 0), square(1.3, 1.4))).toBeCloseTo(0.5, 12);
  });

  it('is minus the overlap, whichever way the outlines run', () => {
    expect(planClearance(square(0, 0), square(0.9, 0.2))).toBeCloseTo(-0.1, 12);
    expect(planClearance([...square(0, 0)].reverse(), square(0.9, 0.2))).toBeCloseTo(-0.1, 12);
  });
});

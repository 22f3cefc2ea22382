import { describe, expect, it } from 'vitest';
import { padOutline, planClearance, restOutline } from '../../../core/fit/fitting-outlines.ts';
import { kneePadSchema, rearRestSchema } from '../../../core/fit/seat-schema.ts';

const frame = { stationX: 0.4, floorZ: 0.03, side: 'left' as const };
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

describe('fitting outlines', () => {
  const pad = kneePadSchema.parse({ aftM: 0.175, outM: 0.035, heightM: 0.11, recessTurnDeg: 15 });

  it('turn the pad’s aft end to the off side', () => {
    const outline = padOutline(pad, frame);
    const aft = outline.toSorted((a, b) => a.x - b.x).slice(0, 2);
    expect((aft[0]!.y + aft[1]!.y) / 2).toBeLessThan(pad.outM);
  });

  it('mirror exactly for the other side', () => {
    const left = padOutline(pad, frame);
    const right = padOutline(pad, { ...frame, side: 'right' });
    expect(right).toEqual(left.map((p) => ({ ...p, y: -p.y })));
  });

  it('put the rest’s bearing edge where it is set', () => {
    const rest = rearRestSchema.parse({ aftM: 0.6, outM: -0.1, heightM: 0.05, turnDeg: 20 });
    const [a, b] = restOutline(rest, frame);
    expect((a!.x + b!.x) / 2).toBeCloseTo(frame.stationX - 0.6, 12);
    expect((a!.y + b!.y) / 2).toBeCloseTo(-0.1, 12);
    expect(Math.hypot(a!.x - b!.x, a!.y - b!.y)).toBeCloseTo(rest.widthM, 12);
  });
});

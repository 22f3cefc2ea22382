import { describe, expect, it } from 'vitest';
import { REST_DEPTH } from '../../../core/parts/part-shapes.ts';
import { restBaseCorners, restBlock, restProfile } from '../../../core/setout/rest-block.ts';
import { inventedSetOut } from './invented-set-out.ts';
import { areaOf } from './read-shapes.ts';

const DEG = Math.PI / 180;

function rest(tiltDeg: number, side: 'left' | 'right' = 'left', heightM = 0.05) {
  const { seat, ...work } = inventedSetOut({ side }).work;
  return restBlock({ ...work, seat: { ...seat, rearRest: { ...seat.rearRest, tiltDeg, heightM } } });
}

describe('the rear rest as it is made', () => {
  it.each([30, 45, 60, 75])('has a face of %i°: 50 up over its cotangent ahead', (tiltDeg) => {
    const block = rest(tiltDeg);
    expect(block.footAhead).toBeCloseTo(50 / Math.tan(tiltDeg * DEG), 9);
    expect(block.slope).toBeCloseTo(50 / Math.sin(tiltDeg * DEG), 9);
    expect(Math.hypot(block.footAhead, block.height)).toBeCloseTo(block.slope, 9);
    const [foot, edge] = restProfile(block);
    expect(Math.atan2(edge![1] - foot![1], foot![0] - edge![0]) / DEG).toBeCloseTo(tiltDeg, 9);
  });

  it('of 45° and 50 mm runs 50 ahead and 70.7 up its slope', () => {
    const block = rest(45);
    expect(block.footAhead).toBeCloseTo(50, 9);
    expect(block.slope).toBeCloseTo(50 * Math.SQRT2, 9);
  });

  it('upright has its face over its foot', () => {
    const block = rest(90);
    expect(block.footAhead).toBe(0);
    expect(block.slope).toBeCloseTo(50, 9);
  });

  it('is never flatter than a wedge can be', () => {
    expect(rest(4).tiltDeg).toBe(15);
    expect(rest(4).footAhead).toBeCloseTo(50 / Math.tan(15 * DEG), 9);
  });

  it('stands aft of the mark and turns toward the middle, mirrored for the other side', () => {
    const [left, right] = [rest(60), rest(60, 'right')];
    expect(left.place.origin).toEqual([-620, -100]);
    expect(right.place.origin).toEqual([-620, 100]);
    expect(left.place.turn).toBeCloseTo(20 * DEG, 12);
    expect(right.place.turn).toBeCloseTo(-20 * DEG, 12);
  });

  it('has a profile of face, flat top and base, and a base as wide as the rest', () => {
    const block = rest(60);
    const depth = REST_DEPTH * 1000;
    expect(block.depthBehind).toBeCloseTo(depth, 9);
    const area = Math.abs(areaOf(restProfile(block)));
    expect(area).toBeCloseTo(50 * depth + (50 * block.footAhead) / 2, 6);
    const base = restBaseCorners(block);
    expect(Math.abs(areaOf(base))).toBeCloseTo(140 * (depth + block.footAhead), 6);
  });

  it('on rails is cut off at their top: its face begins where it comes down to them', () => {
    const rails = [{ fitting: 'rearRest' as const, apartM: 0.06, heightM: 0.012, holeM: 0.0085 }];
    const { rest: block } = inventedSetOut({ hardware: { rails } }).fittings;
    expect(block.height).toBeCloseTo(50, 9);
    expect(block.footAhead).toBeCloseTo((50 - 12) / Math.tan(60 * DEG), 9);
    const [foot, edge] = restProfile(block);
    expect(foot![1]).toBeCloseTo(12, 9);
    expect(Math.atan2(edge![1] - foot![1], foot![0] - edge![0]) / DEG).toBeCloseTo(60, 9);
  });
});

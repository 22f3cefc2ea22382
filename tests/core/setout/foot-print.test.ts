import { describe, expect, it } from 'vitest';
import { footPrint } from '../../../core/setout/foot-print.ts';
import { areaOf, boxOf } from './read-shapes.ts';

const right = footPrint({ foot: 'right', length: 260, breadth: 100 });
const left = footPrint({ foot: 'left', length: 260, breadth: 100 });

describe('the print of a foot', () => {
  it('is exactly as long and as broad as the foot', () => {
    for (const print of [right, left]) {
      const { left: heel, right: toes, low, high } = boxOf(print);
      expect(heel).toBeCloseTo(0, 9);
      expect(toes).toBeCloseTo(260, 9);
      expect(high).toBeCloseTo(50, 9);
      expect(low).toBeCloseTo(-50, 9);
    }
  });

  it('of the left foot is the mirror image of the right', () => {
    right.forEach(([x, y], k) => {
      expect(left[k]![0]).toBe(x);
      expect(left[k]![1]).toBeCloseTo(-y, 12);
    });
  });

  it('has the longest toe on the inner side: to port for a right foot, toes ahead', () => {
    const tip = right.reduce((best, point) => (point[0] > best[0] ? point : best));
    expect(tip[1]).toBeGreaterThan(10);
  });

  it('is one ring that does not cross itself, narrower at heel and arch than at the ball', () => {
    const across = (share: number) => {
      const near = right.filter(([x]) => Math.abs(x - share * 260) < 8).map(([, y]) => y);
      return Math.max(...near) - Math.min(...near);
    };
    expect(across(0.45)).toBeLessThan(across(0.75));
    expect(across(0.12)).toBeLessThan(across(0.75));
    expect(across(0.75)).toBeGreaterThan(90);
    const turning = right.reduce((sum, point, k) => {
      const [a, b] = [right[(k + 1) % right.length]!, right[(k + 2) % right.length]!];
      const first = Math.atan2(a[1] - point[1], a[0] - point[0]);
      const second = Math.atan2(b[1] - a[1], b[0] - a[0]);
      const turn = second - first;
      return sum + Math.atan2(Math.sin(turn), Math.cos(turn));
    }, 0);
    expect(Math.abs(turning)).toBeCloseTo(2 * Math.PI, 6);
  });

  it('covers what a sole covers: between six and nine tenths of its rectangle', () => {
    const share = Math.abs(areaOf(right)) / (260 * 100);
    expect(share).toBeGreaterThan(0.6);
    expect(share).toBeLessThan(0.9);
  });
});

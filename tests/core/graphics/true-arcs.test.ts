import { describe, expect, it } from 'vitest';
import { withTrueArcs } from '../../../core/graphics/true-arcs.ts';

const round = (from: number, to: number, [a, b] = [40, 40]) =>
  Array.from({ length: 21 }, (_, k) => {
    const turn = from + ((to - from) * k) / 20;
    return [10 + a! * Math.cos(turn), 5 + b! * Math.sin(turn)] as const;
  });

describe('a line through points', () => {
  it('has a half round between two straights as arcs, whose bulges add up to its turn', () => {
    const points = [[50, -60] as const, ...round(0, Math.PI), [-30, -60] as const];
    const corners = withTrueArcs(points);
    expect(corners.length).toBe(4);
    const turns = corners.map(({ bulge }) => 4 * Math.atan(bulge));
    expect(turns.reduce((sum, turn) => sum + turn, 0)).toBeCloseTo(Math.PI, 9);
    expect(corners.at(-1)).toEqual({ at: [-30, -60], bulge: 0 });
    // The other way round it turns the other way.
    const back = withTrueArcs(points.toReversed()).map(({ bulge }) => 4 * Math.atan(bulge));
    expect(back.reduce((sum, turn) => sum + turn, 0)).toBeCloseTo(-Math.PI, 9);
  });

  it('keeps every point of an ellipse and of straight lines', () => {
    const ellipse = round(0, Math.PI, [60, 40]);
    expect(withTrueArcs(ellipse).map(({ at }) => at)).toEqual(ellipse);
    const straight = Array.from({ length: 9 }, (_, k) => [k, 2 * k] as const);
    expect(withTrueArcs(straight).every(({ bulge }) => bulge === 0)).toBe(true);
  });
});

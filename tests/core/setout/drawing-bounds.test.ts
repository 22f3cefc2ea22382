import { describe, expect, it } from 'vitest';
import { boundsOf } from '../../../core/setout/drawing-bounds.ts';
import { circle, dimension, line, textAt } from '../../../core/setout/template-drawing.ts';

describe('the bounds of a drawing', () => {
  it('of lines and circles are their outermost points', () => {
    const shapes = [line('outline', [-3, 2], [8, -1]), circle('drill', [10, 10], 3)];
    expect(boundsOf(shapes)).toEqual({ minX: -3, minY: -1, maxX: 13, maxY: 13 });
  });

  it('take in a dimension with its line, not only its object', () => {
    const { maxY } = boundsOf([dimension([0, 0], [100, 0], { offset: 10, text: '100' })]);
    expect(maxY).toBeGreaterThanOrEqual(12);
    const scaled = boundsOf([dimension([0, 0], [1000, 0], { offset: 10, text: '1000' })], 0.1);
    expect(scaled.maxY).toBeGreaterThanOrEqual(120);
  });

  it('hold words as they are set: from, around or up to their anchor, and turned', () => {
    const wide = boundsOf([textAt('HEEL', [0, 0], { height: 5 })]);
    expect(wide.minX).toBe(0);
    expect(wide.maxX).toBeGreaterThan(4 * 5 * 0.5);
    expect(wide.maxY).toBeCloseTo(5, 9);
    expect(wide.minY).toBeLessThan(0);
    const end = boundsOf([textAt('HEEL', [0, 0], { height: 5, anchor: 'end' })]);
    expect(end.minX).toBeCloseTo(-wide.maxX, 9);
    expect(end.maxX).toBeCloseTo(0, 9);
    const middle = boundsOf([textAt('HEEL', [0, 0], { height: 5, anchor: 'middle' })]);
    expect(middle.maxX).toBeCloseTo(wide.maxX / 2, 9);
    const up = boundsOf([textAt('HEEL', [0, 0], { height: 5, turnDeg: 90 })]);
    expect(up.maxY).toBeCloseTo(wide.maxX, 9);
    expect(up.minX).toBeCloseTo(-5, 9);
  });

  it('grow with the scale of reduction for words, which keep their size on the paper', () => {
    const full = boundsOf([textAt('M', [0, 0], { height: 3 })]);
    const tenth = boundsOf([textAt('M', [0, 0], { height: 3 })], 0.1);
    expect(tenth.maxX).toBeCloseTo(10 * full.maxX, 9);
  });

  it('of nothing are refused: there would be nothing to draw', () => {
    expect(() => boundsOf([])).toThrow(RangeError);
  });
});

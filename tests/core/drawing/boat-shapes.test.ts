import { describe, expect, it } from 'vitest';
import { boatParts, boatShapes, sectionLine } from '../../../core/drawing/boat-shapes.ts';
import { pointsOf, ringsOf, type Shape } from '../../../core/graphics/shape.ts';
import { box } from '../../reference/hydro-shapes.ts';

/** A box 5 m long, 0.5 m wide and 0.4 m deep: every drawn measure is known. */
const hull = box();
const board = { heightM: 0.05, widthM: 0.24, aftEndXM: -1, foreEndXM: 0.8, thicknessM: 0.008 };
const drawn = (span: readonly [number, number] = [-3, 3]) => ({ hull, board, span, cutX: 0 });

/** Left, right, low and high of some closed areas, metres in the view. */
function boxOf(shapes: readonly Shape[]) {
  const points = ringsOf(shapes).flatMap(pointsOf);
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
}
function expectBox(shapes: readonly Shape[], wanted: readonly number[]): void {
  for (const [k, value] of boxOf(shapes).entries()) expect(value).toBeCloseTo(wanted[k]!, 9);
}

describe('a box as a boat', () => {
  it('has its own length, breadth and depth in the three views', () => {
    expectBox([boatParts(drawn(), 'plan').hull], [-2.5, 2.5, -0.25, 0.25]);
    expectBox([boatParts(drawn(), 'profile').hull], [-2.5, 2.5, 0, 0.4]);
    expectBox([boatParts(drawn(), 'section').hull], [-0.25, 0.25, 0, 0.4]);
  });

  it('has its board where it lies, thickness downward', () => {
    expectBox([boatParts(drawn(), 'plan').board], [-1, 0.8, -0.12, 0.12]);
    expectBox([boatParts(drawn(), 'profile').board], [-1, 0.8, 0.042, 0.05]);
    expectBox([boatParts(drawn(), 'section').board], [-0.12, 0.12, 0.042, 0.05]);
  });

  it('ends where the picture ends, and has a line across only where the boat itself ends', () => {
    expectBox([boatParts(drawn([-0.5, 0.5]), 'plan').hull], [-0.5, 0.5, -0.25, 0.25]);
    expectBox([boatParts(drawn([-0.5, 0.5]), 'plan').board], [-0.5, 0.5, -0.12, 0.12]);
    const lines = (span: readonly [number, number]) => boatParts(drawn(span), 'plan').edge.lines.length;
    expect(lines([-0.5, 0.5])).toBe(2);
    expect(lines([-3, 0.5])).toBe(3);
    expect(lines([-0.5, 3])).toBe(3);
    expect(lines([-3, 3])).toBe(4);
  });

  it('is painted hull, edge, board, from the far to the near', () => {
    expect(boatShapes(drawn(), 'plan').map(({ of }) => of)).toEqual(['hull', 'hull', 'board']);
  });

  it('is cut from sheer to sheer, port to the left as seen from behind', () => {
    const line = sectionLine(hull, 0);
    expect(line[0]![0]).toBeCloseTo(-0.25, 9);
    expect(line.at(-1)![0]).toBeCloseTo(0.25, 9);
    for (const [k, [x, z]] of line.entries()) {
      const [mirrored, height] = line[line.length - 1 - k]!;
      expect(x).toBeCloseTo(-mirrored, 12);
      expect(z).toBeCloseTo(height, 12);
    }
  });
});

import { describe, expect, it } from 'vitest';
import { dimensionLines, leftNormal } from '../../../core/setout/dimension-lines.ts';
import { dimension, type MillimetrePoint, type PlainShape } from '../../../core/setout/template-drawing.ts';
import { distance, lettersOf, linesOn } from './read-shapes.ts';

const at = (from: MillimetrePoint, to: MillimetrePoint, offset: number, text = '100') =>
  dimension(from, to, { offset, text });

/** The parts that a drawing office draws a dimension with: witness lines, the dimension line, two arrowheads. */
function partsOf(shapes: readonly PlainShape[], between: number) {
  const lines = linesOn(shapes, 'dimension').map(({ points }) => points);
  return {
    arrows: lines.filter((points) => points.length === 3),
    whole: lines.find((points) => {
      const [a, b] = points;
      return points.length === 2 && distance(a!, b!) >= between - 1e-9 && a![0] !== b![0];
    })!,
    figure: lettersOf(shapes)[0]!,
  };
}

describe('the normal on the left', () => {
  it('of a line to the right points up, of a line up to the left', () => {
    expect(leftNormal([0, 0], [5, 0])).toEqual([-0, 1]);
    expect(leftNormal([0, 0], [0, 5])).toEqual([-1, 0]);
    const [x, y] = leftNormal([1, 1], [4, 5]);
    expect(Math.hypot(x, y)).toBeCloseTo(1, 12);
    expect(x * 3 + y * 4).toBeCloseTo(0, 12);
  });

  it('of no line points up, so that nothing becomes NaN', () => {
    expect(leftNormal([3, 3], [3, 3])).toEqual([0, 1]);
  });
});

describe.each([1, 0.1, 0.05])('a dimension at scale %f', (scale) => {
  const given = at([0, 0], [2000, 0], 10, '2000');
  const { arrows, whole, figure } = partsOf(dimensionLines(given, scale), 2000);

  it('runs beside its object, at its offset on the paper, from end to end', () => {
    expect(whole).toEqual([
      [0, 10 / scale],
      [2000, 10 / scale],
    ]);
  });

  it('has its arrow points on the ends, inside', () => {
    expect(arrows.map(([, tip]) => tip)).toEqual([
      [0, 10 / scale],
      [2000, 10 / scale],
    ]);
    expect(arrows[0]![0]![0]).toBeGreaterThan(0);
    expect(arrows[1]![0]![0]).toBeLessThan(2000);
  });

  it('has arrowheads of one size on the paper at every scale', () => {
    expect(arrows[0]![0]![0] * scale).toBeCloseTo(2.5, 9);
  });

  it('carries its figure over the middle of the line', () => {
    expect(figure.at[0]).toBeCloseTo(1000, 6);
    expect((figure.at[1] - 10 / scale) * scale).toBeCloseTo(1, 9);
    expect(figure).toMatchObject({ text: '2000', anchor: 'middle', turnDeg: 0 });
  });

  it('has witness lines that leave a gap at the object and run past the line', () => {
    const witnesses = linesOn(dimensionLines(given, scale), 'dimension')
      .map(({ points }) => points)
      .filter((points) => points.length === 2 && points[0]![0] === points[1]![0]);
    expect(witnesses).toHaveLength(2);
    for (const [near, far] of witnesses) {
      expect(near![1] * scale).toBeCloseTo(1.5, 9);
      expect(far![1] * scale).toBeCloseTo(12, 9);
    }
  });
});

describe('a dimension too short for its arrows', () => {
  const shapes = dimensionLines(at([0, 0], [5, 0], 8, '5'), 1);
  const { arrows, whole, figure } = partsOf(shapes, 5);

  it('has them outside, pointing at each other', () => {
    expect(arrows.map(([, tip]) => tip![0])).toEqual([0, 5]);
    expect(arrows[0]![0]![0]).toBeLessThan(0);
    expect(arrows[1]![0]![0]).toBeGreaterThan(5);
  });

  it('has its figure beyond the arrow, over the line that is drawn out for it', () => {
    const [start, end] = whole;
    expect(start![0]).toBeLessThan(-2.5);
    expect(figure.at[0]).toBeGreaterThan(5 + 2.5);
    expect(figure.at[0]).toBeLessThan(end![0]);
  });

  it('has room for longer figures', () => {
    const reach = (text: string) => partsOf(dimensionLines(at([0, 0], [5, 0], 8, text), 1), 5).whole[1]![0];
    expect(reach('6 7/8')).toBeGreaterThan(reach('5') + 5);
  });
});

describe('a dimension in any direction', () => {
  it.each([
    [[0, 0], [0, 100], 90],
    [[0, 100], [0, 0], 90],
    [[100, 0], [0, 0], 0],
    [[0, 0], [70, 70], 45],
    [[0, 0], [-70, 70], -45],
  ] as const)('from %j to %j is read from below or from the right', (from, to, turnDeg) => {
    const { figure } = partsOf(dimensionLines(at(from, to, 10), 1), 50);
    expect(figure.turnDeg).toBeCloseTo(turnDeg, 9);
  });

  it('stands on the other side for an offset below nothing', () => {
    const { whole } = partsOf(dimensionLines(at([0, 0], [100, 0], -10), 1), 100);
    expect(whole.map(([, y]) => y)).toEqual([-10, -10]);
  });

  it('on its object needs no witness lines', () => {
    const lines = linesOn(dimensionLines(at([0, 0], [100, 0], 0), 1), 'dimension');
    expect(lines).toHaveLength(3);
  });
});

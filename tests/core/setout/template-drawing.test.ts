import { describe, expect, it } from 'vitest';
import {
  circle,
  crossLines,
  dimension,
  line,
  ring,
  shifted,
  textAt,
} from '../../../core/setout/template-drawing.ts';

describe('shapes of a drawing', () => {
  it('are moved whole: lines, circles, words and both ends of dimensions', () => {
    const moved = shifted(
      [
        line('outline', [0, 0], [1, 2]),
        circle('drill', [5, 5], 3),
        textAt('K', [1, 1]),
        dimension([0, 0], [10, 0], { offset: 4, text: '10' }),
      ],
      [100, -10],
    );
    expect(moved).toMatchObject([
      { kind: 'line', lines: [[100, -10, 101, -8]] },
      { at: [105, -5], radius: 3 },
      { at: [101, -9] },
      { from: [100, -10], to: [110, -10], offset: 4 },
    ]);
  });

  it('are crosses of two equal arms', () => {
    const [level, upright] = crossLines('centreMark', [3, 4], 5);
    expect(level!.lines).toEqual([[-2, 4, 8, 4]]);
    expect(upright!.lines).toEqual([[3, -1, 3, 9]]);
  });

  it('are open lines and closed rings, with plain lettering of 3.5 mm', () => {
    expect(line('axis', [0, 0], [1, 1]).closed).toBeUndefined();
    expect(
      ring('outline', [
        [0, 0],
        [1, 0],
        [0, 1],
      ]),
    ).toMatchObject({ closed: true });
    expect(textAt('FORE', [1, 2])).toEqual({
      kind: 'text',
      of: 'lettering',
      role: 'lettering',
      at: [1, 2],
      height: 3.5,
      text: 'FORE',
      anchor: 'start',
      turnDeg: 0,
    });
  });

  it('moved there and back are where they were', () => {
    const shapes = [circle('drill', [1, 2], 3), textAt('K', [4, 5]), line('edge', [0, 0], [9, 9])];
    expect(shifted(shifted(shapes, [7, -8]), [-7, 8])).toEqual(shapes);
  });
});

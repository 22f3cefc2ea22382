import { describe, expect, it } from 'vitest';
import { ring, type TemplateDrawing } from '../../../core/setout/template-drawing.ts';
import { tilingOf } from '../../../core/setout/tiling.ts';
import { allLines } from './read-shapes.ts';

/** A frame of three pages by three: its middle page shows nothing. */
const frame: TemplateDrawing = {
  id: 'floorboard',
  title: 'A frame',
  seen: '',
  shapes: [
    ring('outline', [
      [0, 0],
      [500, 0],
      [500, 700],
      [0, 700],
    ]),
  ],
};

describe('pages of a template', () => {
  it('are not made where nothing would show on them, also inside a ring', () => {
    const { tiles, columns, rows } = tilingOf(frame, 'A4');
    expect(tiles.length).toBeLessThan(columns * rows);
    for (const { shows } of tiles) {
      const points = allLines(frame.shapes).flatMap((line) => line.points);
      // Points every millimetre of the frame: one of them lies on every page.
      const along = points.flatMap(([x, y], k) => {
        const [toX, toY] = points[(k + 1) % points.length]!;
        return Array.from({ length: 701 }, (_, i) => [x + ((toX - x) * i) / 700, y + ((toY - y) * i) / 700]);
      });
      const seen = ([x, y]: number[]) =>
        x! >= shows.minX && x! <= shows.maxX && y! >= shows.minY && y! <= shows.maxY;
      expect(along.some(seen)).toBe(true);
    }
  });
});

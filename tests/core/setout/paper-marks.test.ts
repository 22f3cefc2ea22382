import { describe, expect, it } from 'vitest';
import { LAYER_LINES } from '../../../core/setout/layer-lines.ts';
import {
  marksOfShapes,
  onPage,
  type Placement,
  pathMark,
  wordsMark,
} from '../../../core/setout/paper-marks.ts';
import { CAPITALS_OVER_SIZE, SHEET_INKS } from '../../../core/setout/sheet-inks.ts';
import {
  circle,
  cross,
  dimension,
  line,
  ring,
  shifted,
  TEMPLATE_LAYERS,
  words,
} from '../../../core/setout/template-drawing.ts';

const tenth: Placement = { scale: 0.1, origin: [100, 50], fills: { fitting: 'wood' } };

describe('a drawing on paper', () => {
  it('has up where the drawing has up, at its scale from its origin', () => {
    expect(onPage([0, 0], tenth)).toEqual([100, 50]);
    expect(onPage([200, 300], tenth)).toEqual([120, 20]);
    expect(onPage([7, -3], { scale: 1, origin: [10, 10] })).toEqual([17, 13]);
  });

  it('draws each layer in its own ink, width and dashes', () => {
    for (const layer of TEMPLATE_LAYERS) {
      const [mark] = marksOfShapes([line(layer, [0, 0], [10, 0])], tenth);
      expect(mark).toMatchObject({ kind: 'path', line: LAYER_LINES[layer], fill: null, closed: false });
    }
  });

  it('fills closed rings of the layers that are to be filled, and no open line', () => {
    const corners = [
      [0, 0],
      [10, 0],
      [10, 10],
    ] as const;
    const [closed, open, other] = marksOfShapes(
      [ring('fitting', corners), line('fitting', ...corners), ring('outline', corners)],
      tenth,
    );
    expect(closed).toMatchObject({ closed: true, fill: 'wood' });
    expect(open).toMatchObject({ closed: false, fill: null });
    expect(other).toMatchObject({ closed: true, fill: null });
  });

  it('reduces circles with the drawing, but not lettering', () => {
    const [round, text] = marksOfShapes(
      [circle('drill', [0, 0], 32.5), words('K', [0, 0], { height: 3.5 })],
      tenth,
    );
    expect(round).toMatchObject({ kind: 'circle', radius: 3.25 });
    expect(text).toMatchObject({ kind: 'words', text: 'K', size: 3.5 / CAPITALS_OVER_SIZE });
  });

  it('takes a dimension apart into its lines and its figure', () => {
    const marks = marksOfShapes([dimension([0, 0], [1000, 0], { offset: 8, text: '1000' })], tenth);
    expect(marks.filter(({ kind }) => kind === 'path')).toHaveLength(5);
    expect(marks.filter(({ kind }) => kind === 'words')).toHaveLength(1);
  });

  it('has plain words and bare paths unless told otherwise', () => {
    expect(wordsMark('bow', [1, 2], { size: 3 })).toEqual({
      kind: 'words',
      text: 'bow',
      at: [1, 2],
      size: 3,
      strong: false,
      ink: 'ink',
      anchor: 'start',
      turnDeg: 0,
    });
    expect(pathMark([[0, 0]], { fill: 'hull' })).toMatchObject({ line: null, closed: false, fill: 'hull' });
  });
});

describe('lines of layers', () => {
  it('are of widths that ISO 128 knows as thick and thin, in inks that a sheet has', () => {
    for (const { ink, width, dash } of Object.values(LAYER_LINES)) {
      expect(SHEET_INKS).toContain(ink);
      expect(width).toBeGreaterThanOrEqual(0.18);
      expect(width).toBeLessThanOrEqual(0.5);
      expect(dash.length % 2).toBe(0);
    }
    expect(LAYER_LINES.outline.width).toBeGreaterThan(LAYER_LINES.dimension.width);
  });

  it('tell the holes in use from the others by more than their colour', () => {
    expect(LAYER_LINES.drillNow.width).toBeGreaterThan(LAYER_LINES.drill.width);
  });
});

describe('shapes of a drawing', () => {
  it('are moved whole: lines, circles, words and both ends of dimensions', () => {
    const moved = shifted(
      [
        line('outline', [0, 0], [1, 2]),
        circle('drill', [5, 5], 3),
        words('K', [1, 1]),
        dimension([0, 0], [10, 0], { offset: 4, text: '10' }),
      ],
      [100, -10],
    );
    expect(moved).toMatchObject([
      {
        points: [
          [100, -10],
          [101, -8],
        ],
      },
      { centre: [105, -5], radius: 3 },
      { at: [101, -9] },
      { from: [100, -10], to: [110, -10], offset: 4 },
    ]);
  });

  it('are crosses of two equal arms', () => {
    const [level, upright] = cross('centreMark', [3, 4], 5);
    expect(level!.points).toEqual([
      [-2, 4],
      [8, 4],
    ]);
    expect(upright!.points).toEqual([
      [3, -1],
      [3, 9],
    ]);
  });
});

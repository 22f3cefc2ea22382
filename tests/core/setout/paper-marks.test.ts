import { describe, expect, it } from 'vitest';
import { LAYER_LINES } from '../../../core/setout/layer-lines.ts';
import {
  marksOfShapes,
  onPage,
  type Placement,
  pathMark,
  wordsMark,
} from '../../../core/setout/paper-marks.ts';
import { CAPITALS_OVER_SIZE } from '../../../core/setout/sheet-inks.ts';
import {
  circle,
  dimension,
  line,
  ring,
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

import { describe, expect, it } from 'vitest';
import { LAYER_LINES, SHEET_LINES } from '../../../core/setout/layer-lines.ts';
import { onPage, onPaper, type Placement, paperWords } from '../../../core/setout/paper-marks.ts';
import { CAPITALS_OVER_SIZE } from '../../../core/setout/sheet-inks.ts';
import {
  circle,
  dimension,
  line,
  ring,
  TEMPLATE_LAYERS,
  type TemplateShape,
  textAt,
} from '../../../core/setout/template-drawing.ts';

const tenth: Placement = { scale: 0.1, origin: [100, 50], fills: { fitting: 'woodFill' } };

describe('a drawing on paper', () => {
  it('has up where the drawing has up, at its scale from its origin', () => {
    expect(onPage([0, 0], tenth)).toEqual([100, 50]);
    expect(onPage([200, 300], tenth)).toEqual([120, 20]);
    expect(onPage([7, -3], { scale: 1, origin: [10, 10] })).toEqual([17, 13]);
  });

  it('keeps each layer as the role, and every role has a line of its own on a sheet', () => {
    for (const layer of TEMPLATE_LAYERS) {
      const [shape] = onPaper([line(layer, [0, 0], [10, 0])], tenth);
      expect(shape).toMatchObject({ kind: 'line', role: layer });
      expect(SHEET_LINES[layer]).toBe(LAYER_LINES[layer]);
    }
  });

  it('fills closed rings of the layers that are to be filled, and no open line', () => {
    const corners = [
      [0, 0],
      [10, 0],
      [10, 10],
    ] as const;
    const kinds = (shape: TemplateShape) => onPaper([shape], tenth).map(({ kind }) => kind);
    expect(kinds(ring('fitting', corners))).toEqual(['area', 'line']);
    expect(kinds(line('fitting', ...corners))).toEqual(['line']);
    expect(kinds(ring('outline', corners))).toEqual(['line']);
    expect(onPaper([ring('fitting', corners)], tenth)[0]).toMatchObject({ fills: [{ role: 'woodFill' }] });
  });

  it('reduces circles with the drawing, but not lettering', () => {
    const [round, text] = onPaper(
      [circle('drill', [0, 0], 32.5), textAt('K', [0, 0], { height: 3.5 })],
      tenth,
    );
    expect(round).toMatchObject({ kind: 'disc', radius: 3.25, at: [100, 50] });
    expect(text).toMatchObject({ kind: 'text', text: 'K', height: 3.5 });
  });

  it('takes a dimension apart into its lines and its figure', () => {
    const shapes = onPaper([dimension([0, 0], [1000, 0], { offset: 8, text: '1000' })], tenth);
    expect(shapes.filter(({ kind }) => kind === 'line')).toHaveLength(5);
    expect(shapes.filter(({ kind }) => kind === 'text')).toHaveLength(1);
  });

  it('has words of a size of type, plain unless told otherwise', () => {
    expect(paperWords('bow', [1, 2], { size: 3 })).toMatchObject({
      kind: 'text',
      role: 'ink',
      at: [1, 2],
      height: 3 * CAPITALS_OVER_SIZE,
      anchor: 'start',
      turnDeg: 0,
    });
  });
});

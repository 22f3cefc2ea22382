import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { templateDxf } from '../../../app/export/template-dxf.ts';
import { templatesOf } from '../../../core/setout/templates.ts';
import { inventedSetOut, ROWS_OF_HOLES } from '../../core/setout/invented-set-out.ts';
import { english } from '../../english.ts';
import { notEmpty } from '../../not-empty.ts';
import { inventedStamp } from './invented-stamp.ts';

/** The DXF of every template as two independent parsers read it (npm dxf-parser and npm dxf). */
const drawings = templatesOf(inventedSetOut({ hardware: ROWS_OF_HOLES }));
const files = drawings.map((drawing) => ({
  drawing,
  text: templateDxf(drawing, inventedStamp(), english),
}));

/** An entity as either parser gives it; `shape` is what the first calls closed. */
interface Entity {
  readonly type: string;
  readonly layer: string;
  readonly closed?: boolean;
  readonly shape?: boolean;
  readonly vertices: readonly { readonly x: number; readonly y: number }[];
}

// Neither has types that fit modules.
const require = createRequire(import.meta.url);
const DxfParser = require('dxf-parser') as new () => { parseSync(text: string): { entities: Entity[] } };
const { Helper } = require('dxf') as { Helper: new (text: string) => { parsed: { entities: Entity[] } } };

interface Line {
  readonly layer: string;
  readonly closed: boolean;
  readonly points: readonly (readonly [number, number])[];
}

const linesOf = (entities: readonly Entity[]): Line[] =>
  entities.flatMap(({ type, layer, closed, shape, vertices }) =>
    type === 'LWPOLYLINE'
      ? [{ layer, closed: closed ?? shape ?? false, points: vertices.map(({ x, y }) => [x, y] as const) }]
      : [],
  );
const linesByFirst = (text: string) => linesOf(new DxfParser().parseSync(text).entities);
const linesBySecond = (text: string) => linesOf(new Helper(text).parsed.entities);

describe.each(files)('the DXF of $drawing.id', ({ drawing, text }) => {
  it('is read alike by two parsers: the same lines, closed alike', () => {
    const [first, second] = [linesByFirst(text), linesBySecond(text)];
    expect(second.length).toBe(first.length);
    for (const [k, line] of notEmpty(first).entries()) {
      const other = second[k]!;
      expect([other.layer, other.closed, other.points.length]).toEqual([
        line.layer,
        line.closed,
        line.points.length,
      ]);
      for (const [i, point] of line.points.entries()) {
        expect(Math.hypot(point[0] - other.points[i]![0], point[1] - other.points[i]![1])).toBeLessThan(1e-6);
      }
    }
  });

  it('has round holes as circles, and closed contours closed', () => {
    const circles = new DxfParser().parseSync(text).entities.filter(({ type }) => type === 'CIRCLE');
    expect(circles.length).toBe(drawing.shapes.filter(({ kind }) => kind === 'disc').length);
    const cut = linesByFirst(text).filter(({ layer }) =>
      ['RECESS', 'DEPTH-LINES', 'FOAM-CUT', 'WOOD-LINES'].includes(layer),
    );
    // Profile and section show the hollow as the line that it is there; all that a cutter follows is closed.
    if (drawing.id === 'pad-recess') {
      for (const { closed } of notEmpty(cut)) expect(closed).toBe(true);
    }
  });

  it('has no line twice, whichever way round', () => {
    const keys = notEmpty(linesByFirst(text)).map(({ layer, points }) => {
      const texts = points.map(([x, y]) => `${x.toFixed(4)},${y.toFixed(4)}`);
      const ways = [texts.join(' '), texts.toReversed().join(' ')].sort();
      return `${layer} ${ways[0]}`;
    });
    const twice = keys.filter((key, k) => keys.indexOf(key) !== k);
    expect(twice).toEqual([]);
  });
});

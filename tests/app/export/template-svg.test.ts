import { describe, expect, it } from 'vitest';
import { templateSvg } from '../../../app/export/template-svg.ts';
import type { MillimetrePoint } from '../../../core/setout/template-drawing.ts';
import { templatesOf } from '../../../core/setout/templates.ts';
import { inventedSetOut, ON_A_WEDGE, ROWS_OF_HOLES } from '../../core/setout/invented-set-out.ts';
import { allCircles, allLines } from '../../core/setout/read-shapes.ts';
import { english } from '../../english.ts';
import { notEmpty } from '../../not-empty.ts';
import { inventedStamp } from './invented-stamp.ts';

const SCALE_TOLERANCE_MM = 0.05;
const templates = templatesOf(inventedSetOut({ hardware: ROWS_OF_HOLES, seat: { frontFoot: ON_A_WEDGE } }));

/** An SVG read back: millimetres per unit by its own size and view box, and its lines and circles in millimetres. */
function readSvg(svg: string) {
  const [, width, height, wide, tall] =
    /width="([\d.]+)mm" height="([\d.]+)mm" viewBox="0 0 ([\d.]+) ([\d.]+)"/
      .exec(svg)!
      .map(Number) as number[];
  const scaleX = width! / wide!;
  const scaleY = height! / tall!;
  const layers = [...svg.matchAll(/<g id="([^"]+)"[\s\S]*?<\/g>/g)].map(([body, name]) => ({
    name: name!,
    body,
  }));
  const lines = [...svg.matchAll(/<(polygon|polyline) points="([^"]+)"/g)].map(([, kind, points]) => ({
    closed: kind === 'polygon',
    points: points!.split(' ').map((pair) => {
      const [x, y] = pair.split(',').map(Number) as [number, number];
      return [x * scaleX, y * scaleY] as MillimetrePoint;
    }),
  }));
  const circles = [...svg.matchAll(/<circle cx="([\d.]+)" cy="([\d.]+)" r="([\d.]+)"/g)].map(
    ([, x, y, r]) => ({
      centre: [Number(x) * scaleX, Number(y) * scaleY] as MillimetrePoint,
      radius: Number(r) * scaleX,
    }),
  );
  return { scaleX, scaleY, width: width!, height: height!, layers, lines, circles };
}

const distance = (a: readonly number[], b: readonly number[]) => Math.hypot(a[0]! - b[0]!, a[1]! - b[1]!);

describe.each(templates)('$id as SVG', (drawing) => {
  const svg = templateSvg(drawing, inventedStamp(), english);
  const read = readSvg(svg);

  it('is one millimetre to the unit both ways', () => {
    expect(read.scaleX).toBeCloseTo(1, 9);
    expect(read.scaleY).toBeCloseTo(1, 9);
  });

  it('has every line true to size and the right way round: what is to port is nearer the top', () => {
    for (const { points, closed } of notEmpty(allLines(drawing.shapes))) {
      const same = read.lines.some(
        (line) =>
          line.closed === closed &&
          line.points.length === points.length &&
          // An SVG counts downwards from the top, a drawing upwards: to port.
          line.points.every((p, k) => {
            const [along, down] = [p[0] - line.points[0]![0], p[1] - line.points[0]![1]];
            const wanted = [points[k]![0] - points[0]![0], points[0]![1] - points[k]![1]];
            return distance([along, down], wanted) < SCALE_TOLERANCE_MM;
          }),
      );
      expect(same, `a line from ${points[0]}`).toBe(true);
    }
  });

  it('keeps holes at their size and distance from each other', () => {
    const holes = allCircles(drawing.shapes);
    expect(read.circles).toHaveLength(holes.length);
    const sizes = (all: readonly { radius: number }[]) =>
      all.map(({ radius }) => radius).sort((a, b) => a - b);
    sizes(read.circles).forEach((radius, k) => {
      expect(Math.abs(radius - sizes(holes)[k]!)).toBeLessThan(SCALE_TOLERANCE_MM);
    });
    const spread = (all: readonly { centre: MillimetrePoint }[]) =>
      Math.max(0, ...all.flatMap(({ centre }) => all.map((other) => distance(centre, other.centre))));
    expect(Math.abs(spread(read.circles) - spread(holes))).toBeLessThan(SCALE_TOLERANCE_MM);
  });

  it('has check bars of 100 mm both ways and everything inside its own size', () => {
    const bars = read.lines.filter(({ points: [a, b] }) => Math.abs(distance(a!, b!) - 100) < 1e-3);
    expect(bars.some(({ points: [a, b] }) => a![1] === b![1])).toBe(true);
    expect(bars.some(({ points: [a, b] }) => a![0] === b![0])).toBe(true);
    for (const [x, y] of read.lines.flatMap(({ points }) => points)) {
      expect(x).toBeGreaterThan(0);
      expect(y).toBeGreaterThan(0);
      expect(x).toBeLessThan(read.width);
      expect(y).toBeLessThan(read.height);
    }
  });

  it('names layers in words of the trade', () => {
    const names = read.layers.map(({ name }) => name);
    expect(names).toContain('OUTLINE');
    expect(names).toContain('CHECK-BAR');
    for (const name of names) expect(name).toMatch(/^[A-Z]+(-[A-Z]+)*$/);
    expect(new Set(names).size).toBe(names.length);
  });

  it('is the same for equal input', () => {
    expect(templateSvg(drawing, inventedStamp(), english)).toBe(svg);
  });
});

describe('words in an SVG', () => {
  it('cannot break out of it', () => {
    const svg = templateSvg(templates[0]!, inventedStamp({ athleteName: '<script>&"' }), english);
    expect(svg).not.toContain('<script>');
    expect(svg).toContain('&lt;script&gt;&amp;&quot;');
  });
});

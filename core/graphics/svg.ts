import type { Line, Role, Shape, Weight } from './shape.ts';

/** How shapes become SVG text: colour of each role, width of each line in the picture's units, units to the metre. */
export interface SvgInk {
  readonly colours: Readonly<Record<Role, string>>;
  readonly widths: Readonly<Record<Weight, number>>;
  readonly perMetre: number;
}

const written = (value: number) => String(Math.round(value * 100) / 100);

/** A line as SVG path data, up turned to down. */
export function svgPath(line: Line, { perMetre, close }: { perMetre: number; close: boolean }): string {
  let path = '';
  for (let k = 0; k < line.length; k += 2) {
    path += `${k === 0 ? 'M' : 'L'}${written(line[k]! * perMetre)} ${written(-line[k + 1]! * perMetre)}`;
  }
  return close ? `${path}Z` : path;
}

/** Shapes as SVG elements, in their order. An outline is stroked first and filled over, so it runs round the union. */
export function svgShapes(shapes: readonly Shape[], { colours, widths, perMetre }: SvgInk): string {
  const paths = (lines: readonly Line[], close: boolean) =>
    lines.map((line) => svgPath(line, { perMetre, close })).join('');
  return shapes
    .map((shape) => {
      if (shape.kind === 'line') {
        return `<path d="${paths(shape.lines, false)}" fill="none" stroke="${colours[shape.role]}" stroke-width="${widths[shape.weight]}" stroke-linecap="round" stroke-linejoin="round"/>`;
      }
      const { fills, outline } = shape;
      const under = outline
        ? `<path d="${fills.map(({ rings }) => paths(rings, true)).join('')}" fill="${colours[outline.role]}" stroke="${colours[outline.role]}" stroke-width="${2 * widths[outline.weight]}" stroke-linejoin="round"/>`
        : '';
      return (
        under +
        fills.map(({ role, rings }) => `<path d="${paths(rings, true)}" fill="${colours[role]}"/>`).join('')
      );
    })
    .join('\n');
}

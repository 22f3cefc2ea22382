import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Side } from '../../../core/frame/mirror.ts';
import type { Line, Role, Shape } from '../../../core/graphics/shape.ts';
import { svgPath, viewScale } from '../../../core/graphics/svg.ts';
import { hullOfBoat } from '../../../core/hull/hull-of-boat.ts';
import { type ShowView, showPicture } from '../../../core/show/show-picture.ts';
import { ROLE_COLOURS } from '../../../renderer/drawing/view/palette.ts';
import { BODIES, fitOf, INSTANTS, type Instant, scenesOf } from './figure-bodies.ts';

const THEME = join(import.meta.dirname, '../../../renderer/theme/ink-and-paper.css');

export type SheetTheme = 'light' | 'dark';

/** A theme's colours by their names, as the stylesheet has them. */
function themeColours(theme: SheetTheme): Record<string, string> {
  const css = readFileSync(THEME, 'utf8');
  const block = css.slice(css.indexOf(`[data-theme="${theme}"]`));
  const rules = block.slice(0, block.indexOf('}')).matchAll(/--([\w-]+): ([^;]+);/g);
  return Object.fromEntries([...rules].map(([, name, value]) => [name!, value!]));
}

/** Where a view begins and how large a cell of it is, metres: the longest paddle of all bodies is whole in recovery too. */
const CELLS: Readonly<Record<ShowView, { left: number; top: number; width: number; height: number }>> = {
  side: { left: -1.05, top: 1.95, width: 2.65, height: 2.6 },
  behind: { left: -1.6, top: 1.95, width: 3.2, height: 2.5 },
  above: { left: -1, top: 1.6, width: 2.6, height: 3.2 },
};

/** What one contact sheet shows. */
export interface SheetOptions {
  readonly view: ShowView;
  readonly theme: SheetTheme;
  readonly perMetre: number;
  readonly grey?: boolean;
  readonly sides?: readonly Side[];
  readonly bodies?: readonly (typeof BODIES)[number][];
}

/** A contact sheet as SVG: a row for each body, a column for each instant and side. */
export function contactSheet(options: SheetOptions): { svg: string; width: number; height: number } {
  const { view, theme, perMetre, grey = false, sides = ['right', 'left'], bodies = BODIES } = options;
  const colours = themeColours(theme);
  const cell = CELLS[view];
  const [wide, high] = [cell.width * perMetre, cell.height * perMetre];
  const columns = sides.flatMap((side) =>
    (Object.keys(INSTANTS) as Instant[]).map((instant) => ({ side, instant })),
  );
  const cells = bodies.flatMap((body, row) => {
    const seen = new Map(
      sides.map((side) => {
        const fit = fitOf(body, side);
        return [side, { hull: hullOfBoat(fit.boat), scenes: scenesOf(fit) }] as const;
      }),
    );
    return columns.map(({ side, instant }, column) => {
      const { hull, scenes } = seen.get(side)!;
      const { ground, person } = showPicture(scenes[instant], hull, view);
      const shapes = svgShapes([...ground, ...person], { colours, perMetre });
      const box = [cell.left * perMetre, -cell.top * perMetre, wide, high].join(' ');
      const words = `<text x="${cell.left * perMetre + 6}" y="${-cell.top * perMetre + 14}" font-size="12" font-family="sans-serif" fill="${colours['ink-soft']}">${body.name}, ${instant}, ${side}</text>`;
      return `<svg x="${column * wide}" y="${row * high}" width="${wide}" height="${high}" viewBox="${box}">${shapes}${words}</svg>`;
    });
  });
  const [width, height] = [columns.length * wide, bodies.length * high];
  const filter = grey ? ' style="filter:grayscale(1)"' : '';
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}"${filter}><rect width="100%" height="100%" fill="${colours.paper}"/>${cells.join('')}</svg>`;
  return { svg, width, height };
}

const WIDTHS = { contour: 1.1, detail: 0.8 };

function svgShapes(
  shapes: readonly Shape[],
  { colours, perMetre }: { colours: Record<string, string>; perMetre: number },
): string {
  const colour = (role: Role) => colours[ROLE_COLOURS[role]]!;
  const path = (lines: readonly Line[], closed: boolean) =>
    svgPath(lines, viewScale(perMetre), closed ? 'closed' : 'open');
  const joined = 'stroke-linejoin="round" stroke-linecap="round"';
  return shapes
    .map((shape) => {
      if (shape.kind === 'line') {
        return `<path d="${path(shape.lines, false)}" fill="none" stroke="${colour(shape.role)}" stroke-width="${WIDTHS[shape.weight]}" ${joined}/>`;
      }
      if (shape.kind !== 'area') return '';
      const { fills, outline } = shape;
      const rings = fills.flatMap((fill) => fill.rings);
      const under = outline
        ? `<path d="${path(rings, true)}" fill="${colour(outline.role)}" stroke="${colour(outline.role)}" stroke-width="${2 * WIDTHS[outline.weight]}" ${joined}/>`
        : '';
      return (
        under +
        fills.map((fill) => `<path d="${path(fill.rings, true)}" fill="${colour(fill.role)}"/>`).join('')
      );
    })
    .join('');
}

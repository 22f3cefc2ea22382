import type { Hull } from '../hull/hull.ts';
import { type NumberedSection, numberedSections, STATION_AMIDSHIPS } from '../hull/sections-out.ts';
import { bareLength, millimetres, type SheetUnits } from '../text/sheet-length.ts';
import type { Words } from '../text/words.ts';
import {
  type FullSizeDrawing,
  textAt as lettering,
  line,
  type MillimetrePoint,
  type TemplateShape,
} from './template-drawing.ts';

/** Waterlines and buttocks of the grid, every so many millimetres. */
const GRID_MM = 50;
/** How far the grid runs out beyond the hull, millimetres. */
const OUT_MM = 12;

/**
 * The body plan at full size: afterbody on the left, forebody on the right, the section amidships on both; each section on its own
 * with its station's number and its distance from the stern, on a grid of waterlines and buttocks by name. x to the right and y up
 * from the lowest point of the keel, millimetres. A section that has closed to a stem is a line on the centreline and is left out.
 */
export function sectionsDrawing(
  hull: Hull,
  { words, units }: { words: Words; units: SheetUnits },
): FullSizeDrawing {
  const sections = numberedSections(hull).flatMap((section) => sectionShapes(section, { words, units }));
  const points = sections.flatMap((shape) => (shape.kind === 'line' ? shape.lines.flat() : []));
  const half = Math.max(...points.filter((_, k) => k % 2 === 0).map(Math.abs));
  const high = Math.max(...points.filter((_, k) => k % 2 === 1));
  return {
    title: words.say('hull.sections.title'),
    seen: words.say('hull.sections.seen'),
    shapes: [...grid({ half, high, units }), ...sections],
  };
}

function sectionShapes(
  { station, fromSternM, points }: NumberedSection,
  { words, units }: { words: Words; units: SheetUnits },
): TemplateShape[] {
  const sides = station === STATION_AMIDSHIPS ? [-1, 1] : station < STATION_AMIDSHIPS ? [-1] : [1];
  const from = bareLength(millimetres(fromSternM), units);
  return sides.flatMap((side) => {
    const curve = points.map(({ y, z }): MillimetrePoint => [side * millimetres(y), millimetres(z)]);
    const [right, up] = curve.at(-1)!;
    return [
      line('hull', ...curve),
      lettering(words.say('hull.sections.station', { station, from }), [right + 2, up + 2], {
        height: 2.5,
        turnDeg: 60,
      }),
    ];
  });
}

/** Centreline and base line, waterlines W1, W2 … upward and buttocks B1, B2 … outward with their distances. */
function grid({ half, high, units }: { half: number; high: number; units: SheetUnits }): TemplateShape[] {
  const out = half + OUT_MM;
  const every = (most: number) =>
    Array.from({ length: Math.floor(most / GRID_MM) }, (_, k) => GRID_MM * (k + 1));
  return [
    line('centreline', [0, -OUT_MM], [0, high + OUT_MM]),
    line('centreMark', [-out, 0], [out, 0]),
    ...every(high).flatMap((z, k) => [
      line('depthLine', [-out, z], [out, z]),
      lettering(`W${k + 1}  ${bareLength(z, units)}`, [out + 2, z - 1], { height: 2.5 }),
    ]),
    ...every(half).flatMap((y, k) =>
      [-y, y].flatMap((at) => [
        line('depthLine', [at, -OUT_MM], [at, high + OUT_MM]),
        lettering(`B${k + 1}  ${bareLength(y, units)}`, [at, -OUT_MM - 4.5], {
          height: 2.5,
          anchor: 'middle',
        }),
      ]),
    ),
  ];
}

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
/** Names of stations stand upright over the grid, so far from it and from one another, millimetres. */
const NAME_OVER_MM = 2;
const NAME_APART_MM = 4;
const NAME_HEIGHT_MM = 2.5;

/**
 * The body plan at full size: afterbody on the left, forebody on the right, the section amidships on both; each section on its own
 * with its station's number and its distance from the stern over the grid of waterlines and buttocks, which have names too. x to the right and y up
 * from the lowest point of the keel, millimetres. A section that has closed to a stem is a line on the centreline and is left out.
 */
export function sectionsDrawing(
  hull: Hull,
  { words, units }: { words: Words; units: SheetUnits },
): FullSizeDrawing {
  const sections = numberedSections(hull).flatMap((section) => sectionCurves(section, { words, units }));
  const points = sections.flatMap(({ curve }) => curve);
  const half = Math.max(...points.map(([right]) => Math.abs(right)));
  const high = Math.max(...points.map(([, up]) => up));
  return {
    title: words.say('hull.sections.title'),
    seen: words.say('hull.sections.seen'),
    shapes: [
      ...grid({ half, high, units }),
      ...sections.map(({ curve }) => line('hull', ...curve)),
      ...stationNames(sections, high + OUT_MM),
    ],
  };
}

/** A section as it is drawn on one side, keel to sheer, and what is written of it. */
interface SectionCurve {
  readonly curve: readonly MillimetrePoint[];
  readonly name: string;
}

function sectionCurves(
  { station, fromSternM, points }: NumberedSection,
  { words, units }: { words: Words; units: SheetUnits },
): SectionCurve[] {
  const sides = station === STATION_AMIDSHIPS ? [-1, 1] : station < STATION_AMIDSHIPS ? [-1] : [1];
  const from = bareLength(millimetres(fromSternM), units);
  return sides.map((side) => ({
    curve: points.map(({ y, z }): MillimetrePoint => [side * millimetres(y), millimetres(z)]),
    name: words.say('hull.sections.station', { station, from }),
  }));
}

/** Names upright over the grid, where no line crosses them, each with a leader from the upper end of its section. */
function stationNames(sections: readonly SectionCurve[], top: number): TemplateShape[] {
  let last = Number.NEGATIVE_INFINITY;
  return sections
    .map(({ curve, name }) => ({ end: curve.at(-1)!, name }))
    .sort((a, b) => a.end[0] - b.end[0])
    .flatMap(({ end, name }) => {
      last = Math.max(end[0], last + NAME_APART_MM);
      const foot: MillimetrePoint = [last, top + NAME_OVER_MM];
      return [
        line('dimension', end, foot),
        lettering(name, [last + NAME_HEIGHT_MM / 3, top + 2 * NAME_OVER_MM], {
          height: NAME_HEIGHT_MM,
          turnDeg: 90,
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

import type { Hull } from '../../../core/hull/hull.ts';
import { toFloor } from '../../../core/setout/block-frame.ts';
import { padCorners } from '../../../core/setout/pad-block.ts';
import type { SeatSetOut } from '../../../core/setout/set-out.ts';
import { figureOf, millimetres } from '../../../core/setout/sheet-length.ts';
import { acrossText } from '../../../core/setout/sheet-names.ts';
import {
  planView,
  profileView,
  sectionView,
  type ViewStretch,
  viewStretch,
} from '../../../core/setout/sheet-views.ts';
import {
  dimension,
  line,
  type MillimetrePoint,
  type TemplateShape,
} from '../../../core/setout/template-drawing.ts';
import { drawShapes, onPage, type Placement } from '../pdf/draw-shapes.ts';
import type { SheetPdf } from '../pdf/sheet-pdf.ts';
import type { Box } from './flow.ts';
import { SHEET_INK, TYPE } from './sheet-inks.ts';
import { drawWholeBoat } from './whole-boat.ts';

/** Scales of reduction of ISO 5455 that a bench drawing uses, largest first. */
const SCALES = [1 / 2, 1 / 5, 1 / 10, 1 / 20, 1 / 50] as const;
/** Paper between and around the views, millimetres: captions, leaders, dimensions. */
const ABOVE_PLAN = 20;
const UNDER_PLAN = 24;
const ABOVE_PROFILE = 7;
const UNDER_PROFILE = 10;
const BESIDE = 30;
const FIRST_LEVEL = 8;
const SECOND_LEVEL = 15;

const FILLS = { fitting: SHEET_INK.wood, edge: SHEET_INK.board } as const;

/** The three views with what they need to be placed: sizes at full size, millimetres. */
export interface SheetDrawing {
  readonly out: SeatSetOut;
  readonly hull: Hull;
  readonly stretch: ViewStretch;
  readonly plan: readonly TemplateShape[];
  readonly profile: readonly TemplateShape[];
  readonly section: readonly TemplateShape[];
  /** Greatest half-breadth, least and greatest height in view. */
  readonly halfBreadth: number;
  readonly low: number;
  readonly high: number;
}

/** Makes the three views of a seat in its hull. */
export function sheetDrawing(out: SeatSetOut, hull: Hull): SheetDrawing {
  const stretch = viewStretch(out, hull);
  const plan = planView(out, hull, stretch);
  const profile = profileView(out, hull, stretch);
  const section = sectionView(out, hull);
  const hullPoints = (shapes: readonly TemplateShape[]) =>
    shapes.flatMap((shape) => (shape.kind === 'polyline' && shape.layer === 'hull' ? shape.points : []));
  const heights = [...hullPoints(profile), ...hullPoints(section)].map(([, y]) => y);
  const { pad, rest } = out.fittings;
  const floor = millimetres(out.work.frame.floorZ);
  return {
    out,
    hull,
    stretch,
    plan,
    profile,
    section,
    halfBreadth: Math.max(...hullPoints(plan).map(([, y]) => Math.abs(y))),
    low: Math.min(...heights),
    high: Math.max(...heights, floor + pad.topHeight, floor + rest.height),
  };
}

/** The largest standard scale at which all three views stand in a box; the smallest when none fits. */
export function scaleFor(drawing: SheetDrawing, box: Pick<Box, 'width' | 'height'>): number {
  const { stretch, halfBreadth } = drawing;
  const wide = stretch.fore - stretch.aft + 2 * halfBreadth;
  const fits = (scale: number) =>
    wide * scale + BESIDE + 8 <= box.width && heightAt(drawing, scale) <= box.height;
  return SCALES.find(fits) ?? SCALES.at(-1)!;
}

/** Height of paper that the views take at a scale, millimetres. */
export function heightAt({ halfBreadth, low, high }: SheetDrawing, scale: number): number {
  return (2 * halfBreadth + (high - low)) * scale + ABOVE_PLAN + UNDER_PLAN + ABOVE_PROFILE + UNDER_PROFILE;
}

/** A scale as drawings write it: `1:10`. */
export function scaleText(scale: number): string {
  return `1:${Math.round(1 / scale)}`;
}

/** Draws plan over profile on one x axis, and the section beside the profile on one z axis. */
export function drawSheetDrawing(
  pdf: SheetPdf,
  drawing: SheetDrawing,
  { box, scale }: { box: Box; scale: number },
): void {
  const { stretch, halfBreadth, low, high } = drawing;
  const wide = (stretch.fore - stretch.aft + 2 * halfBreadth) * scale + BESIDE;
  const left = box.left + (box.width - wide) / 2 - stretch.aft * scale;
  const planMiddle = box.top + ABOVE_PLAN + halfBreadth * scale;
  const base = planMiddle + halfBreadth * scale + UNDER_PLAN + ABOVE_PROFILE + high * scale;
  const at = (origin: MillimetrePoint): Placement => ({ scale, origin, fills: FILLS });
  const plan = at([left, planMiddle]);
  const profile = at([left, base]);
  const section = at([left + (stretch.fore + halfBreadth) * scale + BESIDE, base]);
  tieViews(pdf, drawing, { plan, profile });
  drawPlan(pdf, drawing, plan);
  drawProfile(pdf, drawing, profile);
  drawSection(pdf, drawing, section);
  caption(pdf, 'Plan, from above', onPage([stretch.aft, halfBreadth], plan), 14);
  caption(pdf, 'Profile, from starboard', onPage([stretch.aft, high], profile), 2.5);
  caption(pdf, 'Section at K, from behind', onPage([-halfBreadth, high], section), 13);
  drawWholeBoat(pdf, drawing, {
    right: section.origin[0] + halfBreadth * scale,
    top: box.top + ABOVE_PLAN - 12,
    width: 2 * halfBreadth * scale + BESIDE - 8,
  });
  pdf.text('bow', [onPage([stretch.fore, 0], plan)[0] + 1.5, plan.origin[1] + 0.9], {
    size: TYPE.small,
    colour: SHEET_INK.soft,
  });
  pdf.text('datum for heights: top of the floorboard', onPage([stretch.aft, low - 6 / scale], profile), {
    size: TYPE.small,
    colour: SHEET_INK.soft,
  });
}

function caption(pdf: SheetPdf, words: string, [x, y]: MillimetrePoint, up: number): void {
  pdf.text(words, [x, y - up], { size: TYPE.body, weight: 'strong', colour: SHEET_INK.soft });
}

/** Places that are dimensioned along the boat: mark, and its floor point. */
function places({ out }: SheetDrawing): { name: string; at: MillimetrePoint }[] {
  const { pad, rest, foot } = out.fittings;
  return [
    { name: 'K', at: pad.place.origin },
    { name: 'R', at: rest.place.origin },
    { name: 'F', at: foot.place.origin },
    { name: 'T', at: toFloor(foot.place, [foot.run, 0]) },
  ];
}

/** Faint lines that carry K, R, F and M from the plan down to the profile. */
function tieViews(
  pdf: SheetPdf,
  drawing: SheetDrawing,
  { plan, profile }: { plan: Placement; profile: Placement },
): void {
  const ink = { stroke: SHEET_INK.rule, width: 0.1 };
  for (const [x] of [...places(drawing).map(({ at }) => at), [0, 0] as const]) {
    pdf.path([onPage([x, drawing.halfBreadth], plan), onPage([x, drawing.low], profile)], ink);
  }
}

function fillHull(pdf: SheetPdf, shapes: readonly TemplateShape[], placement: Placement): void {
  const lines = shapes.flatMap((shape) =>
    shape.kind === 'polyline' && shape.layer === 'hull' ? [shape.points] : [],
  );
  const [first = [], second = []] = lines;
  const ring = [...first, ...[...second].reverse()];
  if (ring.length > 2)
    pdf.path(
      ring.map((point) => onPage(point, placement)),
      { fill: SHEET_INK.hull, closed: true },
    );
}

function drawPlan(pdf: SheetPdf, drawing: SheetDrawing, placement: Placement): void {
  const { out, stretch, halfBreadth, plan } = drawing;
  const { units } = out.work.options;
  const under = -halfBreadth;
  const along = (x: number, level: number): TemplateShape =>
    x < 0
      ? dimension([x, under], [0, under], { offset: -level, text: figureOf(-x, units) })
      : dimension([0, under], [x, under], { offset: -level, text: figureOf(x, units) });
  const [k, r, f, t] = places(drawing).map(({ at }) => at) as [
    MillimetrePoint,
    MillimetrePoint,
    MillimetrePoint,
    MillimetrePoint,
  ];
  fillHull(pdf, plan, placement);
  drawShapes(
    pdf,
    [
      ...plan,
      line('centreline', [stretch.aft, 0], [stretch.fore, 0]),
      line('centreMark', [0, halfBreadth + 3 / placement.scale], [0, under - 3 / placement.scale]),
      along(k[0], FIRST_LEVEL),
      along(r[0], SECOND_LEVEL),
      along(f[0], FIRST_LEVEL),
      along(t[0], SECOND_LEVEL),
    ],
    placement,
  );
  for (const { name, at } of places(drawing)) {
    dot(pdf, onPage(at, placement));
    const [x, y] = onPage([at[0], halfBreadth], placement);
    const words = name === 'T' ? 'T' : `${name}  ${acrossText({ portMm: Math.round(at[1]) }, units)}`;
    pdf.text(words, [x, y - 3], {
      size: TYPE.small,
      anchor: 'middle',
      colour: SHEET_INK.measure,
      weight: 'strong',
    });
  }
  const [mx, my] = onPage([0, halfBreadth], placement);
  pdf.text('M', [mx, my - 3.6], {
    size: TYPE.small,
    anchor: 'middle',
    colour: SHEET_INK.mark,
    weight: 'strong',
  });
}

function dot(pdf: SheetPdf, centre: MillimetrePoint): void {
  pdf.circle(centre, 0.55, { fill: SHEET_INK.mark });
}

function drawProfile(pdf: SheetPdf, drawing: SheetDrawing, placement: Placement): void {
  const { out, profile } = drawing;
  const { units } = out.work.options;
  const { pad, rest, foot } = out.fittings;
  const floor = millimetres(out.work.frame.floorZ);
  const padXs = padCorners(pad).map((corner) => toFloor(pad.place, corner)[0]);
  const restXs = [1, -1].map((side) => toFloor(rest.place, [-rest.depthBehind, side * rest.halfWidth])[0]);
  const up = (x: number, height: number, offset: number): TemplateShape =>
    dimension([x, floor], [x, floor + height], { offset, text: figureOf(height, units) });
  const [padAft, padFore, restAft] = [Math.min(...padXs), Math.max(...padXs), Math.min(...restXs)];
  fillHull(pdf, profile, placement);
  drawShapes(
    pdf,
    [
      ...profile,
      up(padAft, pad.topHeight, 6),
      up(padFore, pad.bearingHeight, -6),
      up(restAft, rest.height, 6),
      ...(foot.heelHeight > 0.5 ? [up(foot.place.origin[0], foot.heelHeight, 6)] : []),
    ],
    placement,
  );
  dot(pdf, onPage([pad.place.origin[0], floor + pad.bearingHeight], placement));
  dot(pdf, onPage([rest.place.origin[0], floor + rest.height], placement));
}

function drawSection(pdf: SheetPdf, drawing: SheetDrawing, placement: Placement): void {
  const { out, section, low, high } = drawing;
  const { units } = out.work.options;
  const { pad } = out.fittings;
  const floor = millimetres(out.work.frame.floorZ);
  const knee = -pad.place.origin[1];
  const [from, to] = knee < 0 ? [knee, 0] : [0, knee];
  const half = millimetres(out.work.boat.floorboard.widthM) / 2;
  fillHull(pdf, section, placement);
  drawShapes(
    pdf,
    [
      ...section,
      line('centreline', [0, low - 3 / placement.scale], [0, high + 4 / placement.scale]),
      dimension([from, high], [to, high], { offset: 5, text: figureOf(Math.abs(knee), units) }),
      dimension([half, low], [half, floor], { offset: -9, text: figureOf(floor - low, units) }),
    ],
    placement,
  );
  dot(pdf, onPage([knee, floor + pad.bearingHeight], placement));
}

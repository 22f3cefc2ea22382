import { pointsOf } from '../graphics/shape.ts';
import type { Hull } from '../hull/hull.ts';
import { millimetres } from '../text/sheet-length.ts';
import type { SeatSetOut } from './set-out.ts';
import { planView, profileView, sectionView, type ViewStretch, viewStretch } from './sheet-views.ts';
import type { TemplateShape } from './template-drawing.ts';

/** Scales of reduction of ISO 5455 that a bench drawing uses, largest first. */
const SCALES = [1 / 2, 1 / 5, 1 / 10, 1 / 20, 1 / 50] as const;
/** Paper between and around the views, millimetres: captions, leaders, dimensions. */
export const VIEW_ROOM = {
  abovePlan: 20,
  underPlan: 24,
  aboveProfile: 11,
  underProfile: 10,
  beside: 30,
} as const;
/** White on the right of the section, millimetres. */
const RIGHT_OF_SECTION = 8;

/** The three views with what they need to be placed: sizes at full size, millimetres. */
export interface SheetDrawing {
  /** What is drawn. */
  readonly out: SeatSetOut;
  /** Whose lines go round it. */
  readonly hull: Hull;
  /** What part of the boat is in view. */
  readonly stretch: ViewStretch;
  /** The three views, millimetres from the seat's mark, the floorboard or the centreline. */
  readonly plan: readonly TemplateShape[];
  readonly profile: readonly TemplateShape[];
  readonly section: readonly TemplateShape[];
  /** Greatest half-breadth, least and greatest height in view. */
  readonly halfBreadth: number;
  /** Least height in view. */
  readonly low: number;
  /** Greatest height in view. */
  readonly high: number;
}

/**
 * Makes the three views of a seat in its hull, at full size, millimetres. Plan and profile share their x (forward of the
 * seat's mark), profile and section their height (over the hull's lowest point).
 */
export function sheetDrawing(out: SeatSetOut, hull: Hull): SheetDrawing {
  const stretch = viewStretch(out, hull);
  const plan = planView(out, hull, stretch);
  const profile = profileView(out, hull, stretch);
  const section = sectionView(out, hull);
  const hullPoints = (shapes: readonly TemplateShape[]) =>
    shapes.flatMap((shape) =>
      shape.kind === 'line' && shape.role === 'hull' ? shape.lines.flatMap(pointsOf) : [],
    );
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

/** The largest standard scale at which all three views stand in a box (millimetres); the smallest when none fits. */
export function scaleFor(drawing: SheetDrawing, box: { width: number; height: number }): number {
  const { stretch, halfBreadth } = drawing;
  const wide = stretch.fore - stretch.aft + 2 * halfBreadth;
  const fits = (scale: number) =>
    wide * scale + VIEW_ROOM.beside + RIGHT_OF_SECTION <= box.width && heightAt(drawing, scale) <= box.height;
  return SCALES.find(fits) ?? SCALES.at(-1)!;
}

/** Height of paper that the views take at a scale, millimetres. */
export function heightAt({ halfBreadth, low, high }: SheetDrawing, scale: number): number {
  const { abovePlan, underPlan, aboveProfile, underProfile } = VIEW_ROOM;
  return (2 * halfBreadth + (high - low)) * scale + abovePlan + underPlan + aboveProfile + underProfile;
}

/** A scale as drawings write it: `1:10` for 0.1. */
export function scaleText(scale: number): string {
  return `1:${Math.round(1 / scale)}`;
}

import { areaOf, lineThrough } from '../graphics/shape.ts';
import type { Hull } from '../hull/hull.ts';
import { halfBreadth, sheerHeight } from '../hull/section-at.ts';
import { millimetres, writtenLength } from '../text/sheet-length.ts';
import { type PaperShape, paperWords } from './paper-marks.ts';
import type { SeatSetOut } from './set-out.ts';
import { SHEET_TYPE } from './sheet-inks.ts';
import { line, type MillimetrePoint, ring } from './template-drawing.ts';

/** Usual scales of a lines plan, the largest that fits is taken. */
const SCALES = [1 / 50, 1 / 100, 1 / 200] as const;
/** Places along the hull where its sheer is read. */
const READINGS = 60;
const SMALL = { size: SHEET_TYPE.small } as const;

/**
 * A small plan of the whole boat with its seats' marks, and how far this one lies from the bow's end. `at` and marks in
 * millimetres from the page's top left corner; the boat's bow end stands at `right`.
 */
export function wholeBoatMarks(
  { out, hull }: { out: SeatSetOut; hull: Hull },
  at: { right: number; top: number; width: number },
): PaperShape[] {
  const scale = SCALES.find((s) => millimetres(hull.length) * s <= at.width) ?? SCALES.at(-1)!;
  const left = at.right - millimetres(hull.length) * scale;
  const middle = at.top + 13;
  const x = (xM: number) => left + millimetres(xM - hull.aftX) * scale;
  const sheer = Array.from({ length: READINGS + 1 }, (_, k): MillimetrePoint => {
    const along = hull.aftX + (hull.length * k) / READINGS;
    return [x(along), millimetres(halfBreadth(hull, along, sheerHeight(hull, along)) ?? 0) * scale];
  });
  const outline = [
    ...sheer.map(([along, half]): MillimetrePoint => [along, middle - half]),
    ...sheer.toReversed().map(([along, half]): MillimetrePoint => [along, middle + half]),
  ];
  const station = out.work.frame.stationX;
  const toBow = writtenLength(millimetres(hull.foreX - station), out.work.options.units);
  return [
    paperWords(
      out.work.words.say('work-view.whole-boat', { scale: Math.round(1 / scale) }),
      [left, at.top + 3],
      {
        ...SMALL,
        strong: true,
        role: 'soft',
      },
    ),
    areaOf('hull', { role: 'hullFill', outline: null }, [lineThrough(outline)]),
    ring('smallHull', outline),
    ...out.work.boat.seats.map(({ stationM }, index) => {
      const mine = index === out.work.index;
      const half = mine ? 5 : 3;
      const role = mine ? 'seatHere' : 'seatElsewhere';
      return line(role, [x(stationM), middle - half], [x(stationM), middle + half]);
    }),
    paperWords('M', [x(station), middle - 6], { ...SMALL, anchor: 'middle', role: 'mark', strong: true }),
    paperWords(out.work.words.say('work-view.from-bow', { by: toBow }), [at.right, middle + 9], {
      ...SMALL,
      anchor: 'end',
    }),
  ];
}

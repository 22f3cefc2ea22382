import type { Hull } from '../hull/hull.ts';
import { halfBreadth, sheerHeight } from '../hull/section-at.ts';
import { type PaperMark, pathMark, wordsMark } from './paper-marks.ts';
import type { SeatSetOut } from './set-out.ts';
import { SHEET_TYPE } from './sheet-inks.ts';
import { millimetres, writtenLength } from './sheet-length.ts';
import type { MillimetrePoint } from './template-drawing.ts';

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
): PaperMark[] {
  const scale = SCALES.find((s) => millimetres(hull.length) * s <= at.width) ?? SCALES.at(-1)!;
  const left = at.right - millimetres(hull.length) * scale;
  const middle = at.top + 13;
  const x = (xM: number) => left + millimetres(xM - hull.aftX) * scale;
  const sheer = Array.from({ length: READINGS + 1 }, (_, k): MillimetrePoint => {
    const along = hull.aftX + (hull.length * k) / READINGS;
    return [x(along), millimetres(halfBreadth(hull, along, sheerHeight(hull, along)) ?? 0) * scale];
  });
  const station = out.work.frame.stationX;
  const toBow = writtenLength(millimetres(hull.foreX - station), out.work.options.units);
  return [
    wordsMark(
      out.work.words.say('work-view.whole-boat', { scale: Math.round(1 / scale) }),
      [left, at.top + 3],
      {
        ...SMALL,
        strong: true,
        ink: 'soft',
      },
    ),
    pathMark(
      [
        ...sheer.map(([along, half]): MillimetrePoint => [along, middle - half]),
        ...[...sheer].reverse().map(([along, half]): MillimetrePoint => [along, middle + half]),
      ],
      { closed: true, line: { ink: 'ink', width: 0.2, dash: [] }, fill: 'hull' },
    ),
    ...out.work.boat.seats.map(({ stationM }, index) => {
      const mine = index === out.work.index;
      const half = mine ? 5 : 3;
      const line = { ink: mine ? 'mark' : 'soft', width: mine ? 0.3 : 0.15, dash: [] } as const;
      return pathMark(
        [
          [x(stationM), middle - half],
          [x(stationM), middle + half],
        ],
        { line },
      );
    }),
    wordsMark('M', [x(station), middle - 6], { ...SMALL, anchor: 'middle', ink: 'mark', strong: true }),
    wordsMark(out.work.words.say('work-view.from-bow', { by: toBow }), [at.right, middle + 9], {
      ...SMALL,
      anchor: 'end',
    }),
  ];
}

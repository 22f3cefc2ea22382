import type { Hull } from '../../../core/hull/hull.ts';
import { halfBreadth, sheerHeight } from '../../../core/hull/section-at.ts';
import type { SeatSetOut } from '../../../core/setout/set-out.ts';
import { millimetres, writtenLength } from '../../../core/setout/sheet-length.ts';
import type { MillimetrePoint } from '../../../core/setout/template-drawing.ts';
import type { SheetPdf } from '../pdf/sheet-pdf.ts';
import { SHEET_INK, TYPE } from './sheet-inks.ts';

const SCALES = [1 / 50, 1 / 100, 1 / 200] as const;
const READINGS = 60;

/** A small plan of the whole boat with its seats' marks, and how far this one lies from the bow's end. */
export function drawWholeBoat(
  pdf: SheetPdf,
  { out, hull }: { out: SeatSetOut; hull: Hull },
  at: { right: number; top: number; width: number },
): void {
  const scale = SCALES.find((s) => millimetres(hull.length) * s <= at.width) ?? SCALES.at(-1)!;
  const left = at.right - millimetres(hull.length) * scale;
  const middle = at.top + 13;
  const x = (xM: number) => left + millimetres(xM - hull.aftX) * scale;
  const sheer = Array.from({ length: READINGS + 1 }, (_, k): MillimetrePoint => {
    const along = hull.aftX + (hull.length * k) / READINGS;
    return [x(along), millimetres(halfBreadth(hull, along, sheerHeight(hull, along)) ?? 0) * scale];
  });
  pdf.text(`Whole boat, 1:${Math.round(1 / scale)}`, [left, at.top + 3], {
    size: TYPE.small,
    weight: 'strong',
    colour: SHEET_INK.soft,
  });
  pdf.path(
    [
      ...sheer.map(([along, half]): MillimetrePoint => [along, middle - half]),
      ...[...sheer].reverse().map(([along, half]): MillimetrePoint => [along, middle + half]),
    ],
    { stroke: SHEET_INK.ink, fill: SHEET_INK.hull, width: 0.2, closed: true },
  );
  out.work.boat.seats.forEach(({ stationM }, index) => {
    const mine = index === out.work.index;
    const half = mine ? 5 : 3;
    pdf.path(
      [
        [x(stationM), middle - half],
        [x(stationM), middle + half],
      ],
      { stroke: mine ? SHEET_INK.mark : SHEET_INK.soft, width: mine ? 0.3 : 0.15 },
    );
  });
  const station = out.work.frame.stationX;
  const toBow = writtenLength(millimetres(hull.foreX - station), out.work.options.units);
  pdf.text('M', [x(station), middle - 6], {
    size: TYPE.small,
    anchor: 'middle',
    colour: SHEET_INK.mark,
    weight: 'strong',
  });
  pdf.text(`M lies ${toBow} aft of the bow’s end`, [at.right, middle + 9], {
    size: TYPE.small,
    anchor: 'end',
  });
}

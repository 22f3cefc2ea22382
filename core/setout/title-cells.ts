import type { PaperName } from './paper.ts';
import type { SeatSetOut } from './set-out.ts';
import { revisionText, type SheetStamp, stampDay } from './sheet-stamp.ts';

/** A cell of the title block: its share of the width, what it is, and two lines. */
export interface TitleCell {
  readonly share: number;
  readonly label: string;
  readonly strong: string;
  readonly more: string;
}

/**
 * What stands in a set-out sheet's title block: who for, which boat, which revision, which scale, units and paper. `scale`
 * is the drawing's as text, null on a sheet without one; `count` is `1 of 3`.
 */
export function titleCells(
  out: SeatSetOut,
  {
    stamp,
    paper,
    scale,
    count,
  }: { stamp: SheetStamp; paper: PaperName; scale: string | null; count: string },
): TitleCell[] {
  const { fit, index, options } = out.work;
  const seat = fit.seats.length === 1 ? '' : `, seat ${index + 1} of ${fit.seats.length}`;
  return [
    {
      share: 34,
      label: 'Set-out sheet for',
      strong: stamp.athleteName,
      more: `kneels on the ${out.kneels} knee${seat}`,
    },
    { share: 34, label: 'Boat', strong: stamp.boatName, more: stamp.fitName },
    { share: 28, label: 'Revision', strong: revisionText(stamp), more: `kept ${stampDay(stamp)}` },
    {
      share: 26,
      label: 'Scale and units',
      strong: scale ? `drawing ${scale} on ${paper}` : `tables, ${paper}`,
      more: `${options.units === 'mm' ? 'millimetres' : 'inches to 1/32'}; print at 100 %`,
    },
    { share: 14, label: 'Sheet', strong: count, more: 'Kneelwright' },
  ];
}

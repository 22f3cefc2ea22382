import type { PageSize } from '../../../core/setout/paper.ts';
import type { SeatSetOut } from '../../../core/setout/set-out.ts';
import { fittedText } from '../pdf/fitted-text.ts';
import type { SheetPdf } from '../pdf/sheet-pdf.ts';
import { revisionText, type SheetStamp, stampDay } from '../sheet-stamp.ts';
import type { Box } from './flow.ts';
import { SHEET_INK, TYPE } from './sheet-inks.ts';

/** Height of the title block, millimetres. */
export const TITLE_BLOCK_MM = 17;
export const SHEET_MARGIN_MM = 8;

/** What stands in the title block of one sheet. */
export interface TitleBlock {
  readonly page: PageSize;
  readonly stamp: SheetStamp;
  readonly out: SeatSetOut;
  /** Scale of the drawing on this sheet; null where there is none. */
  readonly scale: string | null;
  readonly sheet: number;
  readonly sheets: number;
}

/** The room inside a sheet's frame, above its title block. */
export function sheetRoom({ width, height }: PageSize): Box {
  return {
    left: SHEET_MARGIN_MM + 4,
    top: SHEET_MARGIN_MM + 4,
    width: width - 2 * (SHEET_MARGIN_MM + 4),
    height: height - 2 * SHEET_MARGIN_MM - TITLE_BLOCK_MM - 8,
  };
}

/** The sheet's frame and its title block along the foot. */
export function drawTitleBlock(pdf: SheetPdf, given: TitleBlock): void {
  const { page, stamp, out, scale, sheet, sheets } = given;
  const frame = {
    left: SHEET_MARGIN_MM,
    top: SHEET_MARGIN_MM,
    width: page.width - 2 * SHEET_MARGIN_MM,
    height: page.height - 2 * SHEET_MARGIN_MM,
  };
  const top = frame.top + frame.height - TITLE_BLOCK_MM;
  pdf.rect(frame, { stroke: SHEET_INK.ink, width: 0.5 });
  pdf.path(
    [
      [frame.left, top],
      [frame.left + frame.width, top],
    ],
    { stroke: SHEET_INK.ink, width: 0.5 },
  );
  const seat =
    out.work.fit.seats.length === 1 ? '' : `, seat ${out.work.index + 1} of ${out.work.fit.seats.length}`;
  const cells: { share: number; label: string; strong: string; more: string }[] = [
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
      strong: scale ? `drawing ${scale} on ${page.paper}` : `tables, ${page.paper}`,
      more: `${out.work.options.units === 'mm' ? 'millimetres' : 'inches to 1/32'}; print at 100 %`,
    },
    { share: 14, label: 'Sheet', strong: `${sheet} of ${sheets}`, more: 'Kneelwright' },
  ];
  const total = cells.reduce((sum, { share }) => sum + share, 0);
  let left = frame.left;
  for (const { share, label, strong, more } of cells) {
    const width = (frame.width * share) / total;
    if (left > frame.left)
      pdf.path(
        [
          [left, top],
          [left, top + TITLE_BLOCK_MM],
        ],
        { stroke: SHEET_INK.ink, width: 0.2 },
      );
    pdf.text(label, [left + 2.5, top + 4.2], { size: TYPE.small, colour: SHEET_INK.soft });
    fittedText(pdf, strong, { at: [left + 2.5, top + 9.4], width: width - 5, size: 4, weight: 'strong' });
    fittedText(pdf, more, {
      at: [left + 2.5, top + 14],
      width: width - 5,
      size: TYPE.small,
      weight: 'regular',
    });
    left += width;
  }
}

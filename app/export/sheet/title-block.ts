import type { PageSize } from '../../../core/setout/paper.ts';
import type { SeatSetOut } from '../../../core/setout/set-out.ts';
import { SHEET_TYPE } from '../../../core/setout/sheet-inks.ts';
import { SHEET_MARGIN_MM, TITLE_BLOCK_MM } from '../../../core/setout/sheet-layout.ts';
import type { SheetStamp } from '../../../core/setout/sheet-stamp.ts';
import { titleCells } from '../../../core/setout/title-cells.ts';
import { fittedText } from '../pdf/fitted-text.ts';
import { SHEET_INK } from '../pdf/sheet-inks.ts';
import type { SheetPdf } from '../pdf/sheet-pdf.ts';

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
  const cells = titleCells(out, {
    stamp,
    paper: page.paper,
    scale,
    count: out.work.words.say('work-title.count', { page: sheet, pages: sheets }),
  });
  const total = cells.reduce((sum, { share }) => sum + share, 0);
  let left = frame.left;
  for (const [index, { share, label, strong, more }] of cells.entries()) {
    const tag = sheet === 1 && index === 0 ? 'H1' : 'P';
    const width = (frame.width * share) / total;
    if (left > frame.left)
      pdf.path(
        [
          [left, top],
          [left, top + TITLE_BLOCK_MM],
        ],
        { stroke: SHEET_INK.ink, width: 0.2 },
      );
    pdf.text(label, [left + 2.5, top + 4.2], { size: SHEET_TYPE.small, colour: SHEET_INK.soft });
    fittedText(pdf, strong, {
      at: [left + 2.5, top + 9.4],
      width: width - 5,
      size: 4,
      weight: 'strong',
      tag,
    });
    fittedText(pdf, more, {
      at: [left + 2.5, top + 14],
      width: width - 5,
      size: SHEET_TYPE.small,
      weight: 'regular',
    });
    left += width;
  }
}

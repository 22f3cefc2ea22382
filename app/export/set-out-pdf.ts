import type { Hull } from '../../core/hull/hull.ts';
import { type PageSize, type PaperName, pageOf } from '../../core/setout/paper.ts';
import type { SeatSetOut } from '../../core/setout/set-out.ts';
import { createSheetPdf } from './pdf/sheet-pdf.ts';
import { type Box, type Column, flow } from './sheet/flow.ts';
import { sheetBlocks } from './sheet/sheet-blocks.ts';
import { drawSheetDrawing, heightAt, scaleFor, scaleText, sheetDrawing } from './sheet/sheet-drawing.ts';
import { drawTitleBlock, sheetRoom } from './sheet/title-block.ts';
import type { SheetStamp } from './sheet-stamp.ts';
import type { PrintedPdf } from './template-pdf.ts';

const COLUMN_GAP_MM = 8;
/** Columns are about this wide, millimetres: a line of body type that reads easily. */
const COLUMN_MM = 125;

/** The page, the room of the drawing on the first sheet, and the columns that tables flow through. */
interface Layout {
  readonly page: PageSize;
  readonly drawing: Box;
  /** `tall` is the height that the drawing takes. */
  columns(tall: number): Generator<Column, never>;
}

/** Less room than this under a drawing is left white, millimetres. */
const LEAST_ROOM_MM = 24;

/** The set-out sheet of a seat: three views to scale, tables, order of work, cautions. One page a step. */
export function* setOutPdf(
  out: SeatSetOut,
  { hull, paper, stamp }: { hull: Hull; paper: PaperName; stamp: SheetStamp },
): Generator<void, PrintedPdf> {
  const pdf = createSheetPdf({
    title: `Set-out sheet – ${stamp.athleteName}, ${stamp.boatName}`,
    subject: 'Setting-out dimensions for knee pad, foot rest and front foot',
    author: stamp.fitName,
    keptAt: stamp.keptAt,
  });
  const layout = layoutOn(paper);
  const views = sheetDrawing(out, hull);
  const scale = scaleFor(views, layout.drawing);
  const placed = flow(pdf, sheetBlocks(out), layout.columns(heightAt(views, scale)));
  const sheets = 1 + Math.max(0, ...placed.map(({ page }) => page));
  for (let sheet = 0; sheet < sheets; sheet++) {
    pdf.addPage(layout.page);
    if (sheet === 0) drawSheetDrawing(pdf, views, { box: layout.drawing, scale });
    for (const { page, row, left, top, width } of placed) {
      if (page === sheet) row.draw(pdf, { left, top, width });
    }
    drawTitleBlock(pdf, {
      page: layout.page,
      stamp,
      out,
      scale: sheet === 0 ? scaleText(scale) : null,
      sheet: sheet + 1,
      sheets,
    });
    yield;
  }
  return { bytes: pdf.bytes(), missing: pdf.missing };
}

/** A4 and Letter give the first sheet to the drawing and what fits under it; on A3 tables stand beside it too. */
function layoutOn(paper: PaperName): Layout {
  const page = pageOf(paper, { lying: true });
  const room = sheetRoom(page);
  const beside = paper === 'A3' ? columnsOf(room)[0]!.width : 0;
  const drawing = { ...room, width: room.width - (beside > 0 ? beside + COLUMN_GAP_MM : 0) };
  return {
    page,
    drawing,
    *columns(tall) {
      const left = room.height - tall;
      if (left >= LEAST_ROOM_MM) {
        const under = { ...drawing, top: room.top + tall, height: left };
        for (const box of columnsOf(under)) yield { page: 0, box };
      }
      if (beside > 0)
        yield { page: 0, box: { ...room, left: room.left + room.width - beside, width: beside } };
      for (let sheet = 1; ; sheet++) {
        for (const box of columnsOf(room)) yield { page: sheet, box };
      }
    },
  };
}

/** As many columns of about `COLUMN_MM` as a box has room for. */
function columnsOf(box: Box): Box[] {
  const count = Math.max(1, Math.round((box.width + COLUMN_GAP_MM) / (COLUMN_MM + COLUMN_GAP_MM)));
  const width = (box.width - (count - 1) * COLUMN_GAP_MM) / count;
  return Array.from({ length: count }, (_, k) => ({
    ...box,
    left: box.left + k * (width + COLUMN_GAP_MM),
    width,
  }));
}

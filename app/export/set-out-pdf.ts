import type { Hull } from '../../core/hull/hull.ts';
import type { PaperName } from '../../core/setout/paper.ts';
import type { SeatSetOut } from '../../core/setout/set-out.ts';
import { sheetBlocks } from '../../core/setout/sheet-blocks.ts';
import { heightAt, scaleFor, scaleText, sheetDrawing } from '../../core/setout/sheet-drawing.ts';
import { type FirstSheet, firstSheet, sheetColumns } from '../../core/setout/sheet-layout.ts';
import { sheetMarks } from '../../core/setout/sheet-marks.ts';
import type { SheetStamp } from '../../core/setout/sheet-stamp.ts';
import { drawPaper } from './pdf/draw-shapes.ts';
import { createSheetPdf } from './pdf/sheet-pdf.ts';
import { fewestSheets, sheetsOf } from './sheet/fewest-sheets.ts';
import { type FlowColumn, flow } from './sheet/flow.ts';
import { flowing } from './sheet/flowing-block.ts';
import { drawTitleBlock } from './sheet/title-block.ts';
import type { PrintedPdf } from './template-pdf.ts';

/** Less room than this under a drawing is left white, millimetres. */
const LEAST_ROOM_MM = 18;

/** The set-out sheet of a seat: three views to scale, tables, order of work, cautions. One page a step. */
export function* setOutPdf(
  out: SeatSetOut,
  { hull, paper, stamp }: { hull: Hull; paper: PaperName; stamp: SheetStamp },
): Generator<void, PrintedPdf> {
  const pdf = createSheetPdf({
    title: out.work.words.say('paper.sheet.title', { athlete: stamp.athleteName, boat: stamp.boatName }),
    subject: out.work.words.say('paper.sheet.subject'),
    keptAt: stamp.keptAt,
    lang: out.work.words.language,
  });
  const layout = firstSheet(paper);
  const views = sheetDrawing(out, hull);
  const scale = scaleFor(views, layout.drawing);
  const blocks = sheetBlocks(out).map((block) => flowing(block, out.work.words));
  const placed = fewestSheets(
    (spacing) => flow(pdf, blocks, { columns: columnsAfter(layout, heightAt(views, scale)), ...spacing }),
    { blocks: blocks.length, leastMm: layout.room.height / 2 },
  );
  const sheets = sheetsOf(placed);
  for (let sheet = 0; sheet < sheets; sheet++) {
    pdf.addPage(layout.page);
    // First, though it stands at the foot: who and what the sheet is for is read before all else.
    drawTitleBlock(pdf, {
      page: layout.page,
      stamp,
      out,
      scale: sheet === 0 ? scaleText(scale) : null,
      sheet: sheet + 1,
      sheets,
    });
    if (sheet === 0) {
      const alt = out.work.words.say('setout.sheet.drawing', { scale: scaleText(scale), paper });
      pdf.figure(alt, () => drawPaper(pdf, sheetMarks(views, { box: layout.drawing, scale })));
    }
    for (const { page, row, left, top, width } of placed) {
      if (page === sheet) row.draw(pdf, { left, top, width });
    }
    yield;
  }
  return { bytes: pdf.bytes(), missing: pdf.missing };
}

/** Columns one after another: under the drawing if there is room, beside it, then those of the sheets that follow. */
function* columnsAfter({ room, drawing, beside }: FirstSheet, tall: number): Generator<FlowColumn, never> {
  const left = room.height - tall;
  if (left >= LEAST_ROOM_MM) {
    const under = { ...drawing, top: room.top + tall, height: left };
    for (const box of sheetColumns(under)) yield { page: 0, box };
  }
  if (beside) yield { page: 0, box: beside };
  for (let sheet = 1; ; sheet++) {
    for (const box of sheetColumns(room)) yield { page: sheet, box };
  }
}

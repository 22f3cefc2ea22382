import { useMemo } from 'react';
import type { Hull } from '../../../core/hull/hull.ts';
import { boundsOf } from '../../../core/setout/drawing-bounds.ts';
import type { PaperName } from '../../../core/setout/paper.ts';
import type { SeatSetOut } from '../../../core/setout/set-out.ts';
import { sheetBlocks } from '../../../core/setout/sheet-blocks.ts';
import { heightAt, scaleFor, scaleText, sheetDrawing } from '../../../core/setout/sheet-drawing.ts';
import { firstSheet } from '../../../core/setout/sheet-layout.ts';
import { sheetMarks } from '../../../core/setout/sheet-marks.ts';
import type { SheetStamp } from '../../../core/setout/sheet-stamp.ts';
import { titleCells } from '../../../core/setout/title-cells.ts';
import { say } from '../../language/messages.ts';
import { BlockView } from './block-view.tsx';
import { PaperDrawing } from './paper-drawing.tsx';
import { usePageSize } from './use-page-size.ts';

/** What the sheet of a seat is made from. */
export interface SheetContent {
  readonly out: SeatSetOut;
  readonly hull: Hull;
  readonly paper: PaperName;
  readonly stamp: SheetStamp;
}

/** Margin around what is drawn, millimetres on the paper: the screen shows the drawing and not the paper beside it. */
const AIR_MM = 4;

/** The set-out sheet on the screen, from the very drawing and words that the PDF is made from. */
export function SheetPreview({ out, hull, paper, stamp }: SheetContent) {
  const { drawn, part, margin, scale } = useMemo(() => {
    const drawing = sheetDrawing(out, hull);
    const { drawing: box } = firstSheet(paper);
    const chosen = scaleFor(drawing, box);
    const marks = sheetMarks(drawing, { box, scale: chosen });
    const { minX, maxX } = boundsOf(marks);
    return {
      drawn: marks,
      margin: box.left,
      part: {
        ...box,
        left: minX - AIR_MM,
        width: maxX - minX + 2 * AIR_MM,
        height: heightAt(drawing, chosen),
      },
      scale: scaleText(chosen),
    };
  }, [out, hull, paper]);
  usePageSize(paper, margin);
  const blocks = useMemo(() => sheetBlocks(out), [out]);
  const cells = titleCells(out, { stamp, paper, scale, count: '' }).filter(({ strong }) => strong !== '');
  return (
    <section className="set-out-sheet" aria-label={say('setout.page')}>
      <p className="soft screen-only">{say('setout.sheet.screen', { paper, scale })}</p>
      <figure>
        <PaperDrawing shapes={drawn} part={part} label={say('setout.sheet.drawing', { paper, scale })} />
      </figure>
      <dl className="sheet-title">
        {cells.map(({ label, strong, more, share }) => (
          <div key={label} className="sheet-title-cell" style={{ flexGrow: share }}>
            <dt className="lettering">{label}</dt>
            <dd>
              <strong>{strong}</strong>
              <span className="sheet-title-more">{more}</span>
            </dd>
          </div>
        ))}
      </dl>
      <div className="sheet-blocks">
        {blocks.map((block) => (
          <BlockView key={block.heading} block={block} />
        ))}
      </div>
    </section>
  );
}

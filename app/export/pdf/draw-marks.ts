import { marksOfShapes, type PaperMark, type Placement } from '../../../core/setout/paper-marks.ts';
import type { TemplateShape } from '../../../core/setout/template-drawing.ts';
import { SHEET_INK } from './sheet-inks.ts';
import type { Ink, SheetPdf } from './sheet-pdf.ts';

/** Draws a template's shapes where they are placed. */
export function drawShapes(pdf: SheetPdf, shapes: readonly TemplateShape[], placement: Placement): void {
  drawMarks(pdf, marksOfShapes(shapes, placement));
}

/** Puts marks on the page in the inks of paper. */
export function drawMarks(pdf: SheetPdf, marks: readonly PaperMark[]): void {
  for (const mark of marks) {
    if (mark.kind === 'words') {
      const { text, at, size, strong, ink, anchor, turnDeg } = mark;
      const weight = strong ? 'strong' : 'regular';
      pdf.text(text, at, { size, weight, colour: SHEET_INK[ink], anchor, turnDeg });
    } else if (mark.kind === 'circle') {
      pdf.circle(mark.centre, mark.radius, inked(mark));
    } else {
      pdf.path(mark.points, { ...inked(mark), closed: mark.closed });
    }
  }
}

function inked({ line, fill }: Exclude<PaperMark, { kind: 'words' }>): Ink {
  return {
    ...(line ? { stroke: SHEET_INK[line.ink], width: line.width, dash: line.dash } : {}),
    ...(fill ? { fill: SHEET_INK[fill] } : {}),
  };
}

import { boundsOf } from '../../core/setout/drawing-bounds.ts';
import { type SheetStamp, stampLine } from '../../core/setout/sheet-stamp.ts';
import { type FullSizeDrawing, type TemplateShape, textAt } from '../../core/setout/template-drawing.ts';
import type { Words } from '../../core/text/words.ts';
import { checkBars } from './check-bars.ts';

/** Between the drawing and what is written around it, millimetres. */
const GAP_MM = 14;

/** A template's shapes with its title above and the two check bars below and to the left, clear of the drawing. */
export function withTitleAndBars(
  { title, seen, facing, shapes }: FullSizeDrawing,
  stamp: SheetStamp,
  said: Words,
): TemplateShape[] {
  const { minX, minY, maxY } = boundsOf(shapes);
  return [
    ...shapes,
    textAt(title, [minX, maxY + GAP_MM + 18], { height: 5 }),
    ...(facing ? [textAt(facing, [minX, maxY + GAP_MM + 12])] : []),
    textAt(stampLine(stamp, said), [minX, maxY + GAP_MM + 6]),
    textAt(said.say('paper.full-size', { units: 'mm', seen }), [minX, maxY + GAP_MM], { height: 2.5 }),
    ...checkBars([minX - GAP_MM, minY - GAP_MM], said),
  ];
}

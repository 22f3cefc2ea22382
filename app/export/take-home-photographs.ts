import type { SheetBox } from '../../core/setout/sheet-layout.ts';
import { fittedText } from './pdf/fitted-text.ts';
import { SHEET_INK } from './pdf/sheet-inks.ts';
import type { SheetPdf } from './pdf/sheet-pdf.ts';

/** A photograph for the page to take home: a JPEG, the face already blurred where it is not to be seen. */
export interface PrintedPhotograph {
  readonly jpeg: Uint8Array;
  readonly caption: string;
}

const CAPTION_MM = 4;
const GAP_MM = 8;

/** Photographs under one another, each as large as its share of the room, its caption over it. */
export function drawPhotographs(
  pdf: SheetPdf,
  photographs: readonly PrintedPhotograph[],
  room: SheetBox,
): void {
  const share = (room.height - GAP_MM * (photographs.length - 1)) / photographs.length;
  photographs.forEach(({ jpeg, caption }, i) => {
    const top = room.top + i * (share + GAP_MM);
    fittedText(pdf, caption, {
      at: [room.left, top + CAPTION_MM],
      width: room.width,
      size: CAPTION_MM,
      colour: SHEET_INK.soft,
    });
    const head = 1.6 * CAPTION_MM;
    pdf.figure(caption, () => {
      pdf.picture(jpeg, { ...room, top: top + head, height: share - head });
    });
  });
}

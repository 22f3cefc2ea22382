import type { SheetPdf, Type } from './sheet-pdf.ts';

/** Type is never set smaller than this to make it fit, millimetres. */
const SMALLEST_MM = 1.8;

/** Words set smaller until they fit a width; when that would be too small to read, cut with an ellipsis. */
export function fittedText(
  pdf: SheetPdf,
  words: string,
  { at, width, ...type }: Type & { at: readonly [number, number]; width: number },
): void {
  const { weight } = type;
  const needed = pdf.widthOf(words, { size: type.size, weight });
  const size = Math.max(
    Math.min(SMALLEST_MM, type.size),
    Math.min(type.size, (type.size * width) / Math.max(needed, 1e-6)),
  );
  let letters = [...words];
  let text = words;
  while (letters.length > 1 && pdf.widthOf(text, { size, weight }) > width + 1e-6) {
    letters = letters.slice(0, -1);
    text = `${letters.join('').trimEnd()}…`;
  }
  pdf.text(text, at, { ...type, size });
}

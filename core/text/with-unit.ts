/** A space that does not break and is narrow: no line ends inside a measure. */
export const GAP = '\u{202f}';

/** A figure and its unit as every text has them: `12 mm`, with a gap where no line ends. */
export function withUnit(figure: string, unit: string): string {
  return `${figure}${GAP}${unit}`;
}

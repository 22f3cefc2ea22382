import { lettersWidth } from './letter-widths.ts';

/** A label in a row: its words and the place that its middle should be over, millimetres. */
export interface RowLabel {
  readonly text: string;
  readonly x: number;
}

/** Blank between two labels of a row, millimetres. */
const GAP_MM = 1.5;

/**
 * Middles of labels in one row, millimetres, in the order given: over their places, moved away from a label that keeps its own
 * (`kept`) as far as words of this height of capitals (millimetres) need to stand clear of each other. Labels on the place of the
 * kept one move to lower x.
 */
export function spreadRow(labels: readonly RowLabel[], kept: RowLabel, height: number): number[] {
  const half = ({ text }: RowLabel) => (lettersWidth(text) * height) / 2;
  const middles = labels.map(({ x }) => x);
  for (const way of [-1, 1] as const) {
    const outward = labels
      .map((label, i) => ({ label, i, along: way * (label.x - kept.x) }))
      .filter(({ along }) => (way < 0 ? along >= 0 : along > 0))
      .toSorted((a, b) => a.along - b.along);
    let taken = half(kept);
    for (const { label, i, along } of outward) {
      const middle = Math.max(along, taken + GAP_MM + half(label));
      middles[i] = kept.x + way * middle;
      taken = middle + half(label);
    }
  }
  return middles;
}

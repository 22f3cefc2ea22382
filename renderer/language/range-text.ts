import type { Unit } from '../../core/evaluation/finding.ts';
import type { FormatValue } from '../../core/text/signed-text.ts';

/** The range of a value, in the quantity's SI unit. */
interface RangeOf {
  readonly range: { readonly least: number; readonly most: number };
  readonly unit: Unit;
}

/** A range with its unit written once: "55–71 %"; one value where both ends read the same. */
export function rangeText({ range, unit }: RangeOf, write: FormatValue): string {
  const least = write(range.least, unit);
  const most = write(range.most, unit);
  if (least === most) return most;
  const [number] = /^.*\d/u.exec(least) ?? [least];
  return least.slice(number.length) === most.slice(/^.*\d/u.exec(most)?.[0].length)
    ? `${number}–${most}`
    : `${least}–${most}`;
}

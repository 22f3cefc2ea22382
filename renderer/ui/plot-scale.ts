/** A plot's ends and the round values at which it is ruled. */
export interface PlotScale {
  readonly low: number;
  readonly high: number;
  readonly ticks: readonly number[];
}

/**
 * A scale between round values around all `values`, with about `spaces` spaces between its ticks. A step is one of `steps` times a
 * power of ten; `leastRange` is the range of values that hardly differ.
 */
export function plotScale(
  values: readonly number[],
  { spaces, steps, leastRange }: { spaces: number; steps: readonly number[]; leastRange: number },
): PlotScale {
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const rough = Math.max(leastRange, most - least) / spaces;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = power * (steps.find((one) => one * power >= rough * (1 - 1e-9)) ?? 10);
  const first = Math.floor(least / step + 1e-9);
  const last = Math.max(first + 1, Math.ceil(most / step - 1e-9));
  const ticks = Array.from({ length: last - first + 1 }, (_, i) =>
    Number(((first + i) * step).toPrecision(12)),
  );
  return { low: ticks[0]!, high: ticks.at(-1)!, ticks };
}

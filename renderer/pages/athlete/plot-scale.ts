/** Steps of a plot's rules, times any power of ten. */
const STEPS = [1, 2, 2.5, 5, 10];
/** Values nearer than this share of themselves are one value. */
const LEAST_SPREAD = 1e-6;
/** About this many rules cross a plot. */
const RULES = 4;

/** A plot's ends and the values at which it is ruled. */
export interface PlotScale {
  readonly low: number;
  readonly high: number;
  readonly ticks: readonly number[];
}

/** A scale that holds all values between rules at round figures; of one value alone it has a step to either side. */
export function plotScale(values: readonly number[]): PlotScale {
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const spread = most - least;
  const reach = spread > Math.abs(most) * LEAST_SPREAD ? spread : Math.abs(most) * 0.02 || 1;
  const rough = reach / RULES;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = power * (STEPS.find((one) => one * power >= rough * (1 - 1e-9)) ?? 10);
  const first = Math.floor(least / step + 1e-9);
  const last = Math.max(first + 1, Math.ceil(most / step - 1e-9));
  const ticks = Array.from({ length: last - first + 1 }, (_, i) =>
    Number(((first + i) * step).toPrecision(12)),
  );
  return { low: ticks[0]!, high: ticks.at(-1)!, ticks };
}

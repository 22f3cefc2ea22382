/** Median and 95th percentile of some timings, microseconds. */
export interface Times {
  readonly medianUs: number;
  readonly p95Us: number;
  readonly runs: number;
}

/** One measured thing of the bench's table. */
export interface Row extends Times {
  readonly group: 'core' | 'renderer' | 'store';
  readonly name: string;
  /** How many times slower than another row of the same run; null where it stands alone. */
  readonly ratio: { readonly to: string; readonly times: number } | null;
}

/** The value below which a share of sorted numbers lies, by the nearest rank. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.max(0, Math.ceil(share * sorted.length) - 1))] ?? Number.NaN;
}

/** Median and 95th percentile of timings in milliseconds, given back in microseconds. */
export function timesOf(milliseconds: readonly number[]): Times {
  return {
    medianUs: 1000 * quantile(milliseconds, 0.5),
    p95Us: 1000 * quantile(milliseconds, 0.95),
    runs: milliseconds.length,
  };
}

/** Exponent b of the power law y = a·xᵇ through some points, by least squares on the logarithms. */
export function growthExponent(points: readonly (readonly [x: number, y: number])[]): number {
  const logs = points.map(([x, y]) => [Math.log(x), Math.log(y)] as const);
  const mean = (k: 0 | 1) => logs.reduce((sum, p) => sum + p[k], 0) / logs.length;
  const [mx, my] = [mean(0), mean(1)];
  const top = logs.reduce((sum, [x, y]) => sum + (x - mx) * (y - my), 0);
  return top / logs.reduce((sum, [x]) => sum + (x - mx) ** 2, 0);
}

/**
 * Times several pieces of work side by side: in each round every piece runs once, so that a noisy machine disturbs all
 * alike and their ratios mean something.
 */
export function sideBySide(
  work: Readonly<Record<string, () => unknown>>,
  { rounds, warmUp = Math.ceil(rounds / 4) }: { rounds: number; warmUp?: number },
): Record<string, Times> {
  const taken: Record<string, number[]> = Object.fromEntries(Object.keys(work).map((name) => [name, []]));
  for (let round = -warmUp; round < rounds; round++) {
    for (const [name, run] of Object.entries(work)) {
      const start = performance.now();
      run();
      const took = performance.now() - start;
      if (round >= 0) taken[name]!.push(took);
    }
  }
  return Object.fromEntries(Object.entries(taken).map(([name, times]) => [name, timesOf(times)]));
}

import type { Complex } from './exponential-integral.ts';

/** Complex amplitudes c₀ … c_n of a periodic series: f(t) = c₀ + Re Σ cₖ e^{ikωt}. `series` holds even instants of one period. */
export function harmonicsOf(series: readonly number[], highest: number): Complex[] {
  const count = series.length;
  return Array.from({ length: highest + 1 }, (_, k) => {
    let [re, im] = [0, 0];
    series.forEach((value, i) => {
      const turn = (2 * Math.PI * k * i) / count;
      re += value * Math.cos(turn);
      im -= value * Math.sin(turn);
    });
    const weight = (k === 0 ? 1 : 2) / count;
    return { re: re * weight, im: im * weight };
  });
}

/** The series back from its amplitudes, at `count` even instants. */
export function seriesOf(amplitudes: readonly Complex[], count: number): number[] {
  return Array.from({ length: count }, (_, i) =>
    amplitudes.reduce((sum, { re, im }, k) => {
      const turn = (2 * Math.PI * k * i) / count;
      return sum + re * Math.cos(turn) - im * Math.sin(turn);
    }, 0),
  );
}

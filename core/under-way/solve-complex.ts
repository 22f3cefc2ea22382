import type { Complex } from './exponential-integral.ts';

/** Solves A·x = b for a square complex matrix in rows, by elimination with pivots. @throws RangeError where A is singular. */
export function solveComplex(matrix: readonly Complex[], right: readonly Complex[]): Complex[] {
  const n = right.length;
  const re = Float64Array.from(matrix, (each) => each.re);
  const im = Float64Array.from(matrix, (each) => each.im);
  const x = right.map((each) => ({ ...each }));
  const size = (row: number, column: number) => Math.hypot(re[row * n + column]!, im[row * n + column]!);
  for (let column = 0; column < n; column++) {
    let pivot = column;
    for (let row = column + 1; row < n; row++) if (size(row, column) > size(pivot, column)) pivot = row;
    if (!(size(pivot, column) > 0)) throw new RangeError('singular matrix');
    if (pivot !== column) {
      for (let j = 0; j < n; j++) {
        const [one, other] = [column * n + j, pivot * n + j];
        [re[one], re[other]] = [re[other]!, re[one]!];
        [im[one], im[other]] = [im[other]!, im[one]!];
      }
      [x[column], x[pivot]] = [x[pivot]!, x[column]!];
    }
    const at = column * n + column;
    const square = re[at]! ** 2 + im[at]! ** 2;
    for (let row = 0; row < n; row++) {
      if (row === column) continue;
      const here = row * n + column;
      const factorRe = (re[here]! * re[at]! + im[here]! * im[at]!) / square;
      const factorIm = (im[here]! * re[at]! - re[here]! * im[at]!) / square;
      if (factorRe === 0 && factorIm === 0) continue;
      for (let j = column; j < n; j++) {
        const [target, source] = [row * n + j, column * n + j];
        re[target]! -= factorRe * re[source]! - factorIm * im[source]!;
        im[target]! -= factorRe * im[source]! + factorIm * re[source]!;
      }
      x[row] = minus(x[row]!, { re: factorRe, im: factorIm }, x[column]!);
    }
  }
  return x.map((each, i) => over(each, { re: re[i * n + i]!, im: im[i * n + i]! }));
}

/** a − f·b. */
const minus = (a: Complex, f: Complex, b: Complex): Complex => ({
  re: a.re - (f.re * b.re - f.im * b.im),
  im: a.im - (f.re * b.im + f.im * b.re),
});

/** a / b. */
const over = (a: Complex, b: Complex): Complex => {
  const square = b.re ** 2 + b.im ** 2;
  return { re: (a.re * b.re + a.im * b.im) / square, im: (a.im * b.re - a.re * b.im) / square };
};

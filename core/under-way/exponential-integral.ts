/** A complex number. */
export interface Complex {
  /** Real part. */
  readonly re: number;
  /** Imaginary part. */
  readonly im: number;
}

/** Euler's constant. */
const GAMMA = 0.5772156649015329;
/** Up to here the power series keeps 10 digits; beyond, the asymptotic one has more than 5. */
const SERIES_REACH = 12;
/** Enough for the series at the end of its reach. */
const MOST_TERMS = 120;

/**
 * e^z·E₁(z), the exponential integral on its principal branch, for |arg z| < π, z ≠ 0.
 * Source: Abramowitz and Stegun, Handbook of Mathematical Functions (1964), 5.1.11 and 5.1.51. E₁(1) = 0.2193839344.
 */
export function scaledExponentialIntegral(z: Complex): Complex {
  return Math.hypot(z.re, z.im) <= SERIES_REACH ? bySeries(z) : byAsymptotics(z);
}

/** E₁(z) = −γ − ln z − Σ (−z)ⁿ/(n·n!). */
function bySeries({ re, im }: Complex): Complex {
  let [sumRe, sumIm] = [-GAMMA - Math.log(Math.hypot(re, im)), -Math.atan2(im, re)];
  let [termRe, termIm] = [1, 0];
  for (let n = 1; n <= MOST_TERMS; n++) {
    [termRe, termIm] = [(-termRe * re + termIm * im) / n, (-termRe * im - termIm * re) / n];
    sumRe -= termRe / n;
    sumIm -= termIm / n;
    if (Math.abs(termRe) + Math.abs(termIm) < 1e-17 * (Math.abs(sumRe) + Math.abs(sumIm))) break;
  }
  const size = Math.exp(re);
  const [cos, sin] = [size * Math.cos(im), size * Math.sin(im)];
  return { re: cos * sumRe - sin * sumIm, im: cos * sumIm + sin * sumRe };
}

/** e^z·E₁(z) ≈ (1/z)·Σ n!/(−z)ⁿ, to its smallest term. */
function byAsymptotics({ re, im }: Complex): Complex {
  const square = re * re + im * im;
  const [inverseRe, inverseIm] = [re / square, -im / square];
  let [termRe, termIm] = [inverseRe, inverseIm];
  let [sumRe, sumIm] = [termRe, termIm];
  const last = Math.floor(Math.sqrt(square));
  for (let n = 1; n < last; n++) {
    [termRe, termIm] = [
      -n * (termRe * inverseRe - termIm * inverseIm),
      -n * (termRe * inverseIm + termIm * inverseRe),
    ];
    sumRe += termRe;
    sumIm += termIm;
    if (Math.abs(termRe) + Math.abs(termIm) < 1e-14 * Math.abs(sumRe)) break;
  }
  return { re: sumRe, im: sumIm };
}

/**
 * A smooth curve through points with ascending x that nowhere overshoots them: cubic Hermite pieces with slopes limited
 * after Fritsch and Carlson (SIAM J. Numer. Anal. 17, 1980). Outside the points it keeps their end values.
 */
export function monotoneCubic(xs: readonly number[], ys: readonly number[]): (x: number) => number {
  const n = xs.length;
  const slopes = limitedSlopes(xs, ys);
  return (x) => {
    if (x <= xs[0]!) return ys[0]!;
    if (x >= xs[n - 1]!) return ys[n - 1]!;
    let i = 0;
    while (x > xs[i + 1]!) i++;
    const h = xs[i + 1]! - xs[i]!;
    const t = (x - xs[i]!) / h;
    const u = 1 - t;
    return (
      u * u * (1 + 2 * t) * ys[i]! +
      t * t * (1 + 2 * u) * ys[i + 1]! +
      h * t * u * (u * slopes[i]! - t * slopes[i + 1]!)
    );
  };
}

/**
 * Slopes that let no curve overshoot its points: weighted harmonic means of the secants (Fritsch and Butland 1984),
 * 0 at a turn.
 */
function limitedSlopes(xs: readonly number[], ys: readonly number[]): number[] {
  const n = xs.length;
  const secants = xs.slice(1).map((x, i) => (ys[i + 1]! - ys[i]!) / (x - xs[i]!));
  return xs.map((_, i) => {
    const before = secants[i - 1] ?? secants[0]!;
    const after = secants[i] ?? secants[n - 2]!;
    if (before * after <= 0) return 0;
    const hb = xs[i]! - (xs[i - 1] ?? xs[i]!);
    const ha = (xs[i + 1] ?? xs[i]!) - xs[i]!;
    const harmonic = (3 * (hb + ha)) / ((2 * ha + hb) / before + (ha + 2 * hb) / after);
    return harmonic;
  });
}

/**
 * Weights w with ∫f dx ≈ Σ wᵢ f(xᵢ) for ascending, unequal stations: on each interval the mean of the two parabolas
 * through its ends and the next station on either side (one parabola at the ends). Third order or better for smooth f,
 * exact for quadratics; with two stations the trapezium rule. x in metres, weights in metres.
 */
export function stationWeights(
  x: readonly number[] | Float64Array,
  count: number,
  weights: Float64Array,
): void {
  weights.fill(0, 0, count);
  if (count < 3) {
    if (count === 2) weights.fill((x[1]! - x[0]!) / 2, 0, 2);
    return;
  }
  for (let i = 0; i + 1 < count; i++) {
    const left = i > 0;
    const right = i + 2 < count;
    const share = left && right ? 0.5 : 1;
    if (left) addParabola(x, weights, { first: i - 1, from: i, share });
    if (right) addParabola(x, weights, { first: i, from: i, share });
  }
}

/** Adds the integral over [x[from], x[from + 1]] of the parabola through stations first, first + 1, first + 2. */
function addParabola(
  x: readonly number[] | Float64Array,
  weights: Float64Array,
  { first, from, share }: { first: number; from: number; share: number },
): void {
  const a = x[from]!;
  const h = x[from + 1]! - a;
  for (let k = 0; k < 3; k++) {
    const p = x[first + ((k + 1) % 3)]! - a;
    const q = x[first + ((k + 2) % 3)]! - a;
    const r = x[first + k]! - a;
    const integral = h * ((h * h) / 3 - ((p + q) * h) / 2 + p * q);
    weights[first + k]! += (share * integral) / ((r - p) * (r - q));
  }
}

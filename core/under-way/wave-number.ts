/** Newton steps that are enough from the start taken here. */
const MOST_STEPS = 30;

/**
 * The wave number k > 0 with k = deep · tanh(k h), per metre; `deep` is what it would be in deep water, `depth` the water's
 * depth h in metres (undefined: deep). 0 where no wave is that slow: deep · h ≤ 1.
 */
export function waveNumber(deep: number, depth: number | undefined): number {
  if (depth === undefined) return deep;
  const ratio = deep * depth;
  if (ratio <= 1) return 0;
  if (ratio > 20) return deep;
  // kh = ratio·tanh(kh): near 1 the root is √(3(1 − 1/ratio)), far above it is ratio itself. Both bound it from above.
  let kh = Math.min(ratio, Math.sqrt(3 * (ratio - 1)));
  for (let step = 0; step < MOST_STEPS; step++) {
    const tanh = Math.tanh(kh);
    const change = (kh - ratio * tanh) / (1 - ratio * (1 - tanh ** 2));
    kh -= change;
    if (Math.abs(change) < 1e-14 * kh) break;
  }
  return kh / depth;
}

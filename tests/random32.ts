/** Repeatable random numbers from 0 to 1, without 1 (mulberry32, public domain). */
export function random32(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/** Half of the step between two of these numbers. */
const HALF_STEP = 2 ** -33;

/** The same without 0: their logarithms are finite. */
export function uniform(seed: number): () => number {
  const next = random32(seed);
  return () => next() + HALF_STEP;
}

/** Standard normal numbers from uniform ones (Box and Muller 1958). */
export function normalOf(next: () => number): () => number {
  return () => Math.sqrt(-2 * Math.log(next())) * Math.cos(2 * Math.PI * next());
}

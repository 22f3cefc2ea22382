/** Nodes and weights of the 15-point Kronrod rule and the 7-point Gauss rule inside it (Piessens and others, QUADPACK, 1983). */
const NODES = [
  0.9914553711208126, 0.9491079123427585, 0.8648644233597691, 0.7415311855993945, 0.5860872354676911,
  0.4058451513773972, 0.2077849550078985, 0,
];
const KRONROD = [
  0.0229353220105292, 0.0630920926299786, 0.1047900103222502, 0.1406532597155259, 0.1690047266392679,
  0.1903505780647854, 0.2044329400752989, 0.2094821410847278,
];
const GAUSS = [0, 0.1294849661688697, 0, 0.2797053914892767, 0, 0.3818300505051189, 0, 0.4179591836734694];

/** Halvings of one panel before its value is taken as it is. */
const MOST_HALVINGS = 12;
/** Width of the first panels; and how many small ones in a row end the integral. */
const PANEL = 0.5;
const SMALL_PANELS = 2;
const MOST_PANELS = 40;

/**
 * ∫₀^∞ f(u) du of a function that dies away at least like an exponential: panels of 0.5, each by adaptive Gauss–Kronrod
 * (7, 15), until two in a row add less than `tolerance` of the sum.
 */
export function integrateToInfinity(f: (u: number) => number, tolerance: number): number {
  let sum = 0;
  let small = 0;
  for (let panel = 0; panel < MOST_PANELS && small < SMALL_PANELS; panel++) {
    const part = adaptive(
      f,
      { from: panel * PANEL, to: (panel + 1) * PANEL },
      { sum, tolerance, left: MOST_HALVINGS },
    );
    sum += part;
    small = Math.abs(part) <= tolerance * Math.abs(sum) ? small + 1 : 0;
  }
  return sum;
}

function adaptive(
  f: (u: number) => number,
  { from, to }: { from: number; to: number },
  { sum, tolerance, left }: { sum: number; tolerance: number; left: number },
): number {
  const { value, error } = kronrod(f, from, to);
  if (left === 0 || error <= tolerance * Math.max(Math.abs(sum + value), Number.MIN_VALUE)) return value;
  const middle = (from + to) / 2;
  const low = adaptive(f, { from, to: middle }, { sum, tolerance, left: left - 1 });
  return low + adaptive(f, { from: middle, to }, { sum: sum + low, tolerance, left: left - 1 });
}

function kronrod(f: (u: number) => number, from: number, to: number) {
  const [half, middle] = [(to - from) / 2, (to + from) / 2];
  let [fine, coarse] = [0, 0];
  for (let i = 0; i < NODES.length; i++) {
    const step = half * NODES[i]!;
    const pair = step === 0 ? f(middle) : f(middle - step) + f(middle + step);
    fine += KRONROD[i]! * pair;
    coarse += GAUSS[i]! * pair;
  }
  return { value: fine * half, error: Math.abs(fine - coarse) * half };
}

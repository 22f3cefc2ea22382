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

/** Most halvings of one panel; then its value is taken as it is. */
const MOST_HALVINGS = 12;
/** Width of the panels. */
const PANEL = 0.5;
/** The integral ends after this many small panels in a row: one alone may be small because the integrand oscillates. */
const SMALL_PANELS = 2;
/** The integral ends here in any case. */
const MOST_PANELS = 40;

/** Allowed error of one panel: a share of the integral or an absolute value, whichever is more. */
export interface Tolerance {
  /** Share of the whole integral. */
  readonly relative: number;
  /** In the integral's unit. */
  readonly absolute: number;
}

/** The allowed error of one interval. */
const allowed = ({ relative, absolute }: Tolerance, sum: number) =>
  Math.max(relative * Math.abs(sum), absolute, Number.MIN_VALUE);

/**
 * ∫₀^∞ f(u) du of a function that decays at least exponentially: panels of 0.5, each by adaptive Gauss–Kronrod (7, 15), until
 * two in a row add less than the tolerance.
 */
export function integrateToInfinity(f: (u: number) => number, asked: Tolerance): number {
  let sum = 0;
  let small = 0;
  for (let panel = 0; panel < MOST_PANELS && small < SMALL_PANELS; panel++) {
    const part = adaptive(
      f,
      { from: panel * PANEL, to: (panel + 1) * PANEL },
      { sum, asked, left: MOST_HALVINGS },
    );
    sum += part;
    small = Math.abs(part) <= allowed(asked, sum) ? small + 1 : 0;
  }
  return sum;
}

/** Halves an interval until its error is allowed, or it has been halved often enough. */
function adaptive(
  f: (u: number) => number,
  { from, to }: { from: number; to: number },
  { sum, asked, left }: { sum: number; asked: Tolerance; left: number },
): number {
  const { value, error } = kronrod(f, from, to);
  if (left === 0 || error <= allowed(asked, sum + value)) return value;
  const middle = (from + to) / 2;
  const low = adaptive(f, { from, to: middle }, { sum, asked, left: left - 1 });
  return low + adaptive(f, { from: middle, to }, { sum: sum + low, asked, left: left - 1 });
}

/** The error follows QUADPACK: the difference of the two rules over the function's own spread, to this power. */
const ERROR_POWER = 1.5;
/** Factor on the difference before the power is taken, as in QUADPACK. */
const ERROR_SCALE = 200;

/** The integral of f over one interval by 15 points, and its error from the 7 of them that make a Gauss rule; f's unit times u's. */
export function kronrod(f: (u: number) => number, from: number, to: number) {
  const [half, middle] = [(to - from) / 2, (to + from) / 2];
  const values = new Float64Array(2 * NODES.length);
  let fine = 0;
  let coarse = 0;
  for (let i = 0; i < NODES.length; i++) {
    const step = half * NODES[i]!;
    const low = f(middle - step);
    const high = step === 0 ? 0 : f(middle + step);
    values[2 * i] = low;
    values[2 * i + 1] = high;
    fine += KRONROD[i]! * (low + high);
    coarse += GAUSS[i]! * (low + high);
  }
  const mean = fine / 2;
  let spread = 0;
  for (let i = 0; i < NODES.length; i++) {
    const away = Math.abs(values[2 * i]! - mean) + (NODES[i] === 0 ? 0 : Math.abs(values[2 * i + 1]! - mean));
    spread += KRONROD[i]! * away;
  }
  const apart = Math.abs(fine - coarse);
  const share = spread > 0 ? Math.min(1, ((ERROR_SCALE * apart) / spread) ** ERROR_POWER) : 0;
  return { value: fine * half, error: spread * share * half };
}

/** A condition sign · slopes · x ÷ scale ≥ least on the moves x. A shortfall costs `weight` for each unit; null forbids any. */
export interface Condition {
  /** One for each move, in the value's unit per unit of that move. */
  readonly slopes: readonly number[];
  readonly sign: 1 | -1;
  /** Positive; makes conditions on different values comparable. */
  readonly scale: number;
  /** In multiples of `scale`. */
  readonly least: number;
  /** Cost of one missing multiple; null forbids it. */
  readonly weight: number | null;
}

/** The moves found, their size, and what the conditions still miss, weighted. */
export interface LeastMoves {
  /** One entry for each move, in its unit. */
  readonly x: readonly number[];
  /** Sum of |x|. */
  readonly size: number;
  /** 0 where every condition holds. */
  readonly missing: number;
}

/** How far each move may go. */
interface Box {
  /** Least value of each move. */
  readonly low: readonly number[];
  /** Greatest value of each move. */
  readonly high: readonly number[];
}

/** Numbers closer to zero than this count as zero. */
const ZERO = 1e-9;

/** Most pivots; then the best point so far is taken. 5 to 40 are usual. */
const MOST_PIVOTS = 400;

/**
 * A linear program in dictionary form: each row is a basic variable, rhs + Σ row[c]·(nonbasic c), which must not be negative.
 * Costs of the nonbasic variables are never negative, so that each pivot of the dual simplex keeps the optimum below. It begins
 * without rows; those that the answer so far does not meet are added one by one.
 */
interface Dictionary {
  readonly rows: Float64Array[];
  /** Values of the basic variables. */
  readonly rhs: number[];
  readonly cost: Float64Array;
  /** Columns in use. */
  width: number;
  /** The variable in each row and each column: forward parts of the moves, backward parts, and −1 for all others. */
  readonly basic: number[];
  /** As `basic`, for the columns. */
  readonly nonbasic: number[];
  /** Where each forward and backward part stands: in row k, or as −1 − c in column c. */
  readonly places: Int32Array;
}

/**
 * The moves of least total size Σ|x| that meet the conditions, within [low, high] of each: the linear program solved by the
 * dual simplex method (Lemke 1954), which begins at no moves at all and needs about a pivot for each condition that is not
 * met. Where conditions cannot all be met, what is missing is weighed against the size. Deterministic. Units are the caller's.
 */
export function leastMoves(conditions: readonly Condition[], { low, high }: Box): LeastMoves {
  const free: number[] = [];
  const x = low.map((least, j) => {
    const fixed = high[j]! - least <= ZERO;
    if (!fixed) free.push(j);
    return fixed ? (least + high[j]!) / 2 : 0;
  });
  const still = [...x];
  const waiting = [...boxConditions({ low, high }, free), ...conditions];
  const dictionary = emptyDictionary(free.length, waiting.length);
  let pivots = 0;
  for (;;) {
    while (pivots < MOST_PIVOTS && pivotOnce(dictionary)) pivots++;
    readMoves(dictionary, free, x);
    const before = waiting.length;
    for (let k = waiting.length - 1; k >= 0; k--) {
      const condition = waiting[k]!;
      if (missingOf(condition, x) <= ZERO) continue;
      addRow(dictionary, free, { ...condition, least: missingOf(condition, still) });
      waiting.splice(k, 1);
    }
    if (waiting.length === before || pivots >= MOST_PIVOTS) break;
  }
  return { x, size: x.reduce((sum, d) => sum + Math.abs(d), 0), missing: missingAt(conditions, x) };
}

/** What conditions miss at x, weighted. */
function missingAt(conditions: readonly Condition[], x: readonly number[]): number {
  let sum = 0;
  for (const condition of conditions) {
    const missing = missingOf(condition, x);
    if (missing > ZERO) sum += (condition.weight ?? 0) * missing;
  }
  return sum;
}

/** Shortfall of a condition at x; negative where it is more than met. */
function missingOf({ slopes, sign, scale, least }: Condition, x: readonly number[]): number {
  let sum = 0;
  for (let j = 0; j < slopes.length; j++) sum += slopes[j]! * x[j]!;
  return least - (sign * sum) / scale;
}

/** Conditions that some moves within a box would not meet; the others always hold. */
export function failing(conditions: readonly Condition[], { low, high }: Box): Condition[] {
  return conditions.filter(({ slopes, sign, scale, least }) => {
    let worst = 0;
    for (let j = 0; j < slopes.length; j++) {
      const slope = sign * slopes[j]!;
      if (slope !== 0) worst += slope > 0 ? slope * low[j]! : slope * high[j]!;
    }
    return worst / scale < least - ZERO;
  });
}

/** The box of the free moves as conditions that nothing may be missing of. */
function boxConditions({ low, high }: Box, free: readonly number[]): Condition[] {
  return free.flatMap((j): Condition[] => {
    const slopes = low.map((_, i) => (i === j ? 1 : 0));
    return [
      { slopes, sign: 1, scale: 1, least: low[j]!, weight: null },
      { slopes, sign: -1, scale: 1, least: -high[j]!, weight: null },
    ];
  });
}

/** Columns for the forward and backward parts of `n` moves, with room for what up to `most` conditions may miss. */
function emptyDictionary(n: number, most: number): Dictionary {
  return {
    rows: [],
    rhs: [],
    cost: new Float64Array(2 * n + most).fill(1, 0, 2 * n),
    width: 2 * n,
    basic: [],
    nonbasic: Array.from({ length: 2 * n }, (_, c) => c),
    places: Int32Array.from({ length: 2 * n }, (_, c) => -1 - c),
  };
}

/** Writes the moves that a dictionary has come to. */
function readMoves({ rhs, places }: Dictionary, free: readonly number[], x: number[]): void {
  const n = free.length;
  const partAt = (part: number) => (places[part]! < 0 ? 0 : Math.max(0, rhs[places[part]!]!));
  for (let f = 0; f < n; f++) x[free[f]!] = partAt(f) - partAt(n + f);
}

/** Adds a condition as a row over the present columns, and where it may be missed a column for what is missing of it. */
function addRow(dictionary: Dictionary, free: readonly number[], condition: Condition): void {
  const { rows, rhs, cost, basic, nonbasic, places } = dictionary;
  const { slopes, sign, scale, least, weight } = condition;
  const n = free.length;
  const row = new Float64Array(cost.length);
  let constant = -least;
  for (let part = 0; part < 2 * n; part++) {
    const slope = slopes[free[part % n]!]!;
    if (slope === 0) continue;
    const factor = ((part < n ? sign : -sign) * slope) / scale;
    const at = places[part]!;
    if (at < 0) {
      row[-1 - at]! += factor;
      continue;
    }
    const known = rows[at]!;
    for (let c = 0; c < dictionary.width; c++) row[c]! += factor * known[c]!;
    constant += factor * rhs[at]!;
  }
  if (weight !== null) {
    row[dictionary.width] = 1;
    cost[dictionary.width] = weight;
    nonbasic.push(-1);
    dictionary.width++;
  }
  rows.push(row);
  rhs.push(constant);
  basic.push(-1);
}

/** One pivot on the row that misses most; false when none misses anything, or nothing can help it. */
function pivotOnce(dictionary: Dictionary): boolean {
  const { rhs, rows, cost, width } = dictionary;
  let leaving = -1;
  let most = -ZERO;
  for (let k = 0; k < rhs.length; k++) {
    if (rhs[k]! < most) {
      leaving = k;
      most = rhs[k]!;
    }
  }
  if (leaving < 0) return false;
  let entering = -1;
  let least = Number.POSITIVE_INFINITY;
  const row = rows[leaving]!;
  for (let c = 0; c < width; c++) {
    const a = row[c]!;
    if (a <= ZERO || cost[c]! / a >= least - 1e-12) continue;
    entering = c;
    least = cost[c]! / a;
  }
  if (entering < 0) return false;
  exchange(dictionary, leaving, entering);
  return true;
}

/** The basic variable of a row and the nonbasic one of a column take each other's place. */
function exchange(dictionary: Dictionary, k: number, c: number): void {
  const { rows, rhs, cost, basic, nonbasic, places, width } = dictionary;
  const row = rows[k]!;
  const pivot = row[c]!;
  for (let i = 0; i < width; i++) row[i] = i === c ? 1 / pivot : -row[i]! / pivot;
  rhs[k] = -rhs[k]! / pivot;
  for (let i = 0; i < rows.length; i++) {
    if (i !== k) rhs[i]! += substitute(rows[i]!, row, { c, width }) * rhs[k]!;
  }
  substitute(cost, row, { c, width });
  const [leaves, enters] = [basic[k]!, nonbasic[c]!];
  [basic[k], nonbasic[c]] = [enters, leaves];
  if (enters >= 0) places[enters] = k;
  if (leaves >= 0) places[leaves] = -1 - c;
}

/** Puts a row in the place of a column's variable; returns that variable's former factor. */
function substitute(
  target: Float64Array,
  row: Float64Array,
  { c, width }: { c: number; width: number },
): number {
  const factor = target[c]!;
  if (factor === 0) return 0;
  target[c] = 0;
  for (let i = 0; i < width; i++) target[i]! += factor * row[i]!;
  return factor;
}

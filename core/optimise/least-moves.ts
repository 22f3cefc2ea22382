/** A condition slopes · x ≥ least on the moves x. What is missing of it costs `weight` for each unit; null where nothing may be. */
export interface Condition {
  readonly slopes: readonly number[];
  readonly least: number;
  readonly weight: number | null;
}

/** The moves found, their size, and what the conditions still miss, weighted. */
export interface LeastMoves {
  readonly x: readonly number[];
  /** Sum of |x|. */
  readonly size: number;
  readonly missing: number;
}

/** Numbers closer to zero than this count as zero. */
const ZERO = 1e-9;

/** Pivots after which the best point so far is taken; 5 to 40 are usual. */
const MOST_PIVOTS = 400;

/**
 * A linear program in dictionary form: each row is a basic variable, rhs + Σ row[j]·(nonbasic j), which must not be negative.
 * Costs of the nonbasic variables are never negative, so that each pivot of the dual simplex keeps the optimum below.
 */
interface Dictionary {
  readonly rows: Float64Array[];
  readonly rhs: Float64Array;
  readonly cost: Float64Array;
  /** The variable in each row and each column. */
  readonly basic: number[];
  readonly nonbasic: number[];
}

/**
 * The moves of least total size Σ|x| that meet the conditions, within [low, high] of each: the linear program solved by the
 * dual simplex method (Lemke 1954), which begins at no moves at all and needs about a pivot for each condition that is not
 * met. Where conditions cannot all be met, what is missing is weighed against the size. Deterministic. Units are the caller's.
 */
export function leastMoves(
  conditions: readonly Condition[],
  { low, high }: { low: readonly number[]; high: readonly number[] },
): LeastMoves {
  const n = low.length;
  const fixed = low.map((least, j) => (high[j]! - least <= ZERO ? (least + high[j]!) / 2 : null));
  const still = fixed.map((f) => f ?? 0);
  const reduced = conditions.map(({ slopes, least, weight }) => ({
    slopes,
    weight,
    least: least - product(slopes, still),
  }));
  const rows = [...reduced.filter((c) => canFail(c, { low, high, fixed })), ...boxRows({ low, high, fixed })];
  const dictionary = dictionaryOf(rows, n, fixed);
  for (let pivots = 0; pivots < MOST_PIVOTS && pivotOnce(dictionary); pivots++);
  const values = new Float64Array(2 * n);
  dictionary.basic.forEach((variable, k) => {
    if (variable < 2 * n) values[variable] = Math.max(0, dictionary.rhs[k]!);
  });
  const x = fixed.map((f, j) => f ?? values[j]! - values[n + j]!);
  return { x, size: x.reduce((sum, d) => sum + Math.abs(d), 0), missing: missingAt(conditions, x) };
}

/** What conditions miss at x, weighted. */
export function missingAt(conditions: readonly Condition[], x: readonly number[]): number {
  let sum = 0;
  for (const { slopes, least, weight } of conditions) {
    const missing = least - product(slopes, x);
    if (missing > ZERO) sum += (weight ?? 0) * missing;
  }
  return sum;
}

function product(slopes: readonly number[], x: readonly number[]): number {
  let sum = 0;
  for (let j = 0; j < slopes.length; j++) sum += slopes[j]! * x[j]!;
  return sum;
}

interface Box {
  readonly low: readonly number[];
  readonly high: readonly number[];
  readonly fixed: readonly (number | null)[];
}

/** Those conditions that some moves within a box leave unmet: the others hold whatever is done. */
export function failing(conditions: readonly Condition[], { low, high }: Omit<Box, 'fixed'>): Condition[] {
  const fixed = low.map(() => null);
  return conditions.filter((condition) => canFail(condition, { low, high, fixed }));
}

/** Whether some moves within the box leave a condition unmet. */
function canFail({ slopes, least }: Condition, { low, high, fixed }: Box): boolean {
  let worst = 0;
  for (let j = 0; j < slopes.length; j++) {
    const slope = slopes[j]!;
    if (slope !== 0 && fixed[j] === null) worst += slope > 0 ? slope * low[j]! : slope * high[j]!;
  }
  return worst < least - ZERO;
}

/** The box as conditions that nothing may be missing of. */
function boxRows({ low, high, fixed }: Box): Condition[] {
  const unit = (j: number, sign: number) => low.map((_, i) => (i === j ? sign : 0));
  return fixed.flatMap((f, j): Condition[] =>
    f !== null
      ? []
      : [
          { slopes: unit(j, 1), least: low[j]!, weight: null },
          { slopes: unit(j, -1), least: -high[j]!, weight: null },
        ],
  );
}

/** Columns: forward parts of the moves, backward parts, and for each condition that may miss something, what it misses. */
function dictionaryOf(conditions: readonly Condition[], n: number, fixed: Box['fixed']): Dictionary {
  const elastic = conditions.flatMap(({ weight }, k) => (weight === null ? [] : [k]));
  const columns = 2 * n + elastic.length;
  const cost = new Float64Array(columns).fill(1);
  elastic.forEach((k, e) => {
    cost[2 * n + e] = conditions[k]!.weight!;
  });
  const rhs = new Float64Array(conditions.length);
  let nextElastic = 2 * n;
  const rows = conditions.map(({ slopes, least, weight }, k) => {
    const row = new Float64Array(columns);
    for (let j = 0; j < n; j++) {
      if (fixed[j] !== null) continue;
      row[j] = slopes[j]!;
      row[n + j] = -slopes[j]!;
    }
    if (weight !== null) row[nextElastic++] = 1;
    rhs[k] = -least;
    return row;
  });
  return {
    rows,
    rhs,
    cost,
    basic: conditions.map((_, k) => columns + k),
    nonbasic: Array.from({ length: columns }, (_, j) => j),
  };
}

/** One pivot on the row that misses most; false when none misses anything, or nothing can help it. */
function pivotOnce(dictionary: Dictionary): boolean {
  const { rhs, rows, cost } = dictionary;
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
  for (let j = 0; j < row.length; j++) {
    const a = row[j]!;
    if (a <= ZERO || cost[j]! / a >= least - 1e-12) continue;
    entering = j;
    least = cost[j]! / a;
  }
  if (entering < 0) return false;
  exchange(dictionary, leaving, entering);
  return true;
}

/** The basic variable of a row and the nonbasic one of a column take each other's place. */
function exchange({ rows, rhs, cost, basic, nonbasic }: Dictionary, k: number, j: number): void {
  const row = rows[k]!;
  const pivot = row[j]!;
  for (let c = 0; c < row.length; c++) row[c] = c === j ? 1 / pivot : -row[c]! / pivot;
  rhs[k] = -rhs[k]! / pivot;
  rows.forEach((other, i) => {
    if (i === k || other[j] === 0) return;
    rhs[i]! += substitute(other, row, j) * rhs[k]!;
  });
  substitute(cost, row, j);
  [basic[k], nonbasic[j]] = [nonbasic[j]!, basic[k]!];
}

/** Puts a row in the place of a column's variable; returns that variable's former factor. */
function substitute(target: Float64Array, row: Float64Array, j: number): number {
  const factor = target[j]!;
  if (factor === 0) return 0;
  target[j] = 0;
  for (let c = 0; c < row.length; c++) target[c]! += factor * row[c]!;
  return factor;
}

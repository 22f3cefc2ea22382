/** The parts of the program that are measured, in the order of the table. */
export const GROUPS = ['core', 'renderer', 'store', 'export', 'library'] as const;
export type Group = (typeof GROUPS)[number];

/** Median and 95th percentile of some timings, microseconds, and how many there were. */
export interface Times {
  readonly medianUs: number;
  /** Null where too few were taken for a 95th percentile to mean anything. */
  readonly p95Us: number | null;
  readonly runs: number;
  /**
   * Mean of the thread's own processor time, microseconds: what is left of a time when other programs' share of a busy machine
   * is taken out. Null where too little was taken for that clock's grain, or the work is not of one thread.
   */
  readonly ownUs: number | null;
}

/** How many times slower a row is than another that took its turns beside it. */
export interface Ratio {
  readonly to: string;
  readonly times: number;
}

/** One timed thing of the table. */
export interface Row extends Times {
  readonly group: Group;
  readonly name: string;
  /** Null where it stands alone. */
  readonly ratio: Ratio | null;
}

/** One measured number that is not a time: an exponent, bytes, a share. */
export interface Fact {
  readonly group: Group;
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  /** What to know to read it rightly: why it is what it is. */
  readonly note?: string;
}

/** What one part of the bench found. */
export interface Found {
  readonly rows: readonly Row[];
  readonly facts: readonly Fact[];
}

/** What several parts of the bench found, as one. */
export function together(parts: readonly Found[]): Found {
  return { rows: parts.flatMap(({ rows }) => rows), facts: parts.flatMap(({ facts }) => facts) };
}

/** A row of the table; it stands alone unless a ratio is given. */
export function rowOf(
  group: Group,
  name: string,
  { times, ratio = null }: { times: Times; ratio?: Ratio | null },
): Row {
  return { group, name, ...times, ratio };
}

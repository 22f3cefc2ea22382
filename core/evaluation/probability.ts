import { shareBelow } from '../body/normal.ts';
import type { Quantity, Severity } from './finding.ts';

/** Standard deviations in half of a 95 % interval of a normal distribution. */
export const SIGMAS_95 = 1.959964;

/** From this probability of lying outside its band on, a value says *change*. */
export const CHANGE_FROM = 0.9;

/** From this one on it says *check*. */
export const CHECK_FROM = 0.1;

/** Standard deviations from an edge at which a value open to one side turns from *check* to *good*, or to *change*. */
export const DECIDED_SIGMAS = 1.281552;

/** Slack for comparing values as set with an edge, so that 0.15 set by hand is not 1e-17 outside. In the SI unit. */
const EDGE_SLACK = 1e-9;

/** Edges in the quantity's unit; null is open. */
export interface EdgePair {
  /** Least value that is good. */
  readonly min: number | null;
  /** Greatest value that is good. */
  readonly max: number | null;
}

/** Edges, and the limits past which a value says *stop*. */
export interface JudgedEdges extends EdgePair {
  /** A value below this says stop. */
  readonly stopMin?: number | undefined;
  /** A value above this says stop. */
  readonly stopMax?: number | undefined;
}

/**
 * Signed distance of a value to the nearest edge of a band, in its unit: positive outside, negative inside.
 * A band open on both sides gives −∞.
 */
export function distanceToBand(value: number, band: EdgePair): number {
  const below = band.min === null ? Number.NEGATIVE_INFINITY : band.min - value;
  const above = band.max === null ? Number.NEGATIVE_INFINITY : value - band.max;
  return Math.max(below, above);
}

/** The judged centre and spread of a quantity, in its unit. */
export function judgedOf({ value, sd, judged }: Pick<Quantity, 'value' | 'sd' | 'judged'>): {
  readonly value: number;
  readonly sd: number;
} {
  return judged ?? { value, sd: sd ?? 0 };
}

/**
 * The shown value and spread of a quantity. For a reach that is cut at 0 it is the whole distance, negative by the spare
 * length: "0 mm ± 0 mm" for a limb that reaches by 5 ± 2 cm would hide both.
 */
export function shownOf({ value, sd, judged }: Pick<Quantity, 'value' | 'sd' | 'judged'>): {
  readonly value: number;
  readonly sd: number | null;
} {
  return judged?.smooth ? judged : { value, sd };
}

/**
 * Probability that a normally spread value lies outside a band: below its lower edge or above its upper one. Without doubt 0 or 1,
 * a value on an edge counting as inside. A value at an edge gives 0.5, one spread inside it 0.16.
 */
export function probabilityOutside(
  { value, sd }: { value: number; sd: number },
  { min, max }: EdgePair,
): number {
  if (!(sd > 0)) return distanceToBand(value, { min, max }) > EDGE_SLACK ? 1 : 0;
  const below = min === null ? 0 : shareBelow((min - value) / sd);
  const above = max === null ? 0 : shareBelow((value - max) / sd);
  return Math.min(1, below + above);
}

/**
 * Severity from that probability p: *change* from 0.9 on, *check* from 0.1 on, else *good*; *stop* where a stop limit is passed with
 * a probability of a half or more, however uncertain the value is.
 */
export function severityOf(judged: { value: number; sd: number }, edges: JudgedEdges): Severity {
  const { stopMin, stopMax } = edges;
  if (stopMin !== undefined && judged.value < stopMin - EDGE_SLACK) return 'stop';
  if (stopMax !== undefined && judged.value > stopMax + EDGE_SLACK) return 'stop';
  const p = probabilityOutside(judged, edges);
  if (p >= CHANGE_FROM) return 'change';
  return p >= CHECK_FROM ? 'check' : 'good';
}

import { BANDS } from '../evaluation/bands.ts';
import type { Finding, Quantity } from '../evaluation/finding.ts';
import { DECIDED_SIGMAS, judgedOf } from '../evaluation/probability.ts';
import type { Report } from '../evaluation/report.ts';
import { keyOf } from '../evaluation/value-table.ts';
import { isSerious, placeable, VIOLATION_SCALE } from './objective.ts';

/**
 * Where one judged value should stay, in its own SI unit; null is open. Outside, each `scale` costs `weight` units of moves.
 */
export interface Edges {
  /** The finding's id. */
  readonly id: string;
  /** Least value that is wanted. */
  readonly low: number | null;
  /** Greatest value that is wanted. */
  readonly high: number | null;
  /** Positive, in the value's unit. */
  readonly scale: number;
  /** In units of moves: 1 cm or 3°. */
  readonly weight: number;
}

/** Cost of one unit of violation against one unit of moves, where findings come first. */
const FIRST = 50;

/** Share of a doubt that values keep from the edge where their severity changes, so that p is clearly past it. */
const KEPT = 0.01;

/**
 * Values without doubt are aimed this far inside their band, in units of violation (8 µm): exactly on the edge, rounding would
 * decide. A grid line at the edge still serves.
 */
const EXACT = 0.0015;

/** A report's values by id and seat. */
function quantityTable({ quantities }: Report): Map<string, Quantity> {
  return new Map(quantities.map((q) => [keyOf(q.id, q.seat), q]));
}

/** The judged value of a finding, from the values as they are now. */
function judged(finding: Finding, quantities: ReadonlyMap<string, Quantity>) {
  return judgedOf(quantities.get(keyOf(finding.quantity, finding.seat)) ?? finding);
}

/**
 * Edges within which nothing says *change* or *stop*. A rule of thumb about a place that is not kept but works may stay as far
 * out as it is: it is at most a check. Those named `strict` must come in.
 */
export function settledEdges(report: Report, strict: ReadonlySet<string>): Edges[] {
  const quantities = quantityTable(report);
  return placeable(report.findings).map((f) => {
    const { value, sd } = judged(f, quantities);
    const turning = turningEdges(f, sd, 'settled');
    const edges = sd === 0 && !isSerious(f) ? reachingTo(turning, value) : turning;
    const loose = servesOutcome(f) && !strict.has(f.id);
    return loose ? reachingTo(edges, value) : edges;
  });
}

/**
 * How far inside its band a value should lie, in its doubts, and the cost of each doubt short of that, in units of moves: high
 * where it would say *check*, low where it is nearly sure. Together they share room so that the least probability of staying in
 * a band is as large as possible. A value well inside costs nothing.
 */
const TIERS = [
  { sigmas: DECIDED_SIGMAS + KEPT, weight: 60 },
  { sigmas: 1.6, weight: 6 },
  { sigmas: 2, weight: 2 },
  { sigmas: 2.5, weight: 0.7 },
] as const;

/**
 * Stand-in for the doubt of a value that is set and has none: a share of its band's width, or metres and radians where the band
 * is open.
 */
const SET_DOUBT = { share: 0.1, m: 0.001, rad: 0.02 } as const;

/** Edges well inside every band, by each value's doubt. `keep` selects the findings. */
export function middleEdges(report: Report, keep: (finding: Finding) => boolean): Edges[] {
  const quantities = quantityTable(report);
  return placeable(report.findings)
    .filter(keep)
    .flatMap((f) => {
      const sd = judged(f, quantities).sd;
      const scale = Math.max(sd, setDoubt(f));
      return TIERS.map(({ sigmas, weight }) => ({
        id: f.id,
        ...insideBand(f, sigmas * scale),
        scale,
        weight,
      }));
    });
}

/** The least doubt that is used: a share of the band, or a fixed one where the band is open. */
function setDoubt({ band: { min, max }, unit }: Finding): number {
  if (min !== null && max !== null) return SET_DOUBT.share * (max - min);
  return unit === 'rad' ? SET_DOUBT.rad : SET_DOUBT.m;
}

/** Edges that clear one finding and make no other worse than it is now. */
export function clearingEdges(report: Report, cleared: string): Edges[] {
  const quantities = quantityTable(report);
  return placeable(report.findings).map((f) => {
    const { value, sd } = judged(f, quantities);
    if (f.id === cleared) return turningEdges(f, sd, 'good');
    return reachingTo(turningEdges(f, sd, f.severity === 'good' ? 'good' : 'settled'), value);
  });
}

/** Edges widened so far that a value lies inside. */
function reachingTo(edges: Edges, value: number): Edges {
  return {
    ...edges,
    low: edges.low === null ? null : Math.min(edges.low, value),
    high: edges.high === null ? null : Math.max(edges.high, value),
  };
}

/** Where a finding's severity changes to *check* (good) or to *change* or *stop* (settled). */
function turningEdges(finding: Finding, sd: number, goal: 'good' | 'settled'): Edges {
  const by = goal === 'good' ? DECIDED_SIGMAS + KEPT : KEPT - DECIDED_SIGMAS;
  const scale = VIOLATION_SCALE[finding.unit];
  return {
    id: finding.id,
    ...insideBand(finding, sd === 0 ? EXACT * scale : by * sd),
    scale,
    weight: FIRST,
  };
}

/** A band's edges moved inward (outward where negative), never past its middle nor past a stop limit. */
export function insideBand({ band }: Finding, inward: number): Pick<Edges, 'low' | 'high'> {
  const { min, max, stopMin, stopMax } = band;
  const half = min !== null && max !== null ? (max - min) / 2 : Number.POSITIVE_INFINITY;
  const by = Math.min(inward, half);
  const low = min === null ? stopMin : Math.max(min + by, stopMin ?? Number.NEGATIVE_INFINITY);
  const high = max === null ? stopMax : Math.min(max - by, stopMax ?? Number.POSITIVE_INFINITY);
  return { low: low ?? null, high: high ?? null };
}

/** Whether a finding comes from a rule of thumb about a place that serves an outcome, and not from a coach's own band. */
export function servesOutcome({ quantity, band }: Finding): boolean {
  return band.source !== "coach's own" && BANDS.some((rule) => rule.quantity === quantity && rule.serves);
}

/** Cost of values outside their edges, in units of moves; zero where all are within. */
export function costPast(edges: readonly Edges[], values: ReadonlyMap<string, number>): number {
  return edges.reduce((sum, { id, low, high, scale, weight }) => {
    const value = values.get(id);
    if (value === undefined) return sum;
    const under = low === null ? 0 : low - value;
    const over = high === null ? 0 : value - high;
    return sum + (weight * Math.max(0, under, over)) / scale;
  }, 0);
}

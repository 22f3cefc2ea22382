import type { Band, Finding, Unit } from '../evaluation/finding.ts';
import { DECIDED_SIGMAS } from '../evaluation/probability.ts';
import type { Report } from '../evaluation/report.ts';

/** How much of a quantity outside its band counts as one unit of violation, by its SI unit (this project's weighing). */
export const VIOLATION_SCALE: Readonly<Record<Unit, number>> = {
  m: 0.005,
  rad: (2.5 * Math.PI) / 180,
  kg: 1,
  N: 50,
  N·m: 2,
  Pa: 1e4,
  'N·m/°': 1,
  '1': 0.03,
};

/**
 * A proposal aims inside a band by the value's doubt and a little more: exactly there a rounded move, or a doubt that grew on the
 * way, would leave the finding saying *check*.
 */
const BEYOND_DOUBT = 1.05;

/**
 * Largest share of the band's width by which a proposal aims inside: beyond it the band is too narrow for the value's doubt.
 */
const CLEARABLE_SHARE = 0.35;

/** In a band that narrow, proposals aim inside by the doubt, but by no more than this share of the width. */
const ROOM_SHARE = 0.3;

/** Findings about what cannot be moved by placing fittings: proposals leave them alone. */
const NOT_PLACED: readonly string[] = [
  'strapReleases',
  'floorNonSlip',
  'padBraced',
  'kneelsOnSide',
  'strokeLean',
  'recessDepth',
  'boatLength',
  'boatMass',
  'boardInsideHull',
];

/** Findings that a proposal works on: those that placing fittings can change. */
export function placeable(findings: readonly Finding[]): Finding[] {
  return findings.filter((f) => !NOT_PLACED.includes(f.quantity));
}

/**
 * A value this share of its doubt outside a band still says *check*; one doubt outside it says *change*. The rest is kept for
 * the doubts themselves, which are held while a proposal is sought and grow a little on the way.
 */
const NOT_YET_SERIOUS = 0.8;

/**
 * How much more a violation counts that makes a finding say *change* or *stop*. With squares alone a pad may end 1 cm outside
 * its band (*change*) to save three others half a doubt each (*check* either way): that happened to 15 of 40 invented paddlers
 * in the sample single with its datum at mid-length.
 */
const SERIOUS_WEIGHT = 8;

/** Edges that a proposal wants a value within (null is open), and how much one unit of violation outside them counts. */
export interface AimEdges {
  /** Least value that is wanted. */
  readonly low: number | null;
  /** Greatest value that is wanted. */
  readonly high: number | null;
  /** Positive, no unit. */
  readonly weight: number;
}

/** Where a proposal wants a finding's value: edges it should keep, and wider ones it should keep first. SI. */
export interface Aim {
  readonly id: string;
  /** As it is now. */
  readonly value: number;
  /** What one unit of violation is, in the value's unit. */
  readonly unit: number;
  /** Inside the band by the value's doubt, as far as the band has room; and where the finding would turn serious. */
  readonly edges: readonly [aimed: AimEdges, serious: AimEdges];
}

/** The aims of a finding. */
export function aimOf({ id, value, band, sd, unit }: Finding): Aim {
  const { min, max } = band;
  const doubt = DECIDED_SIGMAS * (sd ?? 0);
  const width = min !== null && max !== null ? max - min : Number.POSITIVE_INFINITY;
  const clear = BEYOND_DOUBT * doubt;
  const inside = clear <= CLEARABLE_SHARE * width ? clear : Math.min(doubt, ROOM_SHARE * width);
  const outside = NOT_YET_SERIOUS * doubt;
  return {
    id,
    value,
    unit: VIOLATION_SCALE[unit],
    edges: [
      { low: min === null ? null : min + inside, high: max === null ? null : max - inside, weight: 1 },
      { low: lowest(band, outside), high: highest(band, outside), weight: SERIOUS_WEIGHT },
    ],
  };
}

/** Least value that is still not serious; a stop is never passed. */
function lowest({ min, stopMin }: Band, outside: number): number | null {
  if (min === null) return stopMin ?? null;
  return Math.max(min - outside, stopMin ?? Number.NEGATIVE_INFINITY);
}

/** Greatest value that is still not serious. */
function highest({ max, stopMax }: Band, outside: number): number | null {
  if (max === null) return stopMax ?? null;
  return Math.min(max + outside, stopMax ?? Number.POSITIVE_INFINITY);
}

/** How far a value is outside edges, in units of violation times their weight; zero within. */
function outsideOf({ low, high, weight }: AimEdges, value: number, unit: number): number {
  const under = low === null ? 0 : low - value;
  const over = high === null ? 0 : value - high;
  return (weight * Math.max(0, under, over)) / unit;
}

/** How far a finding is from where a proposal wants it, in units of violation; zero when it is there. */
export function violation(finding: Finding): number {
  const { value, unit, edges } = aimOf(finding);
  return Math.hypot(...edges.map((e) => outsideOf(e, value, unit)));
}

/** Sum of squared violations of a report: what a proposal brings down. */
export function totalViolation(report: Report): number {
  return placeable(report.findings).reduce((sum, f) => sum + violation(f) ** 2, 0);
}

/** Count of findings that say change or stop and that placing fittings could change. */
export function seriousCount(report: Report): number {
  return placeable(report.findings).filter(isSerious).length;
}

/** Whether a finding says change or stop. */
export function isSerious({ severity }: Finding): boolean {
  return severity === 'change' || severity === 'stop';
}

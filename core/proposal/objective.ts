import type { Finding, Unit } from '../findings/finding.ts';
import { SIGMAS_95 } from '../findings/judge.ts';
import type { Report } from '../fit/report.ts';

/** How much of a quantity outside its band counts as one unit of trouble, by its SI unit (this project's weighing). */
const ONE_TROUBLE: Readonly<Record<Unit, number>> = {
  m: 0.005,
  rad: (2.5 * Math.PI) / 180,
  kg: 1,
  N: 50,
  N·m: 2,
  Pa: 1e4,
  s: 0.1,
  '1': 0.03,
};

/** A proposal aims inside a band by the value's doubt, but never by more than this share of the band's width. */
const ROOM_SHARE = 0.3;

/** Findings about what cannot be moved by placing fittings: proposals leave them alone. */
const NOT_PLACED: readonly string[] = [
  'strapReleases',
  'floorNonSlip',
  'padBraced',
  'boatLength',
  'boatMass',
];

/** Findings that a proposal works on: those that placing fittings can change. */
export function placeable(findings: readonly Finding[]): Finding[] {
  return findings.filter((f) => !NOT_PLACED.includes(f.quantity));
}

/** One side of a finding's band as a proposal sees it: `excess` above 0 is trouble, below 0 is room left. */
export interface Margin {
  readonly findingId: string;
  /** −1 for the lower edge, +1 for the upper. */
  readonly side: 1 | -1;
  /** Units of trouble. */
  readonly excess: number;
  /** Change of `excess` for a change of the quantity by one SI unit. */
  readonly perUnit: number;
}

/** The sides of a finding's band, each aimed inside by the value's doubt or, in a narrow band, by a share of it. */
export function marginsOf(finding: Finding): Margin[] {
  const { id: findingId, value, band, sd, unit } = finding;
  const doubt = SIGMAS_95 * (sd ?? 0);
  const width = band.min !== null && band.max !== null ? band.max - band.min : Number.POSITIVE_INFINITY;
  const room = Math.min(doubt, ROOM_SHARE * width);
  const one = ONE_TROUBLE[unit];
  const margins: Margin[] = [];
  if (band.min !== null) {
    margins.push({ findingId, side: -1, excess: (band.min + room - value) / one, perUnit: -1 / one });
  }
  if (band.max !== null) {
    margins.push({ findingId, side: 1, excess: (value - band.max + room) / one, perUnit: 1 / one });
  }
  return margins;
}

/** How far a finding is from where a proposal wants it, in units of trouble; zero when it is there. */
export function excessTrouble(finding: Finding): number {
  return Math.max(0, ...marginsOf(finding).map((m) => m.excess));
}

/** Sum of squared troubles of a report: what a proposal brings down. */
export function totalTrouble(report: Report): number {
  return placeable(report.findings).reduce((sum, f) => sum + excessTrouble(f) ** 2, 0);
}

/** Count of findings that say change or stop and that placing fittings could change. */
export function seriousCount(report: Report): number {
  return placeable(report.findings).filter((f) => f.severity === 'change' || f.severity === 'stop').length;
}

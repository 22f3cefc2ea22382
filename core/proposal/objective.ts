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
  'kneelsOnSide',
  'recessDepth',
  'boatLength',
  'boatMass',
];

/** Findings that a proposal works on: those that placing fittings can change. */
export function placeable(findings: readonly Finding[]): Finding[] {
  return findings.filter((f) => !NOT_PLACED.includes(f.quantity));
}

/** Where a proposal wants a finding's value: its aims inside the band (null is open), and what one trouble is, SI. */
export interface Aim {
  readonly id: string;
  readonly value: number;
  readonly low: number | null;
  readonly high: number | null;
  readonly unit: number;
}

/** The aims of a finding: inside its band by the value's doubt, as far as the band has room. */
export function aimOf({ id, value, band, sd, unit }: Finding): Aim {
  const { min, max } = band;
  const doubt = SIGMAS_95 * (sd ?? 0);
  const room = min !== null && max !== null ? ROOM_SHARE * (max - min) : doubt;
  const inside = Math.min(doubt, room);
  return {
    id,
    value,
    low: min === null ? null : min + inside,
    high: max === null ? null : max - inside,
    unit: ONE_TROUBLE[unit],
  };
}

/** How far a finding is from where a proposal wants it, in units of trouble; zero when it is there. */
export function excessTrouble(finding: Finding): number {
  const { value, low, high, unit } = aimOf(finding);
  const under = low === null ? 0 : low - value;
  const over = high === null ? 0 : value - high;
  return Math.max(0, under, over) / unit;
}

/** Sum of squared troubles of a report: what a proposal brings down. */
export function totalTrouble(report: Report): number {
  return placeable(report.findings).reduce((sum, f) => sum + excessTrouble(f) ** 2, 0);
}

/** Count of findings that say change or stop and that placing fittings could change. */
export function seriousCount(report: Report): number {
  return placeable(report.findings).filter((f) => f.severity === 'change' || f.severity === 'stop').length;
}

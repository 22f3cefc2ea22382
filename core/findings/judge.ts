import type { LimitedJoint } from '../fit/athlete-schema.ts';
import type { BandOverride } from '../fit/band-override-schema.ts';
import type { Fit } from '../fit/fit-schema.ts';
import type { Seat } from '../fit/seat-schema.ts';
import type { Support } from '../support/support.ts';
import { toRadians } from '../units/angle.ts';
import { BANDS, type BandRule } from './bands.ts';
import { CLASS_LIMITS, CLASS_LIMITS_DATE, CLASS_LIMITS_SOURCE } from './class-limits.ts';
import { cameraFor } from './doubt-of-posture.ts';
import { type Finding, type Quantity, SEVERITIES, type Severity } from './finding.ts';
import { findQuantity, type QuantityId, quantityDefinition } from './quantities.ts';

/** Standard deviations in half of a 95 % interval of a normal distribution. */
export const SIGMAS_95 = 1.959964;

/** Slack for comparing values as set with an edge, so that 0.15 set by hand is not 1e-17 outside. In the SI unit. */
const EDGE_SLACK = 1e-9;

/**
 * Signed distance of a value to the nearest edge of a band, in its unit: positive outside, negative inside.
 * A band open on both sides gives −∞.
 */
export function distanceToBand(value: number, band: Pick<BandRule, 'min' | 'max'>): number {
  const below = band.min === null ? Number.NEGATIVE_INFINITY : band.min - value;
  const above = band.max === null ? Number.NEGATIVE_INFINITY : value - band.max;
  return Math.max(below, above);
}

/**
 * Severity from the distance to the band *and* the uncertainty: *stop* past a stop limit; *change* outside by more
 * than the value's 95 % half-interval; *check* while the edge lies within that interval; else *good*.
 */
export function severityOf(value: number, sd: number | null, rule: BandRule): Severity {
  if (rule.stopMin !== undefined && value < rule.stopMin - EDGE_SLACK) return 'stop';
  if (rule.stopMax !== undefined && value > rule.stopMax + EDGE_SLACK) return 'stop';
  const distance = distanceToBand(value, rule);
  const half = SIGMAS_95 * (sd ?? 0);
  if (distance > half + EDGE_SLACK) return 'change';
  if (distance > EDGE_SLACK || distance > -half + EDGE_SLACK) return 'check';
  return 'good';
}

/**
 * Whether a band is too narrow for the value's doubt: 95 % of it is wider than the whole band, so that the finding says
 * *check* wherever inside the value stands. Such a check says that the model cannot tell, not that something is near an edge.
 * The lean seen from behind, 0° to 6°, is known to ± 4.4° until it is measured.
 */
export function cannotTell({ band, sd }: Pick<Finding, 'band' | 'sd'>): boolean {
  if (band.min === null || band.max === null || sd === null) return false;
  return 2 * SIGMAS_95 * sd > band.max - band.min;
}

/**
 * All findings of a fit from its quantities, the most severe first, what the estimate can tell before what it cannot,
 * then in the order of the band table. `supports` tells for each seat (null where it is empty) which edge its support margin
 * is measured to.
 */
export function judge(
  fit: Fit,
  quantities: readonly Quantity[],
  supports: readonly (Support | null)[] = [],
): Finding[] {
  const findings: Finding[] = [];
  const occupied = fit.seats.some((seat) => seat.athlete);
  for (const rule of rulesFor(fit)) {
    if (quantityDefinition(rule.quantity)?.scope === 'boat') {
      if (rule.needsCrew && !occupied) continue;
      collect(findings, boatRule(fit, rule), findQuantity(quantities, rule.quantity, null));
      continue;
    }
    fit.seats.forEach((seat, index) => {
      if (!seat.athlete) return;
      collect(findings, seatRule(seat, rule), findQuantity(quantities, rule.quantity, index));
    });
  }
  return findings
    .map((finding) => withSupport(finding, supports))
    .map((finding) => withMiddle(finding, quantities))
    .map((finding) => withCamera(finding, fit))
    .sort((a, b) => urgency(b) - urgency(a));
}

/** By severity; among equal ones, what the estimate cannot tell comes after what it can. */
function urgency(finding: Finding): number {
  return SEVERITIES.indexOf(finding.severity) - (cannotTell(finding) ? 0.5 : 0);
}

/** A mark within this of the boat's middle is amidships, metres. */
const AMIDSHIPS_M = 0.005;

/** The rule on the knee's place counts from the boat's middle: where the mark lies elsewhere, both distances are told. */
function withMiddle(finding: Finding, quantities: readonly Quantity[]): Finding {
  if (finding.quantity !== 'padAft') return finding;
  const fromMiddle = findQuantity(quantities, 'padFromMid', finding.seat)?.value ?? finding.value;
  return Math.abs(fromMiddle - finding.value) < AMIDSHIPS_M
    ? finding
    : { ...finding, fromMiddleM: fromMiddle };
}

function withCamera(finding: Finding, { seats }: Fit): Finding {
  const camera = finding.seat === null ? undefined : cameraFor(finding, seats[finding.seat]!);
  return camera ? { ...finding, camera } : finding;
}

function withSupport(finding: Finding, supports: readonly (Support | null)[]): Finding {
  const support = finding.quantity === 'supportMargin' && finding.seat !== null && supports[finding.seat];
  if (!support) return finding;
  return { ...finding, support: { nearestEdge: support.nearestEdge, inLine: support.inLine } };
}

interface ReasonedRule extends BandRule {
  readonly reason: string;
}

function collect(into: Finding[], rule: ReasonedRule, quantity: Quantity | null): void {
  if (!quantity) return;
  const { value, sd, unit, seat, unreached } = quantity;
  const { min, max, stopMin, stopMax, source, sourceText, reason } = rule;
  into.push({
    id: seat === null ? rule.quantity : `${rule.quantity}@${seat}`,
    seat,
    quantity: rule.quantity,
    value,
    sd,
    unit,
    band: { min, max, stopMin, stopMax, source, sourceText, reason },
    distance: distanceToBand(value, rule),
    severity: severityOf(value, sd, rule),
    part: rule.part,
    ...(unreached && { unreached }),
  });
}

/** The rows of the band table that hold for this boat, with the class rules of its class. */
function rulesFor(fit: Fit): BandRule[] {
  const seats = fit.boat.seats.length;
  return [...BANDS.filter((rule) => rule.crews?.includes(seats) ?? true), ...classRules(fit)];
}

function classRules(fit: Fit): BandRule[] {
  if (fit.boat.boatClass === 'none') return [];
  const limits = CLASS_LIMITS[fit.boat.boatClass];
  const common = {
    source: 'class rule' as const,
    sourceText: `${CLASS_LIMITS_SOURCE} (${CLASS_LIMITS_DATE})`,
    part: 'hull' as const,
  };
  return [
    { ...common, quantity: 'boatLength', min: null, max: limits.greatestLengthM },
    { ...common, quantity: 'boatMass', min: limits.leastMassKg, max: null },
  ];
}

/** A boat's band can be set in any seat's list; the first one that names it holds. */
function boatRule(fit: Fit, rule: BandRule): ReasonedRule {
  const override = fit.seats.flatMap((seat) => seat.bands).find((b) => b.quantity === rule.quantity);
  return override ? ownBand(rule, override) : { ...rule, reason: '' };
}

function seatRule(seat: Seat, rule: BandRule): ReasonedRule {
  const override = seat.bands.find((b) => b.quantity === rule.quantity);
  const own: ReasonedRule = override ? ownBand(rule, override) : { ...rule, reason: '' };
  return withPersonalLimits(own, seat);
}

function ownBand(rule: BandRule, override: BandOverride): ReasonedRule {
  const angle = quantityDefinition(rule.quantity)?.unit === 'rad';
  const edge = (value: number | null) => (value !== null && angle ? toRadians(value) : value);
  return {
    ...rule,
    min: edge(override.min),
    max: edge(override.max),
    source: "coach's own",
    sourceText: 'set for this athlete',
    reason: override.reason,
  };
}

/** How each personal limit (degrees of motion) bounds a quantity (radians, included angles). */
const LIMIT_OF: Readonly<
  Record<LimitedJoint, { quantity: QuantityId; edge: 'min' | 'max'; at: (deg: number) => number }>
> = {
  kneelingKneeFlexion: { quantity: 'kneelingKnee', edge: 'min', at: (d) => toRadians(180 - d) },
  frontKneeFlexion: { quantity: 'frontKnee', edge: 'min', at: (d) => toRadians(180 - d) },
  kneelingHipExtension: { quantity: 'kneelingHip', edge: 'max', at: (d) => toRadians(180 + d) },
  frontHipFlexion: { quantity: 'frontHip', edge: 'min', at: (d) => toRadians(180 - d) },
  rearAnklePlantarflexion: { quantity: 'rearAnkle', edge: 'max', at: (d) => toRadians(90 + d) },
  frontAnkleDorsiflexion: { quantity: 'frontAnkle', edge: 'min', at: (d) => toRadians(90 - d) },
  trunkForward: { quantity: 'trunkPitch', edge: 'max', at: toRadians },
  trunkSideways: { quantity: 'trunkRoll', edge: 'max', at: toRadians },
};

/** Narrows a rule by the athlete's own limits; past a personal limit the finding says stop. */
function withPersonalLimits(rule: ReasonedRule, seat: Seat): ReasonedRule {
  let narrowed = rule;
  for (const limit of seat.athlete?.limits ?? []) {
    const { quantity, edge, at } = LIMIT_OF[limit.joint];
    if (quantity !== rule.quantity) continue;
    const value = at(limit.maxDeg);
    const reason = limit.reason;
    const own = { reason, source: "coach's own" as const, sourceText: 'personal limit of this athlete' };
    if (edge === 'min' && value > (narrowed.min ?? Number.NEGATIVE_INFINITY)) {
      narrowed = { ...narrowed, ...own, min: value, stopMin: value };
    }
    if (edge === 'max' && value < (narrowed.max ?? Number.POSITIVE_INFINITY)) {
      narrowed = { ...narrowed, ...own, max: value, stopMax: value };
    }
  }
  return narrowed;
}

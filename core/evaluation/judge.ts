import type { BandOverride } from '../document/band-override-schema.ts';
import type { Fit } from '../document/fit-schema.ts';
import type { Seat } from '../document/seat-schema.ts';
import type { Support } from '../support/support.ts';
import { toRadians } from '../units/angle.ts';
import type { Mutable } from '../units/mutable.ts';
import { BANDS, type BandRule } from './bands.ts';
import { CLASS_LIMITS } from './class-limits.ts';
import { type Band, type Finding, type HullMeasurement, type Quantity, SEVERITIES } from './finding.ts';
import { PERSONAL_LIMIT, withPersonalLimits } from './personal-limits.ts';
import { distanceToBand, judgedOf, probabilityOutside, severityOf, shownOf } from './probability.ts';
import { findQuantity, quantityDefinition } from './quantities.ts';
import { keyOf } from './value-table.ts';

/**
 * All findings of a fit from its quantities, the most severe first, then in the order of the band table. `supports` has each
 * seat's support (null where it is empty). An `uninformed` value is no finding and gets the severity *unknown*: a report lists
 * it separately.
 */
export function judge(
  fit: Fit,
  quantities: readonly Quantity[],
  supports: readonly (Support | null)[] = [],
): Finding[] {
  const judged: Judgement[] = [];
  const byKey = new Map<string, Quantity>();
  for (const quantity of quantities) byKey.set(keyOf(quantity.id, quantity.seat), quantity);
  const unmeasured = fit.boat.hull.kind === 'usual';
  const occupied = fit.seats.some((seat) => seat.athlete);
  for (const rule of rulesFor(fit)) {
    if (quantityDefinition(rule.quantity)?.scope === 'boat') {
      if (rule.needsCrew && !occupied) continue;
      const quantity = byKey.get(keyOf(rule.quantity, null));
      collect(judged, boatRule(fit, rule), { quantity, settles: 'floatCheck' });
      continue;
    }
    fit.seats.forEach((seat, index) => {
      if (!seat.athlete) return;
      const placed = seatRule(seat, fromCentre(rule, fit, index));
      if (placed.min === null && placed.max === null) return;
      const quantity = byKey.get(keyOf(rule.quantity, index));
      collect(judged, placed, { quantity, settles: unmeasured ? 'beams' : null });
    });
  }
  const findings = judged.map(({ finding }) => finding);
  const saidElsewhere = doubtsSaidElsewhere(findings);
  return mostSevereFirst(
    judged.map(({ finding, rule }) => {
      const one = saidElsewhere(finding) ? { ...finding, severity: 'good' as const } : finding;
      return withMiddle(withSupport(servingOutcomes(one, rule, findings), supports), quantities);
    }),
  );
}

/** The most severe first, each severity in the order given. */
function mostSevereFirst(findings: readonly Finding[]): Finding[] {
  const sorted: Finding[] = [];
  for (let rank = SEVERITIES.length - 1; rank >= 0; rank--) {
    const severity = SEVERITIES[rank];
    for (const finding of findings) if (finding.severity === severity) sorted.push(finding);
  }
  return sorted;
}

/** Where the datum of a seat is not amidships, the usual place of its knee is still counted from the boat's centre. */
function fromCentre(rule: BandRule, { boat }: Fit, index: number): BandRule {
  const stationM = boat.seats[index]?.stationM ?? 0;
  if (rule.quantity !== 'padAft' || stationM === 0) return rule;
  const moved = (edge: number | null) => (edge === null ? null : edge + stationM);
  return { ...rule, min: moved(rule.min), max: moved(rule.max) };
}

/** A place outside its usual band is at most a *check* while every outcome that the band serves is good. */
function servingOutcomes(finding: Finding, { serves, source }: BandRule, all: readonly Finding[]): Finding {
  if (finding.severity !== 'change' || !serves || source === "coach's own") return finding;
  const bad = all.some(
    ({ quantity, seat, severity }) =>
      serves.some((id) => id === quantity) &&
      (seat === null || seat === finding.seat) &&
      (severity === 'change' || severity === 'stop'),
  );
  return bad ? finding : { ...finding, severity: 'check' };
}

/**
 * One doubt is reported once. Where the doubt of the boat's lines puts both trims in doubt, a float check settles both: the trim
 * at rest says so, and the trim at the catch is no finding of its own. Where its breadth puts several clearances in doubt, the
 * one most likely outside its band says so.
 */
function doubtsSaidElsewhere(findings: readonly Finding[]): (finding: Finding) => boolean {
  const restSaysIt = findings.some(({ quantity, settledBy }) => quantity === 'trimRest' && settledBy);
  let likeliest: Finding | null = null;
  for (const finding of findings)
    if (finding.settledBy === 'beams' && !(finding.probability <= (likeliest?.probability ?? 0)))
      likeliest = finding;
  return (finding) =>
    finding.settledBy === 'beams'
      ? finding !== likeliest
      : restSaysIt && finding.quantity === 'trimCatch' && finding.settledBy !== undefined;
}

/** A datum within this of the boat's middle counts as amidships, metres. */
const AMIDSHIPS_M = 0.005;

/** The rule on the knee's place counts from the boat's middle. Where the datum lies elsewhere, both distances are reported. */
function withMiddle(finding: Finding, quantities: readonly Quantity[]): Finding {
  if (finding.quantity !== 'padAft') return finding;
  const fromMiddle = findQuantity(quantities, 'padFromMid', finding.seat)?.value ?? finding.value;
  return Math.abs(fromMiddle - finding.value) < AMIDSHIPS_M
    ? finding
    : { ...finding, fromMiddleM: fromMiddle };
}

/** Adds to a finding of the support margin the edge to which it was measured. */
function withSupport(finding: Finding, supports: readonly (Support | null)[]): Finding {
  const support = finding.quantity === 'supportMargin' && finding.seat !== null && supports[finding.seat];
  if (!support) return finding;
  return { ...finding, support: { nearestEdge: support.nearestEdge, inLine: support.inLine } };
}

/** A row of the table with the reason of a coach who changed it; empty where nobody did. */
interface ReasonedRule extends BandRule {
  readonly reason: string;
}

/** A finding and the row that it comes from. */
interface Judgement {
  readonly finding: Finding;
  readonly rule: BandRule;
}

/**
 * Judges one value by one row. A doubtful value that nothing informs is an unknown, not a *check*. `settles` is the measurement
 * that would settle a doubt of the hull; null where there is none.
 */
function collect(
  into: Judgement[],
  rule: ReasonedRule,
  { quantity, settles }: { quantity: Quantity | undefined; settles: HullMeasurement | null },
): void {
  if (!quantity) return;
  const { unit, seat, uninformed, byHull, unreached, range } = quantity;
  const { value, sd } = shownOf(quantity);
  const judged = judgedOf(quantity);
  const severity = severityOf(judged, rule);
  const distance = distanceToBand(judged.value, rule);
  // A personal limit protects from harm: its doubt is always reported.
  const quiet = uninformed && rule.sourceKey !== PERSONAL_LIMIT;
  const hidden = quiet && (severity === 'check' || severity === 'change');
  const finding: Mutable<Finding> = {
    id: seat === null ? rule.quantity : keyOf(rule.quantity, seat),
    seat,
    quantity: rule.quantity,
    value,
    sd,
    unit,
    band: bandOf(severity === 'stop' && rule.stopBy ? { ...rule, ...rule.stopBy } : rule),
    distance,
    probability: probabilityOutside(judged, rule),
    severity: hidden ? 'unknown' : severity,
    part: rule.part,
  };
  if (byHull && settles && distance <= 0 && severity === 'check') finding.settledBy = settles;
  if (unreached) finding.unreached = unreached;
  if (range) finding.range = range;
  into.push({ finding, rule });
}

const bands = new WeakMap<ReasonedRule, Band>();

/** The band of a rule: the same object in each step of a drag. */
function bandOf(rule: ReasonedRule): Band {
  const known = bands.get(rule);
  if (known) return known;
  const { min, max, stopMin, stopMax, source, sourceKey, reason } = rule;
  const band = { min, max, stopMin, stopMax, source, sourceKey, reason };
  bands.set(rule, band);
  return band;
}

/** The rows of the band table that hold for this boat, with the class rules of its class. */
function rulesFor(fit: Fit): readonly BandRule[] {
  const known = rulesOf.get(fit.boat);
  if (known) return known;
  const seats = fit.boat.seats.length;
  const inBoat = BANDS.filter((rule) => rule.crews?.includes(seats) ?? true);
  const rules = [...inBoat, ...classRules(fit), STROKE_LEAN];
  rulesOf.set(fit.boat, rules);
  return rules;
}

const rulesOf = new WeakMap<Fit['boat'], readonly BandRule[]>();

/** It has no usual band, only an athlete's own limit: open on both sides it gives no finding. */
const STROKE_LEAN: BandRule = {
  quantity: 'strokeLean',
  min: null,
  max: null,
  source: "coach's own",
  sourceKey: PERSONAL_LIMIT,
  part: 'trunk',
};

/** The class's limits of length and mass; empty for a boat of no class. */
function classRules(fit: Fit): BandRule[] {
  if (fit.boat.boatClass === 'none') return [];
  const limits = CLASS_LIMITS[fit.boat.boatClass];
  const common = {
    source: 'class rule' as const,
    sourceKey: 'class-rule',
    part: 'hull' as const,
  };
  return [
    { ...common, quantity: 'boatLength', min: null, max: limits.greatestLengthM },
    { ...common, quantity: 'boatMass', min: limits.leastMassKg, max: null },
  ];
}

/** Rows of the table as they are, made once. */
const plain = new WeakMap<BandRule, ReasonedRule>();

/** A rule of the table without a coach's reason: the same object each time. */
function plainRule(rule: BandRule): ReasonedRule {
  const known = plain.get(rule) ?? { ...rule, reason: '' };
  plain.set(rule, known);
  return known;
}

/** A boat's band may be set in any seat's list; the first one holds. */
function boatRule(fit: Fit, rule: BandRule): ReasonedRule {
  const override = fit.seats.flatMap((seat) => seat.bands).find((b) => b.quantity === rule.quantity);
  return override ? ownBand(rule, override) : plainRule(rule);
}

/** The row that holds at a seat: a coach's band instead of the usual one, then personal limits. */
function seatRule(seat: Seat, rule: BandRule): ReasonedRule {
  const override = seat.bands.find((b) => b.quantity === rule.quantity);
  return withPersonalLimits(override ? ownBand(rule, override) : plainRule(rule), seat);
}

/** A row with the edges that a coach set, from degrees where it is an angle. */
function ownBand(rule: BandRule, override: BandOverride): ReasonedRule {
  const angle = quantityDefinition(rule.quantity)?.unit === 'rad';
  const edge = (value: number | null) => (value !== null && angle ? toRadians(value) : value);
  return {
    ...rule,
    min: edge(override.min),
    max: edge(override.max),
    source: "coach's own",
    sourceKey: 'own',
    reason: override.reason,
  };
}

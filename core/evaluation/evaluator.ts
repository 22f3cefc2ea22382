import type { BodyEstimate } from '../body/body.ts';
import { bodyOfAthlete } from '../body/body-of-athlete.ts';
import type { Athlete } from '../document/athlete-schema.ts';
import type { Fit } from '../document/fit-schema.ts';
import type { Seat } from '../document/seat-schema.ts';
import type { SeatFrame } from '../frame/mirror.ts';
import { lazyProperty } from '../units/lazy-property.ts';
import { boatState } from './boat-state.ts';
import { type Computed, computeBoat } from './computed-fit.ts';
import type { SpreadSources } from './doubt-sources.ts';
import type { Finding, Quantity } from './finding.ts';
import { judge } from './judge.ts';
import { type JudgedValues, judgedValuesFinder } from './judged-values.ts';
import { doubtOf, heldSpreads, type Spreads, withSpreads } from './quantity-spreads.ts';
import type { Report, SeatReport } from './report.ts';
import { type SeatState, seatFrame, solveSeat } from './seat-state.ts';
import { type Unknown, unknownsOf } from './unknowns.ts';
import { withUsualPlace } from './usual-place.ts';

/** Evaluates fits, keeping what is costly (bodies, solved seats) while athlete and seat are the same objects. */
export interface Evaluator {
  /** The whole report with every spread computed. Deterministic: equal fits give equal reports. */
  evaluate(fit: Fit, sources?: SpreadSources): Report;
  /**
   * The report during a drag: values are exact, spreads are those of `held` (an earlier report of the same athlete and boat),
   * because they change far more slowly than the values.
   */
  evaluateHolding(fit: Fit, held: Report): Report;
  /**
   * Only the values of `evaluateHolding` from which probabilities are computed, by the finding's id, at a fraction of its cost:
   * what a search needs at every place it tries. Shares of contacts that would have to pull are below zero.
   */
  judgedHolding(fit: Fit, held: Report): JudgedValues;
}

/**
 * Makes an evaluator. It holds caches of its own and no other state; two evaluators agree on every number. `bodyOf` is how a body is
 * estimated, where the caller has one already.
 */
export function createEvaluator(bodyOf: (athlete: Athlete) => BodyEstimate = bodyOfAthlete): Evaluator {
  const bodyFor = kept(bodyOf);
  const spreadsOf = kept(heldSpreads);
  const seatFor = keptSeats(bodyFor);
  const judgedValues = judgedValuesFinder();
  /**
   * The whole report behind one that was held. A next one is held from it, not from the one between: what is computed at its first
   * reading would keep every step of a key that is held down.
   */
  const origins = new WeakMap<Report, Report>();

  function compute(fit: Fit, start: Report | null): Computed {
    const seats = fit.seats.map((seat, index) => seatFor(fit, seat, index));
    return computeBoat(boatState(fit), seats, start?.afloat ?? null);
  }

  return {
    evaluate(fit, sources) {
      const computed = compute(fit, null);
      const { spreads, looks } = doubtOf(computed, sources);
      const report = reportOf(fit, computed, {
        spreads,
        unknowns: (...judged) => unknownsOf(...judged, looks),
      });
      const { quantities } = report;
      const quantitiesOf = (moved: Fit) => compute(moved, report).quantities;
      const findings = report.findings.map((f) => withUsualPlace(f, fit, { quantities, quantitiesOf }));
      return { ...report, findings };
    },
    evaluateHolding(fit, held) {
      const origin = origins.get(held) ?? held;
      const computed = compute(fit, origin);
      const report = reportOf(fit, computed, {
        spreads: spreadsOf(origin),
        unknowns: () => origin.unknowns,
      });
      origins.set(report, origin);
      return report;
    },
    judgedHolding(fit, held) {
      const bodyOfSeat = ({ athlete }: Seat) => athlete && bodyFor(athlete);
      return judgedValues(fit, {
        boat: boatState(fit),
        bodyOf: bodyOfSeat,
        held,
        spreads: spreadsOf(held),
      });
    },
  };
}

/** Computes once for each object, and keeps the answer as long as the object lives. */
function kept<K extends object, V>(compute: (of: K) => V): (of: K) => V {
  const known = new WeakMap<K, V>();
  return (of) => {
    const before = known.get(of);
    if (before !== undefined) return before;
    const value = compute(of);
    known.set(of, value);
    return value;
  };
}

/** A drag changes one seat: the others of a crew are kept from the step before. */
function keptSeats(bodyFor: (athlete: Athlete) => BodyEstimate) {
  const solved = new WeakMap<Seat, SeatState>();
  return ({ boat }: Fit, seat: Seat, index: number): SeatState | null => {
    if (!seat.athlete) return null;
    const frame = seatFrame(boat, seat, index);
    const known = solved.get(seat);
    if (known && sameFrame(known.frame, frame)) return known;
    const state = solveSeat({ seat, body: bodyFor(seat.athlete), frame });
    solved.set(seat, state);
    return state;
  };
}

/** Whether two frames stand at the same place of the boat, on the same side. */
function sameFrame(a: SeatFrame, b: SeatFrame): boolean {
  return a.stationX === b.stationX && a.floorZ === b.floorZ && a.side === b.side;
}

/** The whole report of one fit. `fit` must have passed `fitSchema`; SI and the boat frame throughout the result. */
export function evaluateFit(fit: Fit, sources?: SpreadSources): Report {
  return createEvaluator().evaluate(fit, sources);
}

/** A fit's doubts: the spreads, and the function that reports unknowns. */
interface Known {
  readonly spreads: Spreads;
  unknowns(judged: readonly Finding[], quantities: readonly Quantity[]): readonly Unknown[];
}

const withDrive = lazyProperty<'drive', SeatReport['drive']>('drive');
const withBalance = lazyProperty<'balance', Report['balance']>('balance');
const withQuantities = lazyProperty<'quantities', readonly Quantity[]>('quantities');
const withFindings = lazyProperty<'findings', readonly Finding[]>('findings');
const withUnknowns = lazyProperty<'unknowns', readonly Unknown[]>('unknowns');
const withJudged = lazyProperty<'judged', readonly Finding[]>('judged');

/**
 * Puts a report together. Its values with their spreads, the findings judged by them and what is not known are computed at
 * their first reading: a drag is drawn sixty times a second, and its values are read twenty times.
 */
function reportOf(fit: Fit, computed: Computed, known: Known): Report {
  const { seats, afloat } = computed;
  const solved = {
    format: 'kneelwright-report/1' as const,
    fitName: fit.name,
    seats: seats.map((seat, i) => seat && seatReport(seat, () => computed.drives[i] ?? null)),
    afloat,
  };
  const balanced = withBalance(solved, () => computed.balance);
  const valued = withQuantities(balanced, () => withSpreads(computed.quantities, known.spreads));
  const all = withJudged({}, () => {
    const supports = seats.map((seat) => seat?.support ?? null);
    return judge(fit, valued.quantities, supports);
  });
  const found = withFindings(valued, () => all.judged.filter(({ severity }) => severity !== 'unknown'));
  return withUnknowns(found, () => known.unknowns(all.judged, valued.quantities));
}

/** What a report tells of a solved seat. */
function seatReport({ body, stances, support }: SeatState, drive: () => SeatReport['drive']): SeatReport {
  return withDrive({ body, stances, support }, drive);
}

import type { Seat } from '../document/seat-schema.ts';
import { STANCE_UNKNOWNS, type StanceUnknown } from '../posture/stance.ts';
import { toRadians } from '../units/angle.ts';
import { entriesOf } from '../units/entries.ts';
import type { Mutable } from '../units/mutable.ts';
import { type HullRoom, loadsAboard } from './boat-state.ts';
import type { Computed } from './computed-fit.ts';
import { PINNED_SD_DEG, pinnedSdDeg, type SpreadSources } from './doubt-sources.ts';
import type { Quantity } from './finding.ts';
import { floatSlopes } from './float-slopes.ts';
import { foldMoments } from './fold.ts';
import { hullSpread } from './hull-spread.ts';
import { LOOK_ANGLES, LOOKS, type Look, type SeatLooks, type SpreadsAfter } from './looks.ts';
import { conditionedRows, type Measured, productOf } from './measured-rows.ts';
import type { Report } from './report.ts';
import { driveSmooth, marginEdges, postureSmooth, seatFolds } from './seat-folds.ts';
import { hullClearances } from './seat-quantities.ts';
import { type Row, seatRows } from './seat-rows.ts';
import type { SeatState } from './seat-state.ts';
import { withUnpinnedCatch } from './unpinned-catch.ts';
import { keyOf } from './value-table.ts';

/** A value's doubt, in its own unit. */
export interface Spread {
  /** One standard deviation. */
  readonly sd: number;
  /** For a folded value: how far its mean lies from the value. Its probability is computed from the mean. */
  readonly shift?: number;
  /** For a value cut from a smooth one: the smooth one's standard deviation, for its probability. */
  readonly judgedSd?: number;
  /** Body, fittings and looks hardly inform it. */
  readonly uninformed?: true;
  /** More than half of its variance comes from the hull's data. */
  readonly byHull?: true;
}

/** Spreads by quantity and seat (`keyOf`). */
export type Spreads = ReadonlyMap<string, Spread>;

/** A fit's doubts: the spread of every quantity, and the spreads after each look that is not taken yet. */
export interface Doubt {
  /** By quantity and seat. */
  readonly spreads: Spreads;
  /** Looks not yet taken, seat by seat. */
  readonly looks: readonly SeatLooks[];
}

/** A value is uninformed when its spread exceeds this share of the spread before body, fittings and looks. */
const UNINFORMED_SHARE = 0.9;

/**
 * Spread of every quantity, one standard deviation, to first order (GUM, JCGM 100:2008, 5.1): each seat's doubts by `seatRows`,
 * narrowed by what was measured of the posture, and the hull's own data. Fittings as set are exact. What is kinked or folded is
 * taken over its own smooth values (`seatFolds`). Nothing measured widens anything: a tape narrows the covariance of the body,
 * a pin that of all sources together (Bayes' rule).
 */
export function doubtOf(solved: Computed, sources: SpreadSources = {}): Doubt {
  const computed = withUnpinnedCatch(solved);
  const { boat, seats, afloat } = computed;
  const slopesIn = (phase: 'ready' | 'catch') =>
    floatSlopes(boat, loadsAboard(boat, seats, phase), afloat[phase]);
  const floats = { ready: slopesIn('ready'), catch: slopesIn('catch') };
  const parts = seats.flatMap((seat, index) => {
    if (!seat) return [];
    const { rows: raw, usual } = seatRows({ computed, index, floats }, sources);
    const rows = conditionedRows(raw, measuredOf(seat.seat, index));
    return [{ index, seat, raw, rows, usual }];
  });
  const spreads = new Map<string, Spread>();
  const ofHull = sources.hull === false ? new Map<string, number>() : hullChanges(computed);
  const variances = summedVariances(parts, ofHull);
  for (const [name, variance] of variances) {
    const byHull = (ofHull.get(name) ?? 0) ** 2 > variance / 2;
    spreads.set(name, { sd: Math.sqrt(variance), ...(byHull && { byHull }) });
  }
  for (const part of parts) {
    for (const [name, spread] of foldedSpreads(computed, part, ofHull)) spreads.set(name, spread);
    for (const name of uninformedOf(part)) spreads.set(name, { ...spreads.get(name)!, uninformed: true });
  }
  return { spreads, looks: parts.map((part) => looksAt(part, variances)) };
}

/** One seat's part of all doubts. A row has one number for each independent source. */
interface SeatPart {
  /** Index of the seat, bow first. */
  readonly index: number;
  readonly seat: SeatState;
  /** Rows before and after what was measured of the posture. */
  readonly raw: ReadonlyMap<string, Row>;
  /** As `raw`, after it. */
  readonly rows: ReadonlyMap<string, Row>;
  readonly usual: ReadonlyMap<string, number>;
}

/**
 * What one standard deviation of the hull's data changes, by key, in each value's unit: what floats, each by its own, and
 * clearances to the hull's face, all by its breadth.
 */
function hullChanges({ boat, seats, afloat }: Computed): ReadonlyMap<string, number> {
  const spread = Object.entries<number>({ ...hullSpread(boat.boat, afloat.ready, boat.hull) });
  const changes = new Map(spread.map(([id, sd]) => [keyOf(id, null), sd]));
  seats.forEach((seat, index) => {
    if (!seat) return;
    const clearances = (room: HullRoom) => hullClearances(seat, index, { boat: boat.boat, room });
    const [broader, narrower] = [clearances(boat.broader), clearances(boat.narrower)];
    for (const [id, most] of entriesOf(broader))
      changes.set(keyOf(id, index), (most - (narrower[id] ?? most)) / 2);
  });
  return changes;
}

/** Variance of every value: rows of all seats, and the hull's data. Sources are independent, so squares add. */
function summedVariances(
  parts: readonly SeatPart[],
  ofHull: ReadonlyMap<string, number>,
): Map<string, number> {
  const variances = new Map<string, number>();
  const add = (name: string, variance: number) => variances.set(name, (variances.get(name) ?? 0) + variance);
  for (const { rows } of parts) for (const [name, row] of rows) add(name, productOf(row, row));
  for (const [name, change] of ofHull) add(name, change ** 2);
  return variances;
}

/**
 * Keys of a seat's values that body, fittings and looks hardly inform: their spread is over 0.9 of that before, which is the
 * spread without looks and that of the estimate itself from one usual setting to the next, together.
 */
function uninformedOf({ index, raw, rows, usual }: SeatPart): string[] {
  return [...rows].flatMap(([name, row]) => {
    const before = productOf(raw.get(name)!, raw.get(name)!) + (usual.get(name) ?? 0);
    const own = name.endsWith(keyOf('', index));
    return own && before > 0 && productOf(row, row) > UNINFORMED_SHARE ** 2 * before ? [name] : [];
  });
}

/**
 * Spreads of a seat's and the boat's values after each look that is not taken yet, from their variances before. A look narrows
 * what is this seat's; what is of the hull and of other seats stays.
 */
function looksAt({ index, seat, rows }: SeatPart, before: ReadonlyMap<string, number>): SeatLooks {
  const looks: Partial<Record<Look, SpreadsAfter>> = {};
  for (const look of LOOKS) {
    const left = LOOK_ANGLES[look].filter((name) => seat.seat.pins[`${name}Deg`] === undefined);
    if (left.length === 0) continue;
    const after = conditionedRows(
      rows,
      left.map((name) => readingOf(name, index, PINNED_SD_DEG[name])),
    );
    looks[look] = new Map(
      [...after].map(([name, row]) => {
        const own = rows.get(name)!;
        const rest = Math.max(0, before.get(name)! - productOf(own, own));
        return [name, Math.sqrt(rest + productOf(row, row))];
      }),
    );
  }
  return { seat: index, looks };
}

/** The angles of a seat that were measured: the coach's pins, each with the doubt of its reading. */
function measuredOf(seat: Seat, index: number): Measured[] {
  return STANCE_UNKNOWNS.filter((name) => seat.pins[`${name}Deg`] !== undefined).map((name) =>
    readingOf(name, index, pinnedSdDeg(seat, name)),
  );
}

/** An angle of the stance that was read, and its doubt. */
function readingOf(name: StanceUnknown, index: number, sdDeg: number): Measured {
  return { key: keyOf(name, index), sd: toRadians(sdDeg) };
}

/**
 * Spreads of a seat's folded values, over the joint spread of the smooth values that each is made of. On average over what may
 * be read a reading widens nothing, but at a kink it may at the one value that was read: the less of two, 0 ± 1 and 1 ± 0.5, is
 * known to 0.857, and to 0.867 once the second is known for certain to be 1. So the least counts of the spreads that some or all
 * of the readings leave.
 */
function foldedSpreads(
  { seats, drives, quantities }: Computed,
  { index, raw, rows }: SeatPart,
  ofHull: ReadonlyMap<string, number>,
): [string, Spread][] {
  const state = seats[index]!;
  const smooth: Record<string, number> = {
    ...postureSmooth(state, marginEdges(state)),
    ...driveSmooth(drives[index] ?? null),
  };
  const smoothAt = (id: string) =>
    smooth[id] ?? quantities.find((q) => q.id === id && q.seat === index)?.value ?? 0;
  const fewer = withFewerReadings(raw, measuredOf(state.seat, index));
  return Object.entries(seatFolds(state)).map(([id, fold]) => {
    const name = keyOf(id, index);
    const keys = fold.of.map((part) => keyOf(part, index));
    const at = fold.of.map(smoothAt);
    const covarianceIn = (some: typeof rows) => covarianceOf(keys, some, ofHull);
    const covariance = covarianceIn(rows);
    const { mean, sd: last } = foldMoments(fold, at, covariance);
    const sd = fewer.reduce(
      (least, some) => Math.min(least, foldMoments(fold, at, covarianceIn(some)).sd),
      last,
    );
    const byHull = (ofHull.get(keys[0]!) ?? 0) ** 2 > covariance[0]![0]! / 2;
    if (byHull) return [name, { sd, byHull }];
    if (fold.judgedBy === 'mean') return [name, { sd, shift: mean - fold.value(at) }];
    if (fold.judgedBy === 'smooth') return [name, { sd, judgedSd: Math.sqrt(covariance[0]![0]!) }];
    return [name, { sd }];
  });
}

/** Rows after each choice of some of the readings and after none, but not after all: none where nothing was read. */
function withFewerReadings(
  raw: ReadonlyMap<string, Row>,
  readings: readonly Measured[],
): ReadonlyMap<string, Row>[] {
  let choices = [raw];
  for (const reading of readings)
    choices = choices.flatMap((rows) => [rows, conditionedRows(rows, [reading])]);
  return choices.slice(0, -1);
}

/** Covariance of the values by these keys, from a seat's own sources and the hull's breadth. */
function covarianceOf(
  keys: readonly string[],
  rows: ReadonlyMap<string, Row>,
  ofHull: ReadonlyMap<string, number>,
): number[][] {
  const own = keys.map((key) => ({ row: rows.get(key) ?? new Float64Array(0), hull: ofHull.get(key) ?? 0 }));
  return own.map((a) => own.map((b) => productOf(a.row, b.row) + a.hull * b.hull));
}

/** The spreads that an earlier report carries. */
export function heldSpreads(report: Report): Spreads {
  return new Map(
    report.quantities.flatMap(({ id, seat, value, sd, judged, uninformed, byHull }) => {
      if (sd === null) return [];
      const more = !judged ? {} : judged.smooth ? { judgedSd: judged.sd } : { shift: judged.value - value };
      return [
        [keyOf(id, seat), { sd, ...more, ...(uninformed && { uninformed }), ...(byHull && { byHull }) }],
      ];
    }),
  );
}

/** The same quantities with their spreads filled in; null where none is known. */
export function withSpreads(quantities: readonly Quantity[], spreads: Spreads): Quantity[] {
  return quantities.map((q) => {
    const spread = spreads.get(keyOf(q.id, q.seat));
    if (spread && !q.unreached) return withSpread(q, spread);
    return q.sd === null ? q : { ...q, sd: null };
  });
}

/** Written over one copy, not gathered from parts: a crew has four hundred of them in each step of a drag. */
function withSpread(q: Quantity, { sd, shift, judgedSd, uninformed, byHull }: Spread): Quantity {
  const copy: Mutable<Quantity> = { ...q, sd };
  if (uninformed) copy.uninformed = uninformed;
  if (byHull) copy.byHull = byHull;
  if (q.judged?.smooth && judgedSd !== undefined) copy.judged = { ...q.judged, sd: judgedSd };
  else if (shift !== undefined) copy.judged = { value: q.value + shift, sd };
  return copy;
}

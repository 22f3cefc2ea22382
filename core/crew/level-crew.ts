import type { Fit } from '../document/fit-schema.ts';
import { BANDS } from '../evaluation/bands.ts';
import type { Evaluator } from '../evaluation/evaluator.ts';
import type { Report } from '../evaluation/report.ts';
import { sideSign } from '../frame/mirror.ts';
import { boundedStep } from '../optimise/bounded-step.ts';
import { GRAVITY } from '../units/gravity.ts';
import { isHeld, type SeatShift, shiftSeats } from './shift-seat.ts';

/** Target of levelling. Metres, ready stance. */
export interface LevelTarget {
  /** Bow over stern. */
  readonly trim: number;
  /** Combined centre of mass from the centreline, left positive. */
  readonly offCentre: number;
}

/** The usual target: bow a centimetre up, weight over the centreline (common practice, no source). */
export const LEVEL_TARGET: LevelTarget = { trim: 0.01, offCentre: 0 };

/** A levelled crew: the shifts made, the fit and report after them, and whether the targets were met. */
export interface Levelled {
  readonly fit: Fit;
  readonly report: Report;
  readonly shifts: readonly SeatShift[];
  /** What is still missing of each target, metres; null when the boat does not float. */
  readonly missing: { readonly trim: number; readonly offCentre: number } | null;
}

/** Weight of a shift of 1 m against 1 m of missed target: small, because the targets come first. */
const SHIFT_WEIGHT = 1e-4;

/** Newton passes; the answer is nearly linear, three are usual. */
const MOST_PASSES = 6;

/** Targets are met to this, metres: a tenth of a millimetre. */
const MET = 1e-4;

/** Farthest that levelling moves a setting, metres. */
const FARTHEST = 0.25;

/**
 * Shifts whole settings least (sum of squares over the seats), within the hardware's travel and the band for the knee's
 * distance from the centreline, so that trim and off-centre mass come to their targets while each stance is kept.
 * Locked seats stay. Deterministic. `missing` says what the limits did not allow.
 */
export function levelCrew(evaluator: Evaluator, fit: Fit, target: LevelTarget = LEVEL_TARGET): Levelled {
  const held = evaluator.evaluate(fit);
  const limits = limitsOf(fit);
  let shifts: SeatShift[] = fit.seats.map(() => ({ aft: 0, out: 0 }));
  let report = held;
  for (let pass = 0; pass < MOST_PASSES; pass++) {
    const miss = missing(report, target);
    if (!miss || (Math.abs(miss.trim) < MET && Math.abs(miss.offCentre) < MET)) break;
    const slopes = slopesOf(fit, report);
    if (!slopes) break;
    const flat = shifts.flatMap(({ aft, out }) => [aft, out]);
    const step = boundedStep(
      {
        residuals: [miss.trim, miss.offCentre, ...flat.map((s) => SHIFT_WEIGHT * s)],
        jacobian: [
          slopes.trim,
          slopes.offCentre,
          ...flat.map((_, i) => flat.map((__, j) => (i === j ? SHIFT_WEIGHT : 0))),
        ],
      },
      {
        low: flat.map((s, i) => limits.low[i]! - s),
        high: flat.map((s, i) => limits.high[i]! - s),
        damping: 0,
      },
    );
    shifts = shifts.map(({ aft, out }, i) => ({ aft: aft + step[2 * i]!, out: out + step[2 * i + 1]! }));
    report = evaluator.evaluateHolding(shiftSeats(fit, shifts), held);
  }
  const moved = shiftSeats(fit, shifts);
  const after = evaluator.evaluate(moved);
  return { fit: moved, report: after, shifts, missing: missing(after, target) };
}

/** What is missing of trim and balance, metres; null where the boat does not float. */
function missing(report: Report, target: LevelTarget): { trim: number; offCentre: number } | null {
  const afloat = report.afloat.ready;
  if (afloat.kind !== 'afloat' || !report.balance) return null;
  return { trim: afloat.bowOverStern - target.trim, offCentre: report.balance.offCentre - target.offCentre };
}

/** Change of trim and off-centre mass with each seat's shift aft and out, metres per metre. */
function slopesOf(fit: Fit, report: Report): { trim: number[]; offCentre: number[] } | null {
  const afloat = report.afloat.ready;
  if (afloat.kind !== 'afloat') return null;
  const perMetreKg = 0.01 / (afloat.momentPerCentimetreTrim / GRAVITY);
  const trim: number[] = [];
  const offCentre: number[] = [];
  fit.seats.forEach((seat, i) => {
    const mass = report.seats[i]?.stances.ready.totalMassKg ?? 0;
    trim.push(mass * perMetreKg, 0);
    offCentre.push(0, (mass / afloat.massKg) * sideSign(seat.kneels ?? seat.side));
  });
  return { trim, offCentre };
}

/** Bounds of each shift (aft, out, seat by seat): hardware travel, the band of the knee's place, locks. */
function limitsOf(fit: Fit): { low: number[]; high: number[] } {
  const low: number[] = [];
  const high: number[] = [];
  const out = BANDS.find((b) => b.quantity === 'padOut' && (b.crews?.includes(fit.seats.length) ?? true));
  for (const seat of fit.seats) {
    if (!seat.athlete || isHeld(seat)) {
      low.push(0, 0);
      high.push(0, 0);
      continue;
    }
    const pad = room(seat.kneePad.aftM, fit.boat.hardware.padTravelM);
    const rest = room(seat.rearRest.aftM, fit.boat.hardware.restTravelM);
    const side = room(seat.kneePad.outM, [out?.min ?? -FARTHEST, out?.max ?? FARTHEST]);
    low.push(Math.max(pad.low, rest.low, -FARTHEST), side.low);
    high.push(Math.min(pad.high, rest.high, FARTHEST), side.high);
  }
  return { low, high };
}

/** How far a place may move down and up within a travel. A place outside it may only move back. */
function room(at: number, [a, b]: readonly [number, number]): { low: number; high: number } {
  return { low: Math.min(0, Math.min(a, b) - at), high: Math.max(0, Math.max(a, b) - at) };
}

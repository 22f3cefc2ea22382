import { shiftSeats } from '../crew/shift-seat.ts';
import type { Boat } from '../document/boat-schema.ts';
import type { Fit } from '../document/fit-schema.ts';
import type { Evaluator } from '../evaluation/evaluator.ts';
import type { Report } from '../evaluation/report.ts';
import { inHole } from '../optimise/room-in-boat.ts';

/** The same stance in another hull, before and after the least shift that keeps the trim. */
export interface Transferred {
  /** Same places from each seat's datum. */
  readonly asIs: { readonly fit: Fit; readonly report: Report };
  /** Every setting shifted together fore and aft so that bow over stern per metre of length is as it was. */
  readonly trimKept: { readonly fit: Fit; readonly report: Report; readonly shiftAft: number } | null;
  /** The same (or, where the trim cannot be kept, the same places) in the new boat's nearest holes; null without holes. */
  readonly inHoles: { readonly fit: Fit; readonly report: Report } | null;
}

/** Passes of the shift; the answer is nearly linear. */
const MOST_PASSES = 6;

/** Trim is kept to this, radians: 0.1 mm over 5 m. */
const KEPT = 2e-5;

/** Farthest that a transfer shifts, metres. */
const FARTHEST = 0.6;

/**
 * Moves a fit's paddlers into another boat with as many seats: the fittings keep their places from the seats' datums,
 * heights from the floorboard. Then finds the least common shift aft that gives the trim angle the old boat had.
 * `trimKept` is null when either boat does not float or no shift within reach does it. Throws RangeError when the
 * numbers of seats differ.
 */
export function transferFit(evaluator: Evaluator, fit: Fit, boat: Boat): Transferred {
  if (boat.seats.length !== fit.seats.length) {
    throw new RangeError(`the boat has ${boat.seats.length} seats, the fit ${fit.seats.length}`);
  }
  const before = evaluator.evaluate(fit);
  const moved: Fit = { ...fit, boat };
  const report = evaluator.evaluate(moved);
  const trimKept = keepTrim(evaluator, moved, { before, report });
  const drilled = inNearestHoles(trimKept?.fit ?? moved);
  const inHoles = drilled && { fit: drilled, report: evaluator.evaluate(drilled) };
  return { asIs: { fit: moved, report }, trimKept, inHoles };
}

/**
 * Every seat's setting shifted together so that its pad stands in the nearest hole, then its rest in the hole nearest to
 * where that leaves it, both within their travel; null where the hardware has no holes.
 */
export function inNearestHoles(fit: Fit): Fit | null {
  const { padHolePitchM, restHolePitchM, padTravelM, restTravelM } = fit.boat.hardware;
  if (padHolePitchM === null && restHolePitchM === null) return null;
  const nearest = (aft: number, travel: readonly [number, number], pitch: number | null) =>
    pitch === null ? aft : Number(inHole(aft, travel, pitch).toFixed(6));
  const shifts = fit.seats.map(({ kneePad: { aftM } }) => ({
    aft: nearest(aftM, padTravelM, padHolePitchM) - aftM,
    out: 0,
  }));
  const { seats } = shiftSeats(fit, shifts);
  return {
    ...fit,
    seats: seats.map((seat) => ({
      ...seat,
      rearRest: { ...seat.rearRest, aftM: nearest(seat.rearRest.aftM, restTravelM, restHolePitchM) },
    })),
  };
}

function keepTrim(
  evaluator: Evaluator,
  fit: Fit,
  { before, report }: { before: Report; report: Report },
): Transferred['trimKept'] {
  const was = before.afloat.ready;
  if (was.kind !== 'afloat') return null;
  let shiftAft = 0;
  let now = report;
  for (let pass = 0; pass < MOST_PASSES; pass++) {
    const afloat = now.afloat.ready;
    if (afloat.kind !== 'afloat') return null;
    const miss = afloat.trim - was.trim;
    if (Math.abs(miss) < KEPT) break;
    const paddlers = now.seats.reduce((sum, s) => sum + (s?.stances.ready.totalMassKg ?? 0), 0);
    const perMetre = paddlers / (afloat.massKg * afloat.longitudinalGm);
    shiftAft -= miss / perMetre;
    if (!(Math.abs(shiftAft) < FARTHEST)) return null;
    now = evaluator.evaluateHolding(shifted(fit, shiftAft), report);
  }
  const final = shifted(fit, shiftAft);
  return { fit: final, report: evaluator.evaluate(final), shiftAft };
}

const shifted = (fit: Fit, aft: number) =>
  shiftSeats(
    fit,
    fit.seats.map(() => ({ aft, out: 0 })),
  );

/** One athlete's own single-boat setting as the start of a crew seat: stance kept, side and datum the seat's. */
export function seatFromSingle(crew: Fit, at: number, single: Fit): Fit {
  const own = single.seats[0];
  if (!own) return crew;
  return { ...crew, seats: crew.seats.map((seat, i) => (i === at ? { ...own, locks: seat.locks } : seat)) };
}

import type { Fit } from '../document/fit-schema.ts';
import { withSeatCoordinate } from '../document/fitting-coordinate.ts';
import type { Seat } from '../document/seat-schema.ts';
import type { Finding, Instead, Quantity } from './finding.ts';
import { findQuantity, type QuantityId } from './quantities.ts';

/** The outcome that each rule of thumb about a place serves, and the seat with that place set. */
const PLACES: Readonly<Record<string, { readonly outcome: QuantityId; at(seat: Seat, to: number): Seat }>> = {
  /** Pad, rest and front foot together: the paddler kneels as before, farther aft. */
  padAft: {
    outcome: 'trimRest',
    at: (seat, to) => {
      const by = to - seat.kneePad.aftM;
      const padded = withSeatCoordinate(seat, 'kneePad.aftM', to);
      const rested = withSeatCoordinate(padded, 'rearRest.aftM', seat.rearRest.aftM + by);
      return withSeatCoordinate(rested, 'frontFoot.forwardM', seat.frontFoot.forwardM - by);
    },
  },
  padOut: { outcome: 'supportMargin', at: (seat, to) => withSeatCoordinate(seat, 'kneePad.outM', to) },
  padHeight: { outcome: 'frontKnee', at: (seat, to) => withSeatCoordinate(seat, 'kneePad.heightM', to) },
};

/**
 * Adds to a finding of an unusual place that works what the usual place would do to its outcome: the fit is computed once more
 * with the place at the nearest edge of its band. Other findings are returned unchanged. SI.
 */
export function withUsualPlace(
  finding: Finding,
  fit: Fit,
  work: { quantities: readonly Quantity[]; quantitiesOf(fit: Fit): readonly Quantity[] },
): Finding {
  const place = PLACES[finding.quantity];
  const { severity, seat, value, distance, band } = finding;
  if (!place || seat === null || severity !== 'check' || distance <= 0) return finding;
  const at = band.max !== null && value > band.max ? band.max : band.min;
  if (at === null) return finding;
  const seats = fit.seats.map((s, i) => (i === seat ? place.at(s, at) : s));
  const from = outcomeIn(work.quantities, place.outcome, seat);
  const to = outcomeIn(work.quantitiesOf({ ...fit, seats }), place.outcome, seat);
  if (!from || !to) return finding;
  const instead: Instead = { at, quantity: place.outcome, unit: from.unit, from: from.value, to: to.value };
  return { ...finding, instead };
}

/** An outcome of the seat, or else of the boat. */
function outcomeIn(quantities: readonly Quantity[], id: QuantityId, seat: number): Quantity | null {
  return findQuantity(quantities, id, seat) ?? findQuantity(quantities, id, null);
}

import type { Fit } from '../document/fit-schema.ts';
import { boatState } from '../evaluation/boat-state.ts';
import type { Report } from '../evaluation/report.ts';
import { seatFrame } from '../evaluation/seat-state.ts';
import type { Support } from '../support/support.ts';
import { rangesAbout, supportLoads } from '../support/support-loads.ts';
import { cornersOf } from '../support/support-patches.ts';
import { heldShares } from '../support/support-triangle.ts';
import type { StrokeCrew, StrokeRow, StrokeSeatRow } from './stroke-cycle.ts';

/** What moves through a stroke, of a fit and its report. */
export function strokeOfFit(fit: Fit, report: Report): StrokeCrew {
  const seats = report.seats.map((solved, index) => {
    const seat = fit.seats[index]!;
    return solved && { ...solved, seat, frame: seatFrame(fit.boat, seat, index) };
  });
  return { boat: boatState(fit), seats, afloat: report.afloat.ready };
}

/**
 * The report as a drawing of one instant needs it: figures, contacts, loads and the boat's lie are those of the row; its
 * findings are left out, for bands speak of the ready stance. Quantities stay those of the ready stance.
 */
export function reportAt(fit: Fit, report: Report, row: StrokeRow): Report {
  const seats = report.seats.map((seat, index) => {
    const now = row.seats[index];
    if (!seat || !now) return seat;
    const support = loadedSupport(now, supportLoads(now.stance, fit.seats[index]!));
    return { ...seat, support, stances: { ...seat.stances, ready: now.stance } };
  });
  return { ...report, seats, afloat: { ...report.afloat, ready: row.afloat }, findings: [] };
}

/** How the weight rests with the blade's force of this instant; as at rest where the boat does not float. */
function loadedSupport({ loadsN, seemsAt }: StrokeSeatRow, support: Support): Support {
  if (!loadsN || !seemsAt) return support;
  const shares = heldShares(loadsN);
  return {
    ...support,
    shares,
    loadsN,
    shareRanges: rangesAbout(shares, cornersOf(support.patches), seemsAt),
  };
}

import { entriesOf } from '../units/entries.ts';
import type { Band, Finding, Quantity, Unit } from './finding.ts';
import type { Look, SeatLooks, SpreadsAfter } from './looks.ts';
import { judgedOf, severityOf } from './probability.ts';

/**
 * A judged value that body and fittings hardly inform, so that it is no finding: the general estimate, its doubt, and the look
 * that would narrow it. SI.
 */
export interface Unknown {
  /** As in `Finding`. */
  readonly id: string;
  readonly quantity: string;
  /** Index of the seat, bow first. */
  readonly seat: number;
  /** The estimate for everybody. */
  readonly value: number;
  /** One standard deviation between persons. */
  readonly sd: number;
  readonly unit: Unit;
  readonly band: Band;
  /** Probability that it lies outside its band. */
  readonly probability: number;
  /** The photograph that would narrow it most; null where none would. */
  readonly look: Look | null;
  /** Its standard deviation after that look. */
  readonly sdAfter: number;
  /** How many values of this seat and of the boat, in doubt or unknown now, that look would decide. */
  readonly decides: number;
}

/** A look must take at least this share off a value's spread to be named for it. */
const WORTH_LOOKING = 0.1;

/**
 * What is unknown among the findings of `judge` (severity *unknown*), what would settle most first. `seats` has the spreads
 * after each look; a value counts as decided where it would be *good*, *change* or *stop* after the look.
 */
export function unknownsOf(
  judged: readonly Finding[],
  quantities: readonly Quantity[],
  seats: readonly SeatLooks[],
): Unknown[] {
  return judged
    .flatMap((finding): Unknown[] => {
      const { severity, seat, sd } = finding;
      if (severity !== 'unknown' || seat === null || sd === null) return [];
      const { id, quantity, value, unit, band, probability } = finding;
      const told = { id, quantity, seat, value, sd, unit, band, probability };
      const best = bestLook(
        finding,
        seats.find((s) => s.seat === seat),
      );
      if (!best) return [{ ...told, look: null, sdAfter: sd, decides: 0 }];
      const decides = judged.filter((f) => isDecided(f, { seat, quantities, after: best.after })).length;
      return [{ ...told, look: best.look, sdAfter: best.after.get(id) ?? sd, decides }];
    })
    .sort((a, b) => b.decides - a.decides);
}

/** The look that narrows a value most, if any narrows it enough to be worth a picture. */
function bestLook(
  { id, sd }: Finding,
  seat: SeatLooks | undefined,
): { look: Look; after: SpreadsAfter } | null {
  let best: { look: Look; after: SpreadsAfter } | null = null;
  let least = (1 - WORTH_LOOKING) * (sd ?? 0);
  for (const [look, after] of entriesOf<Look, SpreadsAfter>(seat?.looks ?? {})) {
    const left = after.get(id) ?? Number.POSITIVE_INFINITY;
    if (left >= least) continue;
    least = left;
    best = { look, after };
  }
  return best;
}

/** Whether a value in doubt or unknown, of this seat or of the boat, would no longer be so. */
function isDecided(
  { id, quantity: name, severity, seat: at, band, sd }: Finding,
  { seat, quantities, after }: { seat: number; quantities: readonly Quantity[]; after: SpreadsAfter },
): boolean {
  if (severity !== 'check' && severity !== 'unknown') return false;
  if (at !== null && at !== seat) return false;
  const left = after.get(id);
  const quantity = quantities.find((q) => q.id === name && q.seat === at);
  if (left === undefined || !quantity || !sd) return false;
  const now = judgedOf(quantity);
  return severityOf({ value: now.value, sd: (now.sd * left) / sd }, band) !== 'check';
}

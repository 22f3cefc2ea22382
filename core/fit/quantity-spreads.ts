import { BODY_LENGTHS, type BodyEstimate, type BodyLength } from '../body/body.ts';
import type { Quantity } from '../findings/finding.ts';
import { hullSpread } from '../hull/hull-spread.ts';
import { STANCE_UNKNOWNS, type StanceUnknown } from '../stance/stance.ts';
import { toDegrees } from '../units/angle.ts';
import { type Computed, computeBoat } from './computed-fit.ts';
import { squareRootOf } from './covariance-root.ts';
import type { Report } from './report.ts';
import type { Pins, Seat } from './seat-schema.ts';
import { type SeatInput, type SeatState, solveSeat } from './seat-state.ts';

/** Standard deviations by quantity and seat, in the quantity's unit. */
export type Spreads = ReadonlyMap<string, number>;

/** How truly a fitting is placed and read: 2 mm and 1.5° (estimate of careful work with tape and bevel). */
const PLACING_SD_M = 0.002;
const TURNING_SD_DEG = 1.5;

/**
 * How far a person's ready posture strays from the model's, degrees: estimate. Lumbar and pelvic angles of young
 * canoeists at rest varied by 4–7° between persons (López-Miñarro, Muyor, Alacid 2011, J Hum Kinet).
 */
const POSTURE_SD_DEG: Readonly<Record<StanceUnknown, number>> = {
  thighPitch: 2.5,
  thighRoll: 1.5,
  pelvisYaw: 4,
  trunkPitch: 4.5,
  trunkRoll: 1.5,
};

/** A pinned angle was measured, from a photograph say: degrees, estimate. */
const PINNED_SD_DEG = 2;

/** Scale of body mass between two weighings on the same day, kilograms (estimate). */
const BODY_MASS_SD_KG = 0.7;

/**
 * First-order spread of every quantity: each independent source of doubt is moved by one standard deviation, the fit
 * is solved again, and the changes add by their squares. Sources: body lengths (all together, by their covariance),
 * body mass, placing of the fittings, posture, and the hull's own data.
 */
export function spreadsOf(computed: Computed): Spreads {
  const variances = new Map<string, number>();
  computed.seats.forEach((seat, index) => {
    if (!seat) return;
    for (const moved of variations(seat)) {
      const seats = computed.seats.map((s, i) => (i === index ? solveSeat(moved) : s));
      addSquares(
        variances,
        computed.quantities,
        computeBoat(computed.boat, seats, computed.afloat).quantities,
      );
    }
  });
  for (const [id, sd] of Object.entries({ ...hullSpread(computed.boat.boat) })) {
    variances.set(key(id, null), (variances.get(key(id, null)) ?? 0) + sd ** 2);
  }
  return new Map([...variances].map(([k, v]) => [k, Math.sqrt(v)]));
}

/** The spreads that an earlier report carries. */
export function heldSpreads(report: Report): Spreads {
  return new Map(report.quantities.flatMap((q) => (q.sd === null ? [] : [[key(q.id, q.seat), q.sd]])));
}

/** The same quantities with their spreads filled in; null where none is known. */
export function withSpreads(quantities: readonly Quantity[], spreads: Spreads): Quantity[] {
  return quantities.map((q) => ({ ...q, sd: spreads.get(key(q.id, q.seat)) ?? null }));
}

const key = (id: string, seat: number | null) => `${id}@${seat ?? 'boat'}`;

function addSquares(into: Map<string, number>, base: readonly Quantity[], moved: readonly Quantity[]): void {
  const values = new Map(moved.map((q) => [key(q.id, q.seat), q.value]));
  for (const q of base) {
    const k = key(q.id, q.seat);
    const change = (values.get(k) ?? q.value) - q.value;
    into.set(k, (into.get(k) ?? 0) + change ** 2);
  }
}

/** The seat with each source of doubt moved by one standard deviation, one at a time. */
function variations(seat: SeatState): SeatInput[] {
  const { body, frame } = seat;
  const bodies = [...bodyVariations(body), { ...body, ...massVariation(body) }];
  return [
    ...bodies.map((moved) => ({ seat: seat.seat, body: moved, frame })),
    ...placings(seat.seat).map((moved) => ({ seat: moved, body, frame })),
    ...postures(seat).map((moved) => ({ seat: moved, body, frame })),
  ];
}

function bodyVariations(body: BodyEstimate): BodyEstimate[] {
  return squareRootOf(body.covariance).map((column) => {
    const lengths = Object.fromEntries(
      BODY_LENGTHS.map((name, i) => {
        const estimate = body.lengths[name];
        return [name, { ...estimate, value: estimate.value + (column[i] ?? 0) }];
      }),
    ) as Record<BodyLength, BodyEstimate['lengths'][BodyLength]>;
    return { ...body, lengths };
  });
}

function massVariation(body: BodyEstimate): Pick<BodyEstimate, 'mass' | 'segments'> {
  const factor = 1 + BODY_MASS_SD_KG / body.mass;
  const segments = Object.fromEntries(
    Object.entries(body.segments).map(([name, s]) => [name, { ...s, massKg: s.massKg * factor }]),
  ) as BodyEstimate['segments'];
  return { mass: body.mass * factor, segments };
}

function placings(seat: Seat): Seat[] {
  const { kneePad: pad, rearRest: rest, frontFoot: foot } = seat;
  const d = PLACING_SD_M;
  return [
    { ...seat, kneePad: { ...pad, aftM: pad.aftM + d } },
    { ...seat, kneePad: { ...pad, outM: pad.outM + d } },
    { ...seat, kneePad: { ...pad, heightM: pad.heightM + d } },
    { ...seat, kneePad: { ...pad, recessTurnDeg: pad.recessTurnDeg + TURNING_SD_DEG } },
    { ...seat, rearRest: { ...rest, aftM: rest.aftM + d } },
    { ...seat, rearRest: { ...rest, outM: rest.outM + d } },
    { ...seat, rearRest: { ...rest, heightM: rest.heightM + d } },
    { ...seat, rearRest: { ...rest, turnDeg: rest.turnDeg + TURNING_SD_DEG } },
    { ...seat, frontFoot: { ...foot, forwardM: foot.forwardM + d } },
    { ...seat, frontFoot: { ...foot, outM: foot.outM + d } },
    { ...seat, frontFoot: { ...foot, toeOutDeg: foot.toeOutDeg + TURNING_SD_DEG } },
  ];
}

/** Holds one unknown a standard deviation away from its solved value and lets the others find their place. */
function postures(state: SeatState): Seat[] {
  const { seat, stances } = state;
  return STANCE_UNKNOWNS.map((unknown) => {
    const pin = `${unknown}Deg` as keyof Pins;
    const pinned = seat.pins[pin];
    const sd = pinned === undefined ? POSTURE_SD_DEG[unknown] : PINNED_SD_DEG;
    const at = pinned ?? toDegrees(stances.ready.angles[unknown]);
    return { ...seat, pins: { ...seat.pins, [pin]: (at as number) + sd } };
  });
}

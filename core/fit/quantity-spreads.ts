import { BODY_LENGTHS, type BodyEstimate, type BodyLength } from '../body/body.ts';
import type { Quantity } from '../findings/finding.ts';
import { hullSpread } from '../hull/hull-spread.ts';
import { midDrive, topHandSd } from '../paddle/mid-drive.ts';
import { STANCE_UNKNOWNS, type StanceUnknown } from '../stance/stance.ts';
import { toDegrees } from '../units/angle.ts';
import { type Computed, computeBoat } from './computed-fit.ts';
import { COORDINATES, FITTING_COORDINATES } from './coordinates.ts';
import { squareRootOf } from './covariance-root.ts';
import { coordinateOf, withSeatCoordinate } from './fitting-coordinate.ts';
import type { Report } from './report.ts';
import type { Pins, Seat } from './seat-schema.ts';
import { DEFAULT_DRIVE_FORCE_N, type SeatInput, type SeatState, solveSeat } from './seat-state.ts';

/** Standard deviations by quantity and seat, in the quantity's unit. */
export type Spreads = ReadonlyMap<string, number>;

/** How truly a fitting is placed and read, metres: estimate of careful work with a tape. */
export const PLACING_SD_M = 0.002;

/** How truly a fitting is turned, degrees: estimate of careful work with a bevel. */
export const TURNING_SD_DEG = 1.5;

/**
 * How far a person's ready posture strays from the model's, degrees: estimate. Lumbar and pelvic angles of young
 * canoeists at rest varied by 4–7° between persons (López-Miñarro, Muyor, Alacid 2011, J Hum Kinet). Each strays with the
 * others left to find their place, which keeps what a body must keep: hips out to one side are answered by the trunk, or the boat
 * would go over. Angles therefore vary together and by more than these figures alone: at the example's fittings the trunk by
 * 4.5° fore and aft and 2.2° seen from behind, the pelvis by 4.8°, the thigh by 2.8° and 1.7°; body lengths add 0.1° to 0.8°.
 */
export const POSTURE_SD_DEG: Readonly<Record<StanceUnknown, number>> = {
  thighPitch: 2.5,
  thighRoll: 1.5,
  pelvisYaw: 4,
  trunkPitch: 4.5,
  trunkRoll: 1.5,
};

/**
 * How truly an angle is held that was measured off a photograph, degrees: estimates. Reading a photograph costs next to
 * nothing (0.1° and 2 mm on a marked object: Ferreira et al. 2010, Clinics 65:675–681); what counts is where joints are felt for,
 * 1 cm each over half a metre of trunk (1.6°), the camera's level (0.5°) and the athlete's own sway from one look to the next
 * (1°). Seen from behind the trunk's marks lie on the spine, felt for to half a centimetre (0.8°).
 */
export const PINNED_SD_DEG: Readonly<Record<StanceUnknown, number>> = {
  thighPitch: 2,
  thighRoll: 2,
  pelvisYaw: 2,
  trunkPitch: 2,
  trunkRoll: 1.4,
};

/** Scale of body mass between two weighings on the same day, kilograms (estimate). */
export const BODY_MASS_SD_KG = 0.7;

/**
 * How truly the drive's mean force is known, as a share of it: the peaks reported for single blades, 250 to 350 N (low
 * confidence), taken as two standard deviations either side and half as much again for the mean over the peak.
 */
export const DRIVE_FORCE_SD = 0.15;

/** Sources of doubt to leave out, for studies of the others; all are counted unless said otherwise. */
export interface SpreadSources {
  readonly posture?: boolean;
  readonly hull?: boolean;
}

/**
 * First-order spread of every quantity: each independent source of doubt is moved to either side, the fit is solved
 * again, and the changes per standard deviation add by their squares (GUM, JCGM 100:2008, 5.1). Sources: body lengths
 * (all together, by their covariance), body mass, drive force, placing of the fittings, the top hand in the drive,
 * posture, and the hull's own data.
 */
export function spreadsOf(computed: Computed, sources: SpreadSources = {}): Spreads {
  const variances = new Map<string, number>();
  computed.seats.forEach((seat, index) => {
    if (!seat) return;
    const less = variations(seat, { ...sources, by: -STEP });
    const more = variations(seat, { ...sources, by: STEP });
    const quantitiesOf = (moved: SeatInput) => {
      const state = solveSeat(moved, { exit: seat.stances.exit });
      const seats = computed.seats.map((s, i) => (i === index ? state : s));
      const known = { exit: computed.afloat.exit, moved: index };
      return computeBoat(computed.boat, seats, computed.afloat, known).quantities;
    };
    less.forEach((lower, k) => {
      addSquares(variances, quantitiesOf(lower), quantitiesOf(more[k]!));
    });
  });
  const fromHull = sources.hull === false ? {} : { ...hullSpread(computed.boat.boat, computed.afloat.ready) };
  for (const [id, sd] of Object.entries<number>(fromHull)) {
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
  return quantities.map((q) => ({
    ...q,
    sd: q.unreached ? null : (spreads.get(key(q.id, q.seat)) ?? null),
  }));
}

const key = (id: string, seat: number | null) => `${id}@${seat ?? 'boat'}`;

/** Adds the square of each quantity's change per standard deviation, from its values at −STEP and +STEP. */
function addSquares(into: Map<string, number>, less: readonly Quantity[], more: readonly Quantity[]): void {
  const values = new Map(more.map((q) => [key(q.id, q.seat), q.value]));
  for (const q of less) {
    const k = key(q.id, q.seat);
    const change = ((values.get(k) ?? q.value) - q.value) / (2 * STEP);
    into.set(k, (into.get(k) ?? 0) + change ** 2);
  }
}

/** Half-width of the central difference, in standard deviations. */
const STEP = 0.5;

/** The seat with each source of doubt moved by `by` standard deviations, one at a time. */
function variations(seat: SeatState, { posture, by }: SpreadSources & { by: number }): SeatInput[] {
  const { body, frame } = seat;
  const bodies = [...bodyVariations(body, by), { ...body, ...massVariation(body, by) }];
  return [
    ...bodies.map((moved) => ({ seat: seat.seat, body: moved, frame })),
    { seat: withForce(seat.seat, 1 + by * DRIVE_FORCE_SD), body, frame },
    ...placings(seat.seat, by).map((moved) => ({ seat: moved, body, frame })),
    { seat: withTopHand(seat, by), body, frame },
    ...(posture === false ? [] : postures(seat, by)).map((moved) => ({ seat: moved, body, frame })),
  ];
}

function bodyVariations(body: BodyEstimate, by: number): BodyEstimate[] {
  return squareRootOf(body.covariance).map((column) => {
    const lengths = Object.fromEntries(
      BODY_LENGTHS.map((name, i) => {
        const estimate = body.lengths[name];
        return [name, { ...estimate, value: estimate.value + by * (column[i] ?? 0) }];
      }),
    ) as Record<BodyLength, BodyEstimate['lengths'][BodyLength]>;
    return { ...body, lengths };
  });
}

function massVariation(body: BodyEstimate, by: number): Pick<BodyEstimate, 'mass' | 'segments'> {
  const factor = 1 + (by * BODY_MASS_SD_KG) / body.mass;
  const segments = Object.fromEntries(
    Object.entries(body.segments).map(([name, s]) => [name, { ...s, massKg: s.massKg * factor }]),
  ) as BodyEstimate['segments'];
  return { mass: body.mass * factor, segments };
}

/** The same seat with its drive force multiplied. */
function withForce(seat: Seat, factor: number): Seat {
  const driveForceN = (seat.stroke.driveForceN ?? DEFAULT_DRIVE_FORCE_N) * factor;
  return { ...seat, stroke: { ...seat.stroke, driveForceN } };
}

/** The coordinates that are placed with a tape and turned with a bevel. */
const PLACED = FITTING_COORDINATES.filter(
  (c) => !c.startsWith('paddle.') && c !== 'frontFoot.wedgeDeg' && c !== 'frontFoot.heightM',
);

function placings(seat: Seat, by: number): Seat[] {
  return PLACED.map((coordinate) => {
    const sd = COORDINATES[coordinate].unit === 'm' ? PLACING_SD_M : TURNING_SD_DEG;
    return withSeatCoordinate(seat, coordinate, coordinateOf(seat, coordinate) + by * sd);
  });
}

/** The top hand in the middle of the drive moved up: what the paddle's length by the stance rests on most. */
function withTopHand(state: SeatState, by: number): Seat {
  const topHandOverM = midDrive(state).topHandOver + by * topHandSd(state);
  return { ...state.seat, stroke: { ...state.seat.stroke, topHandOverM } };
}

/** Holds one unknown away from its solved value and lets the others find their place. */
function postures(state: SeatState, by: number): Seat[] {
  const { seat, stances } = state;
  return STANCE_UNKNOWNS.map((unknown) => {
    const pin = `${unknown}Deg` as keyof Pins;
    const pinned = seat.pins[pin];
    const sd = pinned === undefined ? POSTURE_SD_DEG[unknown] : PINNED_SD_DEG[unknown];
    const at = pinned ?? toDegrees(stances.ready.angles[unknown]);
    return { ...seat, pins: { ...seat.pins, [pin]: (at as number) + by * sd } };
  });
}

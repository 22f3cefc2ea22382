import type { Boat } from '../document/boat-schema.ts';
import { toPaddlerFrame } from '../frame/mirror.ts';
import { innerHalfBreadth } from '../hull/inner-half-breadth.ts';
import type { Part } from '../parts/part.ts';
import type { SeatParts } from '../parts/seat-parts.ts';
import { lengthsOf } from '../posture/contacts.ts';
import { excessOf, legChains } from '../posture/reach.ts';
import type { Stance } from '../posture/stance.ts';
import { strokePitch } from '../posture/stroke-pitch.ts';
import type { Support } from '../support/support.ts';
import type { ShareRange } from '../support/support-polygon.ts';
import { toRadians } from '../units/angle.ts';
import { keysOf } from '../units/entries.ts';
import { GRAVITY } from '../units/gravity.ts';
import type { Mutable } from '../units/mutable.ts';
import type { BoatState, HullRoom } from './boat-state.ts';
import type { Quantity } from './finding.ts';
import { footClearances, partClearances } from './part-clearances.ts';
import { partsOfSeat } from './parts-of.ts';
import { QUANTITIES, type QuantityId } from './quantities.ts';
import type { SeatState } from './seat-state.ts';

/** Values by id, SI; what does not apply is left out. */
type Values = Partial<Record<QuantityId, number>>;

/** Every quantity of one occupied seat, without spreads. SI; `quantities.ts` defines them. */
export function seatQuantities(state: SeatState, index: number, place: BoatState): readonly Quantity[] {
  const known = place.listed.get(state);
  if (known?.index === index) return known.quantities;
  const values = [postureValues(state), loadValues(state), fittingValues(state, index, place)];
  const quantities = listed(values, state, index);
  place.listed.set(state, { index, quantities });
  return quantities;
}

/** Values as set, and every clearance. SI. */
export function fittingValues(
  state: Placed,
  index: number,
  place: Pick<BoatState, 'boat'> & HullRoom,
): Values {
  return {
    ...asSet(state, place.boat, index),
    kneeInsideHull: kneeInsideHull(state.stances.ready, place, state.body.lengths.kneeRadius.value),
    ...partClearances(partsOfState(state, index, place.boat), roomsOf(state, place)),
  };
}

/** An occupied seat whose ready stance is known. */
type Placed = Pick<SeatState, 'seat' | 'frame' | 'body'> & {
  readonly stances: Pick<SeatState['stances'], 'ready'>;
};

/** The clearances that also depend on the body: knee and front foot. Metres. */
export function bodyClearances(state: Placed, index: number, place: BoatState): Values {
  return {
    kneeInsideHull: kneeInsideHull(state.stances.ready, place, state.body.lengths.kneeRadius.value),
    ...footClearances(partsOfState(state, index, place.boat), roomsOf(state, place)),
  };
}

/**
 * Every clearance of a seat to the hull's face, metres: negative where there is no room. `room` is the boat's own, or that of a
 * broader one.
 */
export function hullClearances(
  state: Placed,
  index: number,
  { boat, room }: { boat: Boat; room: HullRoom },
): Values {
  const { kneePad, rearRest, frontFoot } = partsOfState(state, index, boat);
  const roomOf = roomsOf(state, room);
  const [pad, rest] = [roomOf(kneePad), roomOf(rearRest)];
  const { hull } = room;
  return {
    kneeInsideHull: kneeInsideHull(state.stances.ready, { boat, hull }, state.body.lengths.kneeRadius.value),
    padInsideHull: pad.insideHull,
    restInsideHull: rest.insideHull,
    footInsideHull: roomOf(frontFoot).insideHull,
    padHolesToSkin: pad.holesToSkin,
    restHolesToSkin: rest.holesToSkin,
  };
}

/** The room of a seat's part in its boat. */
const roomsOf =
  ({ seat }: Placed, { roomOf }: Pick<HullRoom, 'roomOf'>) =>
  (part: Part) =>
    roomOf(part, seat[part.part]);

/** The seat's fittings as solids. */
function partsOfState({ seat, frame, body }: Placed, index: number, boat: Boat): SeatParts {
  return partsOfSeat(boat, seat, { index, frame, footLength: body.lengths.footLength.value });
}

/** A seat's values as quantities, with the values from which their probability is computed. */
function listed(all: readonly Values[], state: SeatState, index: number): Quantity[] {
  const { stances, body, support } = state;
  const ranges = loadRanges(support, stances.ready.totalMassKg * GRAVITY);
  const smooth = smoothReaches({ stances, body });
  const missed = unreached(state);
  const quantities: Quantity[] = [];
  for (const values of all)
    for (const id of idsOf(values)) {
      const value = values[id];
      if (value === undefined) continue;
      const quantity: Mutable<Quantity> = { id, seat: index, value, sd: null, unit: QUANTITIES[id].unit };
      const [whole, range] = [smooth[id], ranges[id]];
      if (missed.includes(id)) quantity.unreached = true;
      if (range) quantity.range = range;
      if (whole !== undefined) quantity.judged = { value: whole, sd: 0, smooth: true };
      quantities.push(quantity);
    }
  return quantities;
}

const idsOf = (values: Values) => keysOf(values);

/** The whole distances that reaches are cut from: negative by what is to spare. Metres. */
export function smoothReaches({ stances, body }: Pick<Placed, 'stances' | 'body'>): Values {
  const { rear, front } = legChains(stances.ready, lengthsOf(body));
  return { rearReach: excessOf(rear), frontReach: excessOf(front) };
}

/** Angles of a leg that is drawn straight because it does not reach. */
const ANGLES_OF = { rearRest: ['rearAnkle'], frontFoot: ['frontKnee', 'frontAnkle'] } as const;

/** Angles of limbs that are drawn straight because they do not reach their fitting. */
function unreached({ stances }: SeatState): readonly QuantityId[] {
  return (['rearRest', 'frontFoot'] as const).flatMap((part) =>
    shortfall(stances.ready, part) > 0 ? ANGLES_OF[part] : [],
  );
}

/** Values that the coach set, and simple differences of them. */
function asSet({ seat, body }: Pick<SeatState, 'seat' | 'body'>, boat: Boat, index: number): Values {
  const { kneePad, rearRest, frontFoot, paddle } = seat;
  return {
    padAft: kneePad.aftM,
    padFromMid: kneePad.aftM - (boat.seats[index]?.stationM ?? 0),
    padOut: kneePad.outM,
    padHeight: kneePad.heightM,
    recessTurn: toRadians(kneePad.recessTurnDeg),
    recessDepth: kneePad.recessDepthM,
    restAft: rearRest.aftM,
    restTurn: toRadians(rearRest.turnDeg),
    frontHeelForward: frontFoot.forwardM,
    paddleUnderStature: body.stature - paddle.lengthM,
    bladeShare: paddle.bladeLengthM / paddle.lengthM,
    strokeLean: Math.max(strokePitch(seat, 'catch'), strokePitch(seat, 'exit')),
    strapReleases: STRAP[rearRest.strap],
    floorNonSlip: frontFoot.nonSlip ? 1 : 0,
    padBraced: kneePad.braced ? 1 : 0,
    kneelsOnSide: seat.kneels === undefined || seat.kneels === seat.side ? 1 : 0,
    padTravel: insideTravel(kneePad.aftM, boat.hardware.padTravelM),
    restTravel: insideTravel(rearRest.aftM, boat.hardware.restTravelM),
  };
}

/** A fixed strap is worse than none: no paddler may be tied in. */
const STRAP = { releases: 1, none: 0, fixed: -1 } as const;

/** Distance to the nearer end of a travel, metres; negative outside it. */
function insideTravel(at: number, [a, b]: readonly [number, number]): number {
  return Math.min(at - Math.min(a, b), Math.max(a, b) - at);
}

/** Angles and centre of mass: values that change with posture alone. SI. */
export function postureValues({ stances, frame }: Pick<Placed, 'stances' | 'frame'>): Values {
  const { ready } = stances;
  const { thighRoll: _, ...angles } = ready.angles;
  const centre = toPaddlerFrame(ready.centreOfMass, frame);
  return {
    ...angles,
    hipFlexorStretch: Math.min(angles.kneelingHip - Math.PI, Math.PI / 2 - angles.kneelingKnee),
    rearReach: shortfall(ready, 'rearRest'),
    frontReach: shortfall(ready, 'frontFoot'),
    centreAft: -centre.x,
    centreOut: centre.y,
    centreHeight: centre.z,
  };
}

/** How much a limb is short of its fitting, metres; 0 where it reaches. */
function shortfall(stance: Stance, part: 'rearRest' | 'frontFoot'): number {
  return stance.shortfalls.find((s) => s.part === part)?.shortfall ?? 0;
}

/** Values of the support: shares, newtons, metres, pascals. */
export function loadValues({
  support,
}: {
  support: Pick<Support, 'shares' | 'loadsN' | 'margin' | 'padPressurePa'>;
}): Values {
  return {
    kneeShare: support.shares.knee,
    rearShare: support.shares.rearFoot,
    frontShare: support.shares.frontFoot,
    kneeLoad: support.loadsN.knee,
    rearLoad: support.loadsN.rearFoot,
    frontLoad: support.loadsN.frontFoot,
    supportMargin: support.margin,
    padPressure: support.padPressurePa,
  };
}

/** Shares and loads at rest wherever in its patch each contact bears. */
function loadRanges(
  { shareRanges: { knee, rearFoot, frontFoot } }: Support,
  weight: number,
): Partial<Record<QuantityId, ShareRange>> {
  const load = ({ least, most }: ShareRange) => ({ least: least * weight, most: most * weight });
  return {
    kneeShare: knee,
    rearShare: rearFoot,
    frontShare: frontFoot,
    kneeLoad: load(knee),
    rearLoad: load(rearFoot),
    frontLoad: load(frontFoot),
  };
}

/**
 * Room between the kneeling knee, as round as it is deep, and the hull's inner face beside it, metres; left out where no face
 * is beside it, as above the sheer.
 */
function kneeInsideHull(
  { points }: Stance,
  { boat, hull }: Pick<BoatState, 'boat'> & Pick<HullRoom, 'hull'>,
  kneeRadius: number,
): number | undefined {
  const knee = points.kneelingKnee;
  const breadth = innerHalfBreadth(hull, knee, boat.skinM);
  return breadth === null ? undefined : breadth - Math.abs(knee.y) - kneeRadius;
}

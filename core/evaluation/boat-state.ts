import type { Boat } from '../document/boat-schema.ts';
import type { Fit } from '../document/fit-schema.ts';
import { broaderFace, type HullFace } from '../hull/broader-face.ts';
import type { Hull } from '../hull/hull.ts';
import { hullOfBoat } from '../hull/hull-of-boat.ts';
import { shellCentre } from '../hull/shell-centre.ts';
import type { Afloat, BalanceDemand, FloatResult, NotAfloat, PointMass } from '../hydrostatics/afloat.ts';
import { balanceDemand } from '../hydrostatics/balance-demand.ts';
import { floatAtRest, type LazyFloat, type Load, lazyFloatAtRest } from '../hydrostatics/float-at-rest.ts';
import { waterDensity } from '../hydrostatics/water-density.ts';
import type { Phase, Stance } from '../posture/stance.ts';
import type { Support } from '../support/support.ts';
import { toRadians } from '../units/angle.ts';
import { type BoardRoom, boardRoom } from './board-room.ts';
import type { Quantity } from './finding.ts';
import { hullSpread } from './hull-spread.ts';
import { knownRooms, type RoomOf } from './known-rooms.ts';
import type { SeatState } from './seat-state.ts';

/** Mass of a knee pad with its brace and of a rear rest, kilograms: estimates, they shift trim by well under 1 mm. */
const PAD_MASS_KG = 0.9;
/** The rest is the smaller of the two. */
const REST_MASS_KG = 0.4;

/** Where parts and knees find room: a hull's face, and the room of parts in it. */
export interface HullRoom {
  readonly hull: HullFace;
  /** With a cache. */
  readonly roomOf: RoomOf;
}

/** A boat ready to be floated: its hull, its own mass, and the water. SI, boat frame. */
export interface BoatState {
  readonly boat: Boat;
  readonly hull: Hull;
  /** What the boat itself weighs, at its centre. */
  readonly ownMass: PointMass;
  /** kg/m³. */
  readonly density: number;
  /** The heel of the document, radians. */
  readonly heel: number;
  /** How the floorboard fits the hull. */
  readonly boardRoom: BoardRoom;
  /** Measures the room of parts in the boat, with a cache. */
  readonly roomOf: RoomOf;
  /** The room in its hull one standard deviation broader. */
  readonly broader: HullRoom;
  /** And one standard deviation narrower. */
  readonly narrower: HullRoom;
  /** Cache of the quantities of solved seats, each for its seat's index. */
  readonly listed: WeakMap<SeatState, { readonly index: number; readonly quantities: readonly Quantity[] }>;
}

/** What the state of a boat depends on. */
type BoatAfloat = Pick<Fit, 'boat' | 'water' | 'heelDeg'>;

/** The state of each boat that was asked for last, and what it was made of. */
const known = new WeakMap<Boat, { readonly of: BoatAfloat; readonly state: BoatState }>();

/**
 * The hull of a fit's boat and what else floating it needs. The same boat in the same water at the same heel (the same objects) gives
 * the same state, made once: a hand moves fittings far more often than it changes boats.
 */
export function boatState({ boat, water, heelDeg }: BoatAfloat): BoatState {
  const before = known.get(boat);
  if (before?.of.water === water && before.of.heelDeg === heelDeg) return before.state;
  const of = { boat, water, heelDeg };
  const state = newBoatState(of);
  known.set(boat, { of, state });
  return state;
}

function newBoatState({ boat, water, heelDeg }: BoatAfloat): BoatState {
  const hull = hullOfBoat(boat);
  const { halfBreadth } = hullSpread(boat, null, hull);
  const centre = boat.centre ? { x: boat.centre.xM, z: boat.centre.zM } : shellCentre(hull);
  return {
    boat,
    hull,
    ownMass: { mass: boat.massKg, x: centre.x, y: 0, z: centre.z },
    density: waterDensity(water),
    heel: toRadians(heelDeg),
    boardRoom: boardRoom(boat.floorboard, hull, boat.skinM),
    roomOf: knownRooms({ boat, hull }),
    broader: roomsBroader(halfBreadth, { boat, hull }),
    narrower: roomsBroader(-halfBreadth, { boat, hull }),
    listed: new WeakMap(),
  };
}

/** The room in a boat whose hull is broader by so much on each side, metres; negative for a narrower one. */
function roomsBroader(by: number, { boat, hull }: Pick<BoatState, 'boat' | 'hull'>): HullRoom {
  const face = broaderFace(hull, by);
  return { hull: face, roomOf: knownRooms({ boat, hull: face }) };
}

/** What is aboard in one phase, each body with its paddle as one mass: enough to float the boat. */
export function loadsAboard(
  state: BoatState,
  seats: readonly (SeatState | null)[],
  phase: Phase,
): PointMass[] {
  const loads = [state.ownMass];
  for (const seat of seats) if (seat) loads.push(...seatLoads(seat.support, seat.stances[phase]));
  return loads;
}

/** A seat's fittings and its paddler with the paddle as one mass. */
export function seatLoads(
  support: Pick<Support, 'contacts'>,
  { totalMassKg, centreOfMass }: Pick<Stance, 'totalMassKg' | 'centreOfMass'>,
): PointMass[] {
  const { x, y, z } = centreOfMass;
  return [...fittingMasses(support), { mass: totalMassKg, x, y, z }];
}

/** Pad and rest, at the points that bear on them. */
function fittingMasses({ contacts: { knee, rearFoot } }: Pick<Support, 'contacts'>): PointMass[] {
  return [
    { mass: PAD_MASS_KG, x: knee.x, y: knee.y, z: knee.z },
    { mass: REST_MASS_KG, x: rearFoot.x, y: rearFoot.y, z: rearFoot.z },
  ];
}

/** Every mass aboard in one phase: the boat, each seat's fittings, each body segment and paddle. */
export function massesAboard(
  state: BoatState,
  seats: readonly (SeatState | null)[],
  phase: Phase,
): PointMass[] {
  const masses = [state.ownMass];
  for (const seat of seats) {
    if (!seat) continue;
    masses.push(...fittingMasses(seat.support));
    for (const { massKg, centre } of seat.stances[phase].masses) {
      masses.push({ mass: massKg, x: centre.x, y: centre.y, z: centre.z });
    }
  }
  return masses;
}

/** The boat at rest with its crew in one phase; `start` (an earlier answer) only saves iterations. */
export function floatCrew(
  state: BoatState,
  seats: readonly (SeatState | null)[],
  options: { phase: Phase; start?: FloatResult | null },
): FloatResult {
  return floatAtRest(state.hull, loadIn(state, seats, options));
}

/** The same with the boat's properties computed only on request. */
export function lazyFloatCrew(
  state: BoatState,
  seats: readonly (SeatState | null)[],
  options: { phase: Phase; start?: FloatResult | null },
): LazyFloat | NotAfloat {
  return lazyFloatAtRest(state.hull, loadIn(state, seats, options));
}

/** All masses aboard in a phase of the stroke, and the start of the search. */
function loadIn(
  state: BoatState,
  seats: readonly (SeatState | null)[],
  { phase, start }: { phase: Phase; start?: FloatResult | null },
): Load {
  return {
    masses: loadsAboard(state, seats, phase),
    waterDensity: state.density,
    heel: state.heel,
    start: start?.kind === 'afloat' ? start : null,
  };
}

/** What the crew must balance in the ready stance. */
export function balanceOf(
  state: BoatState,
  seats: readonly (SeatState | null)[],
  afloat: Afloat,
): BalanceDemand {
  return balanceDemand(state.hull, afloat, {
    masses: loadsAboard(state, seats, 'ready'),
    waterDensity: state.density,
  });
}

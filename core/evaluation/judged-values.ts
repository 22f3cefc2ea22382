import type { BodyEstimate } from '../body/body.ts';
import type { Fit } from '../document/fit-schema.ts';
import type { Seat } from '../document/seat-schema.ts';
import type { PointMass } from '../hydrostatics/afloat.ts';
import { combinedMass } from '../hydrostatics/combined-mass.ts';
import type { Found } from '../hydrostatics/equilibrium-search.ts';
import { planeAtRest } from '../hydrostatics/float-at-rest.ts';
import { leastFreeboard } from '../hydrostatics/freeboard.ts';
import { solvedStance } from '../posture/solve-stance.ts';
import type { Stance } from '../posture/stance.ts';
import { inPhase, stanceProblem } from '../posture/stance-problem.ts';
import type { Support } from '../support/support.ts';
import { restingLoads } from '../support/support-loads.ts';
import { sharesOf, supportTriangle } from '../support/support-triangle.ts';
import { type BoatState, seatLoads } from './boat-state.ts';
import { betweenSeats } from './neighbour-quantities.ts';
import type { Spreads } from './quantity-spreads.ts';
import type { Report } from './report.ts';
import { fittingValues, loadValues, postureValues, smoothReaches } from './seat-quantities.ts';
import { type SeatInput, seatFrame } from './seat-state.ts';
import { keyOf } from './value-table.ts';

/** The values from which probabilities are computed, by the finding's id. SI. */
export type JudgedValues = ReadonlyMap<string, number>;

/** The part of a seat that findings need. */
interface JudgedSeat extends SeatInput {
  /** The two stances that findings read. */
  readonly stances: Readonly<Record<'ready' | 'catch', Stance>>;
  /** The seat's own values by id, SI. */
  readonly values: Readonly<Partial<Record<string, number>>>;
  /** The seat's masses in either stance. */
  readonly loads: Readonly<Record<'ready' | 'catch', readonly PointMass[]>>;
}

/** What a search already has: the boat, the bodies, and spreads of an earlier report. */
export interface JudgedBy {
  readonly boat: BoatState;
  /** Null for an empty seat. */
  bodyOf(seat: Seat): BodyEstimate | null;
  /** An earlier report, whose spreads are taken. */
  readonly held: Report;
  readonly spreads: Spreads;
}

/**
 * Finds the judged values of fits one after another, for searches. What no finding needs (the exit, the drive, the paddle's
 * length by the stance, the waterplane) is not computed, and seats that stay the same objects are kept.
 */
export function judgedValuesFinder(): (fit: Fit, by: JudgedBy) => JudgedValues {
  const known = new WeakMap<
    Seat,
    { readonly boat: BoatState; readonly index: number; readonly state: JudgedSeat }
  >();

  function seatOf(fit: Fit, index: number, { boat, bodyOf }: JudgedBy): JudgedSeat | null {
    const seat = fit.seats[index]!;
    const body = bodyOf(seat);
    if (!body) return null;
    const before = known.get(seat);
    if (before?.boat === boat && before.index === index) return before.state;
    const state = judgedSeat({ seat, body, frame: seatFrame(fit.boat, seat, index) }, index, boat);
    known.set(seat, { boat, index, state });
    return state;
  }

  return (fit, by) => {
    const seats = fit.seats.map((_, index) => seatOf(fit, index, by));
    const boat = boatValues(by, seats);
    const between = new Map(betweenSeats(seats).map(({ id, seat, value }) => [keyOf(id, seat), value]));
    const values = new Map<string, number>();
    for (const { id, quantity, seat } of by.held.findings) {
      const own = seat === null ? boat : seats[seat]?.values;
      const value = own?.[quantity] ?? between.get(keyOf(quantity, seat));
      if (value === undefined) continue;
      values.set(id, value + (by.spreads.get(keyOf(quantity, seat))?.shift ?? 0));
    }
    return values;
  };
}

/** Solves a seat for a search: two stances of three, and of those only what findings read. */
function judgedSeat(input: SeatInput, index: number, boat: BoatState): JudgedSeat {
  const { body, seat, frame } = input;
  const problem = stanceProblem(body, seat, { phase: 'ready' });
  const ready = solvedStance(problem, { frame, bare: true });
  const atCatch = solvedStance(inPhase(problem, 'catch'), { frame, bare: true });
  const stances = { ready, catch: atCatch };
  const support = restingLoads(ready, seat);
  return {
    ...input,
    stances,
    loads: { ready: seatLoads(support, ready), catch: seatLoads(support, atCatch) },
    values: {
      ...postureValues({ stances, frame }),
      ...loadValues({ support }),
      ...pullingShares(support.contacts, ready),
      ...fittingValues({ ...input, stances }, index, boat),
      ...smoothReaches({ stances, body }),
    },
  };
}

/**
 * Shares of contacts that would have to pull, below zero. Held at zero they would not respond to a move, and a search would
 * have no direction.
 */
function pullingShares(contacts: Support['contacts'], { centreOfMass }: Stance) {
  const { knee, rearFoot, frontFoot } = sharesOf(supportTriangle(contacts), centreOfMass);
  return {
    ...(knee < 0 && { kneeShare: knee }),
    ...(rearFoot < 0 && { rearShare: rearFoot }),
    ...(frontFoot < 0 && { frontShare: frontFoot }),
  };
}

/** The boat's values that findings need; a boat that does not float has no trim and no freeboard. */
function boatValues({ boat, held }: JudgedBy, seats: readonly (JudgedSeat | null)[]) {
  const { hull, density, heel } = boat;
  const afloat = (phase: 'ready' | 'catch') => {
    const masses = [boat.ownMass, ...seats.flatMap((seat) => seat?.loads[phase] ?? [])];
    const before = held.afloat[phase];
    const start = before.kind === 'afloat' ? before : null;
    const found = planeAtRest(hull, { masses, waterDensity: density, heel, start });
    return 'kind' in found ? null : { found, centre: combinedMass(masses) };
  };
  const ready = afloat('ready');
  const atCatch = afloat('catch');
  const trimOf = ({ plane }: Found) => hull.length * plane.alongSlope;
  const values: Partial<Record<string, number>> = {
    boatLength: hull.length,
    boatMass: boat.boat.massKg,
    boardInsideHull: boat.boardRoom.least,
  };
  if (atCatch) values.trimCatch = trimOf(atCatch.found);
  if (!ready) return values;
  values.trimRest = trimOf(ready.found);
  values.leastFreeboard = leastFreeboard(hull, ready.found.plane).value;
  values.offCentre = ready.centre.y;
  return values;
}

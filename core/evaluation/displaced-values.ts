import type { PointMass } from '../hydrostatics/afloat.ts';
import { heldDemand } from '../hydrostatics/balance-demand.ts';
import type { Phase, Stance } from '../posture/stance.ts';
import type { FreeForce } from '../support/blade-force.ts';
import { supportLoads } from '../support/support-loads.ts';
import { boatQuantities } from './boat-quantities.ts';
import type { Computed } from './computed-fit.ts';
import { driveOf, driveQuantities } from './drive-quantities.ts';
import type { Quantity } from './finding.ts';
import { type FloatSlopes, floatNear } from './float-slopes.ts';
import { neighbourQuantities } from './neighbour-quantities.ts';
import { paddleQuantities } from './paddle-quantities.ts';
import { marginEdges, smoothValues } from './seat-folds.ts';
import { postureQuantities, seatQuantities } from './seat-quantities.ts';
import type { SeatState } from './seat-state.ts';

/** Values by the keys of quantities, and of the smooth values that folded quantities are made of. SI. */
export type Values = ReadonlyMap<string, number>;

/** Key of a quantity of a seat, or of the boat (null). */
export const keyOf = (id: string, seat: number | null) => `${id}@${seat ?? 'boat'}`;

/** A computed fit, the one seat of it that is displaced, and how the boat answers what is aboard. */
export interface DisplacedFit {
  readonly computed: Computed;
  readonly index: number;
  readonly floats: Readonly<Record<'ready' | 'catch', FloatSlopes>>;
}

/** What of a seat is displaced; what is left out stays as solved. */
export interface Displacement {
  readonly seat?: SeatState['seat'];
  readonly body?: SeatState['body'];
  readonly free?: FreeForce;
  readonly stances?: Partial<Record<Phase, Stance>>;
}

/**
 * Every value that can change while one seat's posture or body is displaced: its own, its drive's and paddle's, the boat's, and
 * those it shares with its neighbours. The boat answers to first order. Fittings stay; clearances are found again for another
 * body alone.
 */
export function displacedValues(fit: DisplacedFit, displacement: Displacement): Values {
  const { computed, index, floats } = fit;
  const { boat } = computed;
  const known = computed.seats[index]!;
  const stances = { ...known.stances, ...displacement.stances };
  const seat = displacement.seat ?? known.seat;
  const state: SeatState = {
    ...known,
    ...displacement,
    stances,
    support: stances.ready === known.stances.ready ? known.support : supportLoads(stances.ready, seat),
  };
  const loads = { ready: loadWith(fit, stances, 'ready'), catch: loadWith(fit, stances, 'catch') };
  const afloat = {
    ready: floatNear(floats.ready, loads.ready),
    catch: floatNear(floats.catch, loads.catch),
    exit: computed.afloat.exit,
  };
  const seats = computed.seats.map((other, i) => (i === index ? state : other));
  const balance = afloat.ready.kind === 'afloat' ? heldDemand(loads.ready, afloat.ready.transverseGm) : null;
  const drive = driveOf(state, afloat.ready);
  const quantities: Quantity[] = [
    ...(displacement.body ? seatQuantities(state, index, boat) : postureQuantities(state, index)),
    ...boatQuantities(boat, afloat, balance),
    ...paddleQuantities(state, index, { boat, ready: afloat.ready }),
    ...driveQuantities(drive, index),
    ...neighbourQuantities(seats),
  ];
  const values = new Map(quantities.map(({ id, seat: at, value }) => [keyOf(id, at), value]));
  const smooth = smoothValues(state, { drive, edges: marginEdges(known) });
  for (const [id, value] of Object.entries(smooth)) values.set(keyOf(id, index), value);
  return values;
}

/** Mass and common centre of all aboard in a phase, with this seat's stances in place of those solved. */
function loadWith(
  { computed, index, floats }: DisplacedFit,
  stances: SeatState['stances'],
  phase: 'ready' | 'catch',
): PointMass {
  const { load } = floats[phase];
  const was = computed.seats[index]!.stances[phase];
  const is = stances[phase];
  if (was === is) return load;
  const mass = load.mass + is.totalMassKg - was.totalMassKg;
  const at = (axis: 'x' | 'y' | 'z') =>
    (load.mass * load[axis] +
      is.totalMassKg * is.centreOfMass[axis] -
      was.totalMassKg * was.centreOfMass[axis]) /
    mass;
  return { mass, x: at('x'), y: at('y'), z: at('z') };
}

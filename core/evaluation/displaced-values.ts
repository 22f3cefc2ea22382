import type { PointMass } from '../hydrostatics/afloat.ts';
import { heldDemand } from '../hydrostatics/balance-demand.ts';
import type { Stance } from '../posture/stance.ts';
import type { FreeForce } from '../support/blade-force.ts';
import { restingLoads } from '../support/support-loads.ts';
import type { PolygonEdge } from '../support/support-polygon.ts';
import { afloatValues } from './boat-quantities.ts';
import type { Computed } from './computed-fit.ts';
import { driveOf, driveValues } from './drive-quantities.ts';
import { type FloatSlopes, floatNear } from './float-slopes.ts';
import { betweenSeats } from './neighbour-quantities.ts';
import { paddleValues } from './paddle-quantities.ts';
import { driveSmooth, marginEdges, postureSmooth } from './seat-folds.ts';
import { bodyClearances, loadValues, postureValues } from './seat-quantities.ts';
import type { SeatState } from './seat-state.ts';
import { keyOf, put, type ValueTable } from './value-table.ts';

/** A computed fit, the one seat of it that is displaced, and how the boat answers what is aboard. */
export interface DisplacedFit {
  /** The fit as solved. */
  readonly computed: Computed;
  /** Which seat. */
  readonly index: number;
  /** How the boat lies and answers, at rest and at the catch. */
  readonly floats: Readonly<Record<'ready' | 'catch', FloatSlopes>>;
}

/** The stances that values are computed from. Of the exit only the trunk's pitch counts, which is the stroke's own. */
type LoadedStances = Readonly<Record<'ready' | 'catch', Stance>>;

/** What is displaced in a seat. What is left out stays as solved. */
export interface Displacement {
  readonly seat?: SeatState['seat'];
  readonly body?: SeatState['body'];
  readonly free?: FreeForce;
  readonly stances?: Partial<LoadedStances>;
  /** The clearances that depend on the body are computed again: knee or foot have changed. */
  readonly clearances?: boolean;
}

/** The values of a seat and its boat that doubts may move, as they were computed; and how to find those of a displaced seat. */
export interface Displaceable {
  readonly fit: DisplacedFit;
  /** Where each value stands in the array. */
  readonly table: ValueTable;
  /** Values as solved. */
  readonly base: Float64Array;
  /** Edges of the support polygon as solved: its margin is followed edge by edge. */
  readonly edges: readonly PolygonEdge[];
}

/** Values between two seats: values of one seat that another may move. */
const SHARED = ['toNextSeat', 'bladeSpacing'];

/** Every value of the fit that one seat's doubts may move, with the smooth values that folded ones are made of. */
export function displaceable(fit: DisplacedFit): Displaceable {
  const { computed, index } = fit;
  const state = computed.seats[index]!;
  const edges = marginEdges(state);
  const own = computed.quantities.filter(
    ({ id, seat }) => seat === null || seat === index || SHARED.includes(id),
  );
  const smooth = Object.entries({
    ...postureSmooth(state, edges),
    ...driveSmooth(computed.drives[index] ?? null),
  });
  const all = [...own, ...smooth.map(([id, value]) => ({ id, seat: index, value }))];
  const places = (
    keep: (entry: (typeof all)[number]) => boolean,
    name: (id: string, seat: number) => string,
  ) =>
    new Map(all.flatMap((entry, i) => (keep(entry) ? [[name(entry.id, entry.seat ?? 0), i] as const] : [])));
  const shared = ({ id }: { id: string }) => SHARED.includes(id);
  const table = {
    keys: all.map(({ id, seat }) => keyOf(id, seat)),
    seat: places(
      (e) => e.seat === index && !shared(e),
      (id) => id,
    ),
    boat: places(
      (e) => e.seat === null,
      (id) => id,
    ),
    shared: places(shared, keyOf),
  };
  return { fit, table, base: Float64Array.from(all, ({ value }) => value), edges };
}

/**
 * Every value while one seat's posture or body is displaced: its own, its drive's and paddle's, the boat's, and those it shares
 * with its neighbours. The boat answers to first order. Only what the displacement moves is found again.
 */
export function displacedValues(of: Displaceable, displacement: Displacement): Float64Array {
  const { fit, table, base, edges } = of;
  const { computed, index, floats } = fit;
  const { boat } = computed;
  const known = computed.seats[index]!;
  const moved = displacement.stances ?? {};
  const stances = { ready: moved.ready ?? known.stances.ready, catch: moved.catch ?? known.stances.catch };
  const state = { ...known, ...displacement, stances };
  const support = moved.ready ? restingLoads(moved.ready, state.seat) : known.support;
  const into = Float64Array.from(base);
  const load = loadWith(fit, stances, 'ready');
  const ready = moved.ready ? floatNear(floats.ready, load) : computed.afloat.ready;
  if (moved.ready) {
    put(into, table.seat, postureValues(state));
    put(into, table.seat, loadValues({ support }));
    put(into, table.seat, postureSmooth({ ...state, support }, edges));
  }
  if (moved.ready || moved.catch) {
    const atCatch = floatNear(floats.catch, loadWith(fit, stances, 'catch'));
    const balance = ready.kind === 'afloat' ? heldDemand(load, ready.transverseGm) : null;
    const trimCatch = atCatch.kind === 'afloat' ? atCatch.bowOverStern : null;
    put(into, table.boat, afloatValues({ ready, trimCatch }, balance));
  }
  put(into, table.seat, paddleValues(state, { boat, ready }));
  if (moved.ready || displacement.seat || displacement.free) {
    const drive = driveOf(state, ready);
    put(into, table.seat, driveValues(drive));
    put(into, table.seat, driveSmooth(drive));
  }
  if (displacement.clearances) put(into, table.seat, bodyClearances(state, index, boat));
  if (table.shared.size > 0 && (moved.catch || displacement.clearances)) {
    const seats = computed.seats.map((other, i) => (i === index ? state : other));
    for (const { id, seat, value } of betweenSeats(seats))
      put(into, table.shared, { [keyOf(id, seat)]: value });
  }
  return into;
}

/** Mass and common centre of all aboard in a phase, with this seat's stances in place of those solved. */
function loadWith(
  { computed, index, floats }: DisplacedFit,
  stances: LoadedStances,
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

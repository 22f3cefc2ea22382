import type { BalanceDemand, FloatResult } from '../hydrostatics/afloat.ts';
import { entriesOf } from '../units/entries.ts';
import type { BoatState } from './boat-state.ts';
import type { Quantity } from './finding.ts';
import { QUANTITIES, type QuantityId } from './quantities.ts';

/** Values of the boat by the quantity's id; left out or null where there is none. SI. */
export type BoatQuantityValues = Partial<Record<QuantityId, number | null>>;

/** The boat at rest with its crew ready, and its trim at the catch. */
export interface FloatingBoat {
  /** With everybody at rest. */
  readonly ready: FloatResult;
  /** Metres bow over stern, positive bow up; null where it does not float. */
  readonly trimCatch: number | null;
}

/** Every quantity of the boat, without spreads; those of floating are left out where the boat does not float. SI. */
export function boatQuantities(
  state: BoatState,
  afloat: FloatingBoat,
  balance: Omit<BalanceDemand, 'equilibriumHeel'> | null,
): Quantity[] {
  const values: BoatQuantityValues = {
    boatLength: state.hull.length,
    boatMass: state.boat.massKg,
    boardInsideHull: state.boardRoom.least,
    ...afloatValues(afloat, balance),
  };
  return entriesOf(values).flatMap(([id, value]) =>
    value === null ? [] : [{ id, seat: null, value, sd: null, unit: QUANTITIES[id].unit }],
  );
}

/** The values that depend on the masses aboard. */
export function afloatValues(
  { ready, trimCatch }: FloatingBoat,
  balance: Omit<BalanceDemand, 'equilibriumHeel'> | null,
): BoatQuantityValues {
  const values: BoatQuantityValues = { trimCatch };
  if (ready.kind === 'afloat') {
    values.trimRest = ready.bowOverStern;
    values.trimAngle = ready.trim;
    values.draft = ready.draft;
    values.freeboardBow = ready.freeboardBow;
    values.freeboardStern = ready.freeboardStern;
    values.leastFreeboard = ready.leastFreeboard.value;
    values.transverseGm = ready.transverseGm;
    values.massPerCentimetre = ready.massPerCentimetre;
    values.totalMass = ready.massKg;
  }
  if (balance) {
    values.offCentre = balance.offCentre;
    values.steadyMoment = balance.steadyMoment;
    values.leanMoment = balance.leanMoment;
  }
  return values;
}

import type { FloatResult } from '../hydrostatics/afloat.ts';
import { sheerZAt, waterZAt } from '../paddle/beside-hand.ts';
import { type PaddleFit, paddleFit } from '../paddle/paddle-fit.ts';
import { entriesOf } from '../units/entries.ts';
import type { BoatState } from './boat-state.ts';
import type { Quantity } from './finding.ts';
import { QUANTITIES, type QuantityId } from './quantities.ts';
import type { SeatState } from './seat-state.ts';

/** The parts of an occupied seat that its paddle needs. */
type Paddler = Pick<SeatState, 'seat' | 'body'> & {
  readonly stances: Pick<SeatState['stances'], 'ready' | 'catch'>;
};

/** How a seat's paddle suits its paddler; null where the boat does not float, for the water's height is then unknown. */
export function paddleOf(
  state: Paddler,
  boat: Pick<BoatState, 'hull'>,
  ready: FloatResult,
): PaddleFit | null {
  if (ready.kind !== 'afloat') return null;
  const beside = state.stances.ready.points.topHand;
  return paddleFit({
    ...state,
    waterZ: waterZAt(ready, beside),
    gunwaleZ: sheerZAt(boat.hull, beside.x),
  });
}

/** The paddle's quantities of one occupied seat, without spreads. SI; none where the boat does not float. */
export function paddleQuantities(
  state: SeatState,
  index: number,
  place: { boat: Pick<BoatState, 'hull'>; ready: FloatResult },
): Quantity[] {
  return entriesOf(paddleValues(state, place)).map(([id, value]) => ({
    id,
    seat: index,
    value,
    sd: null,
    unit: QUANTITIES[id].unit,
  }));
}

/** The same as plain values by the quantity's id. */
export function paddleValues(
  state: Paddler,
  place: { boat: Pick<BoatState, 'hull'>; ready: FloatResult },
): Partial<Record<QuantityId, number>> {
  const fit = paddleOf(state, place.boat, place.ready);
  if (!fit) return {};
  return {
    paddleByStature: fit.byStature.lengthM,
    paddleByStance: fit.byStance.lengthM,
    paddleDifference: fit.difference,
    handShare: fit.handShare,
    handAboveNeck: fit.handAboveNeck,
    catchReach: fit.catchReach,
    handOverGunwale: fit.handOverGunwale,
    handOverWater: fit.handOverWater,
    bladeAngle: fit.bladeAngle,
  };
}

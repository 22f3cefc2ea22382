import type { BalanceDemand } from '../hydrostatics/afloat.ts';
import { toDegrees } from '../units/angle.ts';

/** Off-centre weight below this, metres, is said to lie over the centreline: a millimetre is finer than any pad is set. */
const CENTRED_M = 0.001;

/**
 * What the paddler must balance, in plain sentences for a coach: whether the boat stands by itself, what each degree of lean
 * asks, and what the weight beside the centreline asks. Millimetres, newton metres and degrees; sides as the paddler sees them.
 */
export function balanceSentence(demand: BalanceDemand): string {
  const { leanMoment } = demand;
  if (leanMoment !== null) {
    return `Like a bicycle, this boat must be balanced all the time. Each degree of lean asks for ${leanMoment.toFixed(1)} N·m to hold it. ${pull(demand)}`;
  }
  return `The boat stands by itself. ${rest(demand)}`;
}

const sideOf = (y: number) => (y > 0 ? 'left' : 'right');

/** What a boat that does not stand by itself asks to be held. */
function pull({ offCentre, steadyMoment }: BalanceDemand): string {
  if (Math.abs(offCentre) < CENTRED_M)
    return 'The weight lies over the centreline, so nothing more has to be held.';
  return `The weight lies ${millimetres(offCentre)} mm to the ${sideOf(offCentre)}: a pull of ${Math.abs(steadyMoment).toFixed(1)} N·m that has to be held all the time.`;
}

/** Where a boat that stands by itself comes to rest. */
function rest({ offCentre, equilibriumHeel }: BalanceDemand): string {
  if (Math.abs(offCentre) < CENTRED_M) return 'The weight lies over the centreline and it floats upright.';
  const weight = `With the weight ${millimetres(offCentre)} mm to the ${sideOf(offCentre)}`;
  if (equilibriumHeel === null) return `${weight} it would heel until water comes in.`;
  return `${weight} it heels ${Math.abs(toDegrees(equilibriumHeel)).toFixed(1)}° to that side if nobody holds it.`;
}

const millimetres = (metres: number) => Math.abs(metres * 1000).toFixed(0);

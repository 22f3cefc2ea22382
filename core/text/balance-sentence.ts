import type { BalanceDemand } from '../hydrostatics/afloat.ts';
import { plainFormat } from './format.ts';
import type { FormatValue } from './signed-text.ts';
import type { Words } from './words.ts';

/** Off-centre weight below this, metres, counts as over the centreline: no pad is set to a millimetre. */
const CENTRED_M = 0.001;

/**
 * What the paddler must balance, in plain sentences for a coach: whether the boat rights itself, the moment for each degree of
 * lean, and the moment of weight beside the centreline. Sides as the paddler sees them.
 */
export function balanceSentence(
  demand: BalanceDemand,
  words: Words,
  format: FormatValue = plainFormat,
): string {
  const { leanMoment, offCentre, steadyMoment, equilibriumHeel } = demand;
  const centred = Math.abs(offCentre) < CENTRED_M;
  const side = offCentre > 0 ? 'left' : 'right';
  const by = format(Math.abs(offCentre), 'm', { inMillimetres: true });
  if (leanMoment !== null) {
    const moment = format(Math.abs(steadyMoment), 'N·m');
    return words.sentences([
      words.say('balance.bicycle', { moment: format(leanMoment, 'N·m') }),
      centred ? words.say('balance.bicycle.centred') : words.say('balance.bicycle.off', { by, side, moment }),
    ]);
  }
  const stands = words.say('balance.stands');
  if (centred) return words.sentences([stands, words.say('balance.stands.centred')]);
  if (equilibriumHeel === null)
    return words.sentences([stands, words.say('balance.stands.swamps', { by, side })]);
  const heel = format(Math.abs(equilibriumHeel), 'rad');
  return words.sentences([stands, words.say('balance.stands.heels', { by, side, heel })]);
}

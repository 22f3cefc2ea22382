import type { QuantityId } from '../evaluation/quantities.ts';
import { bySign, say, type Wording, type Words } from './wording.ts';

/** An athlete told to stop is told so. */
const lowSide: Words = ({ severity }) =>
  severity === 'stop'
    ? 'Do not paddle like this: too little side above the water.'
    : 'The boat sits low in the water.';

/** What is said of the boat afloat and its class. `low` is under the band's lower edge, `high` over its upper edge. */
export const BOAT_WORDING: Partial<Record<QuantityId, Wording>> = {
  trimRest: say(
    'Bow over stern at rest',
    [
      bySign(
        'The bow is slightly lower than the stern at rest, as this band allows.',
        'The bow is level with the stern or slightly higher.',
      ),
      bySign('The bow is lower than the stern at rest.', 'The bow is less high at rest than wanted.'),
      bySign('The bow is less low at rest than wanted.', 'The bow is high at rest.'),
    ],
    [
      bySign('Your boat sits with its bow just down.', 'Your boat sits level or with its bow just up.'),
      bySign('Your boat sits with its bow low.', 'Your boat’s bow could sit a little higher.'),
      bySign('Your boat’s bow could sit a little lower.', 'Your boat sits with its bow high.'),
    ],
  ),
  trimCatch: say(
    'Bow over stern at the catch',
    [
      bySign(
        'The bow dips a little when the weight goes forward, within the limit.',
        'The bow stays up when the weight goes forward.',
      ),
      bySign(
        'The bow is driven down when the weight goes forward.',
        'The bow stays less high than wanted when the weight goes forward.',
      ),
      'The bow stays higher than wanted when the weight goes forward.',
    ],
    [
      bySign('The bow dips a little when you reach.', 'The bow stays up when you reach.'),
      bySign('The bow dips when you reach.', 'The bow could stay higher when you reach.'),
      'The bow stays high when you reach.',
    ],
  ),
  offCentre: say(
    'Weight off the centreline',
    [
      'The weight is near enough to the centreline.',
      bySign(
        'The weight lies to the right; that has to be held all the time.',
        'The weight lies less to the left than wanted.',
      ),
      bySign(
        'The weight lies less to the right than wanted.',
        'The weight lies to the left; that has to be held all the time.',
      ),
    ],
    [
      'You are balanced across the boat.',
      bySign('Your weight is to the right.', 'Your weight could be more to the left.'),
      bySign('Your weight could be more to the right.', 'Your weight is to the left.'),
    ],
  ),
  leastFreeboard: say(
    'Least freeboard',
    ['There is enough side above the water.', 'There is little side above the water; waves can come in.', ''],
    ['The boat sits high enough.', lowSide, ''],
  ),
  boatLength: say(
    'Boat’s length',
    ['Within the class.', '', 'Longer than the class allows.'],
    ['The boat is within its class.', '', 'The boat is longer than its class allows.'],
  ),
  boatMass: say(
    'Boat’s mass',
    ['Within the class.', 'Lighter than the class allows.', ''],
    ['The boat is within its class.', 'The boat is lighter than its class allows.', ''],
  ),
};

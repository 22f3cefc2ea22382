import type { QuantityId } from './quantities.ts';
import { say, type Wording } from './wording.ts';

/** What is said of the boat afloat and its class. `low` is under the band's lower edge, `high` over its upper edge. */
export const BOAT_WORDING: Partial<Record<QuantityId, Wording>> = {
  trimRest: say(
    'Bow over stern at rest',
    [
      'The bow is slightly higher than the stern.',
      'The bow is lower than the stern at rest.',
      'The bow is high at rest; the stern will drag.',
    ],
    [
      'Your boat sits level, bow just up.',
      'Your boat sits with its bow low.',
      'Your boat sits with its bow high.',
    ],
  ),
  trimCatch: say(
    'Bow over stern at the catch',
    [
      'The bow stays up when the weight goes forward.',
      'The bow is driven down when the weight goes forward.',
      '',
    ],
    ['The bow stays up when you reach.', 'The bow dips when you reach.', ''],
  ),
  offCentre: say(
    'Weight off the centreline',
    [
      'The weight is over the centreline.',
      'The weight lies to the right; that has to be held all the time.',
      'The weight lies to the left; that has to be held all the time.',
    ],
    ['You are balanced across the boat.', 'You hang to the right.', 'You hang to the left.'],
  ),
  leastFreeboard: say(
    'Least freeboard',
    ['There is freeboard enough.', 'The side is low to the water; waves will come in.', ''],
    ['The boat sits high enough.', 'The boat sits low; keep to flat water.', ''],
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

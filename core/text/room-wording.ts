import type { QuantityId } from '../evaluation/quantities.ts';
import { bySign, say, type Wording } from './wording.ts';

/** What is said of the room of blocks, holes and board. `low` is under the band's lower edge, `high` over its upper edge. */
export const ROOM_WORDING: Partial<Record<QuantityId, Wording>> = {
  padBevel: say(
    'Pad cut to the hull by',
    [
      'The pad fits the hull; what its base is cut to the side, the block can spare.',
      '',
      'The pad would have to be cut to the hull’s side by more than the block can spare.',
    ],
    ['Your pad fits the boat.', '', 'Your pad does not fit the boat here.'],
  ),
  restBevel: say(
    'Rear rest cut to the hull by',
    [
      'The rest fits the hull; what its base is cut to the side, the block can spare.',
      '',
      'The rest would have to be cut to the hull’s side by more than the block can spare.',
    ],
    ['Your rest fits the boat.', '', 'Your rest does not fit the boat here.'],
  ),
  footInsideHull: say(
    'Front foot to the hull’s side',
    [
      'The front foot fits the hull.',
      bySign('The front foot runs into the hull’s side.', 'The front foot is close to the hull’s side.'),
      '',
    ],
    [
      'Your front foot fits.',
      bySign('Your front foot touches the boat’s side.', 'Your front foot is close to the boat’s side.'),
      '',
    ],
  ),
  padHolesToSkin: say(
    'Pad’s fixing holes to the hull’s skin',
    [
      'The pad’s fixing holes stay clear of the hull’s skin.',
      bySign(
        'A fixing hole of the pad goes into the hull’s skin. Do not drill it: move the pad or fix it otherwise.',
        'A fixing hole of the pad comes near the hull’s skin. Look beneath before drilling, and set the depth stop.',
      ),
      '',
    ],
    [
      'Your pad can be fixed here.',
      bySign(
        'Your pad cannot be fixed here: its bolt would meet the boat’s skin.',
        'Your pad’s bolt comes near the boat’s skin.',
      ),
      '',
    ],
  ),
  restHolesToSkin: say(
    'Rest’s fixing holes to the hull’s skin',
    [
      'The rest’s fixing holes stay clear of the hull’s skin.',
      bySign(
        'A fixing hole of the rest goes into the hull’s skin. Do not drill it: move the rest or fix it otherwise.',
        'A fixing hole of the rest comes near the hull’s skin. Look beneath before drilling, and set the depth stop.',
      ),
      '',
    ],
    [
      'Your rest can be fixed here.',
      bySign(
        'Your rest cannot be fixed here: its bolt would meet the boat’s skin.',
        'Your rest’s bolt comes near the boat’s skin.',
      ),
      '',
    ],
  ),
  padHolesOnBoard: say(
    'Pad’s fixing holes inside the floorboard’s edge',
    [
      'The pad’s fixing holes have board round them.',
      bySign(
        'A fixing hole of the pad misses the floorboard.',
        'A fixing hole of the pad is at the floorboard’s edge.',
      ),
      '',
    ],
    ['Your pad can be fixed here.', 'Your pad cannot be fixed here: the floorboard is too narrow.', ''],
  ),
  restHolesOnBoard: say(
    'Rest’s fixing holes inside the floorboard’s edge',
    [
      'The rest’s fixing holes have board round them.',
      bySign(
        'A fixing hole of the rest misses the floorboard.',
        'A fixing hole of the rest is at the floorboard’s edge.',
      ),
      '',
    ],
    ['Your rest can be fixed here.', 'Your rest cannot be fixed here: the floorboard is too narrow.', ''],
  ),
  padOverhang: say(
    'Pad over the floorboard’s edge',
    [
      bySign(
        'The pad stands whole on its board.',
        'The pad overhangs its board a little, where it carries no knee.',
      ),
      '',
      'The pad overhangs its board; part of it would hang in the air.',
    ],
    ['Your pad stands firmly on its board.', '', 'Your pad hangs over the edge of its board.'],
  ),
  restOverhang: say(
    'Rear rest over the floorboard’s edge',
    [
      bySign(
        'The rest stands whole on its board.',
        'The rest overhangs its board a little, where it carries no foot.',
      ),
      '',
      'The rest overhangs its board; part of it would hang in the air.',
    ],
    ['Your rest stands firmly on its board.', '', 'Your rest hangs over the edge of its board.'],
  ),
  footOverhang: say(
    'Front foot over the floorboard’s edge',
    [
      'The front foot stands on the board.',
      '',
      'The front foot stands over the board’s edge, partly on the hull’s bare skin.',
    ],
    ['Your front foot stands on the board.', '', 'Your front foot stands over the edge of the board.'],
  ),
  boardInsideHull: say(
    'Floorboard to the hull’s side',
    [
      'The floorboard fits the hull.',
      'The floorboard does not fit the hull. Measure its width and height again, or the hull.',
      '',
    ],
    ['The floorboard fits the boat.', 'The floorboard does not fit the boat as it was measured.', ''],
  ),
};

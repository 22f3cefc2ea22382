import type { QuantityId } from './quantities.ts';
import { say, type Wording } from './wording.ts';

/** What is said of pad, rests and paddle. `low` is under the band's lower edge, `high` over its upper edge. */
export const FITTING_WORDING: Partial<Record<QuantityId, Wording>> = {
  padAft: say(
    'Knee aft of the centre mark',
    [
      'The knee is where it usually goes.',
      'The knee is far forward; the bow will be low.',
      'The knee is far aft; the stern will be low.',
    ],
    [
      'Your knee is in a good place.',
      'Your knee is a little far forward.',
      'Your knee is a little far back.',
    ],
  ),
  padOut: say(
    'Knee out to the paddling side',
    [
      'The knee is off the centreline by the usual amount.',
      'The knee is close to the centreline; it is hard to lean to the water.',
      'The knee is far out; the boat will lie over to that side.',
    ],
    [
      'Your knee is the right way off the middle.',
      'Your knee is very near the middle of the boat.',
      'Your knee is far from the middle of the boat.',
    ],
  ),
  padHeight: say(
    'Knee pad height',
    [
      'The pad is of a usual height.',
      'The pad is low: steadier, but the front knee closes and the stroke shortens.',
      'The pad is high: a longer reach, but tippier.',
    ],
    ['Your pad is the right height.', 'Your pad is low.', 'Your pad is high; the boat will feel livelier.'],
  ),
  recessTurn: say(
    'Turn of the recess',
    [
      'The recess is slightly oblique, as the shank lies.',
      'The recess points nearly straight; the shank will twist in it.',
      'The recess is turned a long way.',
    ],
    [
      'The hollow in your pad follows your lower leg.',
      'The hollow in your pad is straighter than your lower leg.',
      'The hollow in your pad is turned more than your lower leg.',
    ],
  ),
  recessDepth: say(
    'Depth of the recess',
    [
      'The recess holds the knee.',
      'The recess is shallow; the knee will slide.',
      'The recess is deep; its edge may press below the knee.',
    ],
    [
      'The hollow holds your knee.',
      'The hollow is shallow; your knee may slide.',
      'The hollow is deep; say if its edge presses.',
    ],
  ),
  restTurn: say(
    'Rear rest turned to the off side',
    [
      'The rest faces along the shank.',
      'The rest is nearly square to the boat; the foot will twist on it.',
      'The rest is turned a long way; the foot will slide off it.',
    ],
    [
      'Your rear foot sits straight on its rest.',
      'Your rear foot has to twist on its rest.',
      'Your rear foot may slide off its rest.',
    ],
  ),
  paddleUnderStature: say(
    'Paddle shorter than stature by',
    [
      'The paddle suits the stature.',
      'The paddle is long for this stature.',
      'The paddle is short for this stature.',
    ],
    ['Your paddle is the right length.', 'Your paddle is long for you.', 'Your paddle is short for you.'],
  ),
  bladeShare: say(
    'Blade share of the paddle',
    [
      'The blade is slightly more than a third.',
      'The blade is short for the paddle.',
      'The blade is long for the paddle.',
    ],
    [
      'Your blade suits your paddle.',
      'Your blade is short for your paddle.',
      'Your blade is long for your paddle.',
    ],
  ),
  strapReleases: say(
    'Rear strap',
    [
      'The strap holds the foot and lets go by itself.',
      'The rear foot needs a strap that lets go by itself. Check it on land, then in shallow water.',
      '',
    ],
    [
      'The strap holds your foot and lets go by itself.',
      'Your strap must let go by itself before you paddle.',
      '',
    ],
  ),
  floorNonSlip: say(
    'Floor under the front foot',
    [
      'The front foot stands on a non-slip floor.',
      'The front foot may slip; give the floor a non-slip face.',
      '',
    ],
    ['Your front foot has grip.', 'Your front foot may slip.', ''],
  ),
  padBraced: say(
    'Brace of the pad',
    [
      'The pad is braced and passes force into the boat.',
      'The pad is not braced; it will move under the drive.',
      '',
    ],
    ['Your pad stays put when you pull.', 'Your pad may move when you pull.', ''],
  ),
  padInsideHull: say(
    'Pad to the hull’s side',
    [
      'The pad fits the hull.',
      'The pad runs into the hull’s side.',
      'The pad does not rest on the hull as crew pads do.',
    ],
    [
      'Your pad fits the boat.',
      'Your pad does not fit the boat here.',
      'Your pad stands clear of the boat’s side.',
    ],
  ),
  restInsideHull: say(
    'Rear rest to the hull’s side',
    ['The rest fits the hull.', 'The rest runs into the hull’s side.', ''],
    ['Your rest fits the boat.', 'Your rest does not fit the boat here.', ''],
  ),
  footInsideHull: say(
    'Front foot to the hull’s side',
    ['The front foot fits the hull.', 'The front foot runs into the hull’s side.', ''],
    ['Your front foot fits.', 'Your front foot touches the boat’s side.', ''],
  ),
  padToRest: say(
    'Pad to rear rest',
    ['There is room between pad and rest.', 'Pad and rest touch.', ''],
    ['There is room behind your pad.', 'Your pad and rest touch.', ''],
  ),
  padToFrontHeel: say(
    'Pad to front heel',
    ['There is room between pad and front heel.', 'Pad and front heel touch.', ''],
    ['There is room for your front heel.', 'Your front heel touches the pad.', ''],
  ),
  padTravel: say(
    'Pad within its fixing’s travel',
    ['The fixing reaches.', 'The fixing does not reach that far.', ''],
    ['Your pad can be fixed here.', 'Your pad cannot be fixed here.', ''],
  ),
  restTravel: say(
    'Rest within its fixing’s travel',
    ['The fixing reaches.', 'The fixing does not reach that far.', ''],
    ['Your rest can be fixed here.', 'Your rest cannot be fixed here.', ''],
  ),
  kneelsOnSide: say(
    'Knee of the paddling side',
    [
      'The paddler kneels on the knee of the paddling side.',
      'The paddler kneels on the other knee than the paddling side’s.',
      '',
    ],
    ['You kneel on the knee of your paddle’s side.', 'You kneel on the other knee.', ''],
  ),
  toNextSeat: say(
    'Rear rest to the next paddler',
    [
      'There is room to the next paddler.',
      'The rear rest and the next paddler’s foot or pad are in each other’s way.',
      '',
    ],
    ['There is room behind you.', 'You and the paddler behind are in each other’s way.', ''],
  ),
  bladeSpacing: say(
    'Blades on the same side apart by',
    ['The blades on this side swing clear of each other.', 'The blades on this side will touch.', ''],
    ['Your blade swings clear.', 'Your blade will touch the one behind.', ''],
  ),
  kneeInsideHull: say(
    'Knee to the hull’s side',
    ['The knee has room beside it.', 'The knee touches the hull’s side.', ''],
    ['Your knee has room.', 'Your knee touches the boat’s side.', ''],
  ),
};

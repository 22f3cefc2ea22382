import type { QuantityId } from '../evaluation/quantities.ts';
import { byContact, bySign, say, type Wording, type Words } from './wording.ts';

/** −1 is a fixed strap, 0 none: nobody is tied in, and no strap is not the same as a wrong one. */
const strap =
  (fixed: string, none: string): Words =>
  ({ value }) =>
    value < 0 ? fixed : none;

/** What is said of pad, rests and paddle. Sentences on places tell the place; what it does is told by its own findings. `low` is under the band's lower edge, `high` over its upper edge. */
export const FITTING_WORDING: Partial<Record<QuantityId, Wording>> = {
  padAft: say(
    'Knee aft of the seat’s mark',
    [
      'The knee is where it usually goes.',
      'The knee is farther forward than usual.',
      'The knee is farther aft than usual.',
    ],
    [
      'Your knee is in a good place.',
      'Your knee is farther forward than usual.',
      'Your knee is farther back than usual.',
    ],
  ),
  padOut: say(
    'Knee out to the paddling side',
    [
      'The knee is off the centreline by the usual amount.',
      bySign(
        'The knee is on the other side of the centreline than usual.',
        'The knee is closer to the centreline than usual.',
      ),
      'The knee is farther out than usual.',
    ],
    [
      'Your knee is the usual way off the middle.',
      bySign(
        'Your knee is past the middle of the boat, on the other side.',
        'Your knee is nearer the middle of the boat than usual.',
      ),
      'Your knee is farther from the middle of the boat than usual.',
    ],
  ),
  padHeight: say(
    'Knee pad height',
    [
      'The pad is of a usual height.',
      'The pad is lower than usual: the boat is steadier, the front knee more bent.',
      'The pad is higher than usual: the front knee is more open, the boat less steady.',
    ],
    ['Your pad is the usual height.', 'Your pad is low.', 'Your pad is high; the boat will feel livelier.'],
  ),
  recessTurn: say(
    'Turn of the recess',
    [
      'The recess is turned by the usual amount.',
      bySign(
        'The recess is turned the other way than usual. See how the shank lies in it.',
        'The recess is turned less than usual. See how the shank lies in it.',
      ),
      'The recess is turned more than usual. See how the shank lies in it.',
    ],
    [
      'The hollow in your pad is turned the usual way.',
      bySign(
        'The hollow in your pad is turned the other way than usual.',
        'The hollow in your pad is turned less than usual.',
      ),
      'The hollow in your pad is turned more than usual.',
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
      'The rest is turned by the usual amount.',
      bySign(
        'The rest is turned the other way than usual. See whether the foot twists on it.',
        'The rest is turned less than usual. See whether the foot twists on it.',
      ),
      'The rest is turned more than usual. See whether the foot slides on it.',
    ],
    [
      'Your rear rest is turned the usual way.',
      bySign(
        'Your rear rest is turned the other way than usual. Say if your foot twists.',
        'Your rear rest is turned less than usual. Say if your foot twists.',
      ),
      'Your rear rest is turned more than usual. Say if your foot slides.',
    ],
  ),
  paddleUnderStature: say(
    'Paddle shorter than stature by',
    [
      'The paddle suits the stature.',
      bySign(
        'The paddle is longer than the athlete. The paddle tab says what this stance asks for, and why.',
        'The paddle is long for this stature.',
      ),
      'The paddle is short for this stature.',
    ],
    [
      'Your paddle is the right length.',
      bySign('Your paddle is longer than you are. Ask your coach why.', 'Your paddle is long for you.'),
      'Your paddle is short for you.',
    ],
  ),
  bladeShare: say(
    'Blade share of the paddle',
    [
      'The blade suits the paddle’s length.',
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
      strap(
        'The strap is fixed. Nobody may be tied in: take it off, or give it one that lets go by itself.',
        'There is no strap. If one is fitted it must let go by itself: check on land, then in shallow water.',
      ),
      '',
    ],
    [
      'The strap holds your foot and lets go by itself.',
      strap('Your strap does not open by itself: do not paddle with it.', 'You have no strap.'),
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
      'The pad rests on the hull’s side, or stands near it.',
      'The pad reaches into the hull’s side.',
      'The pad does not rest on the hull as crew pads do.',
    ],
    [
      'Your pad rests against the boat’s side.',
      'Your pad does not fit the boat here.',
      'Your pad stands clear of the boat’s side.',
    ],
  ),
  padToRest: say(
    'Pad to rear rest',
    [
      'There is room between pad and rest.',
      byContact('Pad and rest touch.', 'There is little room between pad and rest.'),
      '',
    ],
    [
      'There is room behind your pad.',
      byContact('Your pad and rest touch.', 'Your pad and rest are close together.'),
      '',
    ],
  ),
  padToFrontHeel: say(
    'Pad to front heel',
    [
      'There is room between pad and front heel.',
      byContact('Pad and front heel touch.', 'There is little room between pad and front heel.'),
      '',
    ],
    [
      'There is room for your front heel.',
      byContact('Your front heel touches the pad.', 'Your front heel is close to the pad.'),
      '',
    ],
  ),
  padTravel: say(
    'Pad within its fixing’s travel',
    [
      'The fixing reaches.',
      bySign('The fixing does not reach that far.', 'The pad is near the end of its fixing’s travel.'),
      '',
    ],
    [
      'Your pad can be fixed here.',
      bySign('Your pad cannot be fixed here.', 'Your pad can only just be fixed here.'),
      '',
    ],
  ),
  restTravel: say(
    'Rest within its fixing’s travel',
    [
      'The fixing reaches.',
      bySign('The fixing does not reach that far.', 'The rest is near the end of its fixing’s travel.'),
      '',
    ],
    [
      'Your rest can be fixed here.',
      bySign('Your rest cannot be fixed here.', 'Your rest can only just be fixed here.'),
      '',
    ],
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
      byContact(
        'The rear rest and the next paddler’s foot or pad are in each other’s way.',
        'There is little room to the next paddler’s foot or pad.',
      ),
      '',
    ],
    [
      'There is room behind you.',
      byContact('You and the paddler behind are in each other’s way.', 'The paddler behind is very close.'),
      '',
    ],
  ),
  bladeSpacing: say(
    'Blades on the same side apart by',
    ['The blades on this side swing clear of each other.', 'The blades on this side are close together.', ''],
    ['Your blade swings clear.', 'Your blade is close to the one behind.', ''],
  ),
  kneeInsideHull: say(
    'Knee to the hull’s side',
    [
      'The knee has room beside it.',
      byContact('The knee touches the hull’s side.', 'The knee has little room beside it.'),
      '',
    ],
    [
      'Your knee has room.',
      byContact('Your knee touches the boat’s side.', 'Your knee is close to the boat’s side.'),
      '',
    ],
  ),
};

import type { QuantityId } from './quantities.ts';

/** What is said of a quantity: its name, and for each side of its band a coach's and an athlete's sentence. */
export interface Wording {
  /** As a coach would say it, without a verb. */
  readonly name: string;
  readonly coach: { readonly good: string; readonly low: string; readonly high: string };
  readonly athlete: { readonly good: string; readonly low: string; readonly high: string };
}

const say = (
  name: string,
  coach: readonly [good: string, low: string, high: string],
  athlete: readonly [good: string, low: string, high: string],
): Wording => ({
  name,
  coach: { good: coach[0], low: coach[1], high: coach[2] },
  athlete: { good: athlete[0], low: athlete[1], high: athlete[2] },
});

/** Wording of every quantity that a band judges. `low` is under the band's lower edge, `high` over its upper edge. */
export const WORDING: Partial<Record<QuantityId, Wording>> = {
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
  frontKnee: say(
    'Front knee',
    [
      'The front knee is open enough to push from.',
      'The front knee is too bent to push from.',
      'The front leg is nearly straight; it cannot take up the stroke.',
    ],
    [
      'Your front leg can push well.',
      'Your front knee is bent too far to push well.',
      'Your front leg is almost straight.',
    ],
  ),
  trunkRoll: say(
    'Lean seen from behind',
    [
      'The back is upright, or leaning slightly to the water.',
      'The back leans away from the paddling side.',
      'The back leans far over to the paddling side.',
    ],
    [
      'You sit upright over the boat.',
      'You lean away from your paddle.',
      'You lean a long way towards your paddle.',
    ],
  ),
  trunkPitch: say(
    'Trunk forward at ready',
    [
      'The trunk is held easily.',
      'The trunk leans back at ready.',
      'The trunk leans forward at ready; tiring to hold.',
    ],
    [
      'Your back is easy to hold.',
      'You lean back while waiting.',
      'You lean forward while waiting; that tires the back.',
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
  kneelingKnee: say(
    'Kneeling knee',
    [
      'The kneeling knee is in its easy range.',
      'The kneeling knee is bent far.',
      'The kneeling knee is very open; the weight will slide forward off the pad.',
    ],
    ['Your kneeling knee is easy.', 'Your kneeling knee is bent far.', 'Your kneeling knee is very open.'],
  ),
  kneelingHip: say(
    'Kneeling hip',
    [
      'The kneeling hip is in its easy range.',
      'The kneeling hip is folded.',
      'The kneeling hip is bent back past its easy range.',
    ],
    ['Your hip is easy.', 'You are folded at the hip.', 'Your hip is stretched back.'],
  ),
  frontHip: say(
    'Front hip',
    ['The front hip has room.', 'The front hip is folded tight; the lower back will round.', ''],
    ['Your front hip has room.', 'Your front hip is folded tight.', ''],
  ),
  hipFlexorStretch: say(
    'Stretch over the front of the kneeling hip',
    [
      'Hip and knee leave the front of the thigh slack.',
      '',
      'Hip back and knee bent together stretch the front of the thigh to its end.',
    ],
    [
      'The front of your thigh is relaxed.',
      '',
      'The front of your kneeling thigh is pulled tight; say if it aches.',
    ],
  ),
  rearAnkle: say(
    'Rear ankle',
    [
      'The rear ankle is in its easy range.',
      'The rear foot is bent up hard.',
      'The rear foot is pointed to the end of its range.',
    ],
    [
      'Your rear ankle is easy.',
      'Your rear foot is bent up hard.',
      'Your rear foot is pointed as far as it goes.',
    ],
  ),
  frontAnkle: say(
    'Front ankle',
    [
      'The front ankle is in its easy range.',
      'The shin leans far over the front foot; the heel will lift.',
      'The front foot is pointed down.',
    ],
    ['Your front ankle is easy.', 'Your front heel may lift.', 'Your front foot is pointed down.'],
  ),
  supportMargin: say(
    'Support margin',
    [
      'The weight is well inside the three contacts.',
      'The weight is near or over the edge of the three contacts.',
      '',
    ],
    ['You are well supported.', 'You are close to tipping off your supports.', ''],
  ),
  kneeShare: say(
    'Share on the knee',
    [
      'The knee carries its usual part.',
      'The knee carries little; the front leg is holding you up.',
      'The knee carries most of the weight; it will tire and go numb sooner.',
    ],
    [
      'Your knee carries a fair part of you.',
      'Your knee carries little of you.',
      'Your knee carries a lot of you.',
    ],
  ),
  rearShare: say(
    'Share on the rear foot',
    [
      'The rear foot is in touch.',
      'The rear foot hardly carries; it will float off its rest.',
      'The rear foot carries much; the toes will tire.',
    ],
    [
      'Your rear foot is in touch with its rest.',
      'Your rear foot hardly touches its rest.',
      'Your rear toes carry a lot.',
    ],
  ),
  frontShare: say(
    'Share on the front foot',
    [
      'The front foot carries its usual part.',
      'The front foot is light; it cannot steady the boat.',
      'The front foot carries much; the weight is far forward.',
    ],
    ['Your front foot carries its part.', 'Your front foot is light.', 'Your front foot carries a lot.'],
  ),
  rearReach: say(
    'Missing to reach the rear rest',
    ['The rear foot reaches its rest.', '', 'The rear foot does not reach its rest.'],
    ['Your rear foot reaches its rest.', '', 'Your rear foot does not reach its rest.'],
  ),
  frontReach: say(
    'Missing to reach the front foot’s place',
    ['The front leg reaches its place.', '', 'The front leg does not reach its place.'],
    ['Your front leg reaches.', '', 'Your front leg does not reach.'],
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

/** Names of quantities that no band judges, for the table of values. */
export const NAMES: Partial<Record<QuantityId, string>> = {
  restAft: 'Rear rest aft of the datum',
  frontHeelForward: 'Front heel forward of the datum',
  pelvisYaw: 'Pelvis turned, off-side hip forward',
  thighPitch: 'Kneeling thigh forward of upright',
  kneeLoad: 'Load on the knee',
  rearLoad: 'Load on the rear foot',
  frontLoad: 'Load on the front foot',
  padPressure: 'Mean pressure on the pad (to compare set-ups)',
  padFixing: 'Held by the pad’s fixing in the drive',
  centreAft: 'Paddler’s centre of mass aft of the datum',
  centreOut: 'Paddler’s centre of mass to the kneeling side',
  centreHeight: 'Paddler’s centre of mass above the floorboard',
  trimAngle: 'Trim angle',
  draft: 'Draft amidships',
  freeboardBow: 'Freeboard at the bow',
  freeboardStern: 'Freeboard at the stern',
  steadyMoment: 'Moment that the crew holds',
  transverseGm: 'Metacentric height (GM)',
  tippingTime: 'Time in which it tips',
  massPerCentimetre: 'Kilograms per centimetre deeper',
  totalMass: 'Mass afloat',
};

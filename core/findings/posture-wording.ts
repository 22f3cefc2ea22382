import type { QuantityId } from './quantities.ts';
import { say, type Wording } from './wording.ts';

/** What is said of the figure and how it rests. `low` is under the band's lower edge, `high` over its upper edge. */
export const POSTURE_WORDING: Partial<Record<QuantityId, Wording>> = {
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
};

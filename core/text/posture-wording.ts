import type { QuantityId } from '../evaluation/quantities.ts';
import { bySign, say, type Wording, type Words } from './wording.ts';

/** An athlete whose weight is outside the supports is told so; one near the edge is told that. */
const offSupport: Words = bySign(
  'Your weight is outside your supports. Tell your coach.',
  'Your weight is near the edge of your supports.',
);

/** What is said of the figure and how it rests. `low` is under the band's lower edge, `high` over its upper edge. */
export const POSTURE_WORDING: Partial<Record<QuantityId, Wording>> = {
  frontKnee: say(
    'Front knee',
    [
      'The front knee is open enough to push from.',
      'The front knee is too bent to push from.',
      'The front knee is too straight to take up the stroke.',
    ],
    [
      'Your front leg can push well.',
      'Your front knee is bent too far to push well.',
      'Your front knee is too straight to push well.',
    ],
  ),
  trunkRoll: say(
    'Lean seen from behind',
    [
      bySign(
        'The back is upright or leans slightly away from the paddling side.',
        'The back is upright or leans slightly to the paddling side.',
      ),
      bySign(
        'The back leans away from the paddling side.',
        'The back leans less to the paddling side than wanted.',
      ),
      bySign(
        'The back leans less away from the paddling side than wanted.',
        'The back leans more to the paddling side than wanted.',
      ),
    ],
    [
      'Your back is upright enough.',
      bySign('You lean away from your paddle.', 'You could lean a little more towards your paddle.'),
      bySign(
        'You could lean a little more away from your paddle.',
        'You lean a long way towards your paddle.',
      ),
    ],
  ),
  trunkPitch: say(
    'Trunk forward at ready',
    [
      'The trunk is comfortable to hold.',
      bySign('The trunk leans back at ready.', 'The trunk leans less forward at ready than wanted.'),
      bySign(
        'The trunk leans back less at ready than wanted.',
        'The trunk leans far forward at ready; tiring to hold.',
      ),
    ],
    [
      'Your back is comfortable to hold.',
      bySign('You lean back while waiting.', 'You could lean a little more forward while waiting.'),
      bySign(
        'You could lean a little more back while waiting.',
        'You lean far forward while waiting; that tires the back.',
      ),
    ],
  ),
  kneelingKnee: say(
    'Kneeling knee',
    [
      'The kneeling knee is in its comfortable range.',
      'The kneeling knee is bent far.',
      'The kneeling knee is very open.',
    ],
    [
      'Your kneeling knee is comfortable.',
      'Your kneeling knee is bent far.',
      'Your kneeling knee is very open.',
    ],
  ),
  kneelingHip: say(
    'Kneeling hip',
    [
      'The kneeling hip is in its comfortable range.',
      'The kneeling hip is bent forward past its comfortable range.',
      'The kneeling hip is bent back past its comfortable range.',
    ],
    ['Your hip is comfortable.', 'Your hip is bent a lot.', 'Your hip is stretched back.'],
  ),
  frontHip: say(
    'Front hip',
    ['The front hip has room.', 'The front hip is bent a lot; the lower back may round.', ''],
    ['Your front hip has room.', 'Your front hip is bent a lot.', ''],
  ),
  hipFlexorStretch: say(
    'Stretch over the front of the kneeling hip',
    [
      'Hip and knee leave the front of the thigh slack.',
      '',
      bySign(
        'The front of the thigh is nearer to a stretch than wanted.',
        'Hip back and knee bent together stretch the front of the thigh.',
      ),
    ],
    [
      'The front of your thigh is relaxed.',
      '',
      bySign(
        'The front of your kneeling thigh has little slack.',
        'The front of your kneeling thigh is stretched; say if it aches.',
      ),
    ],
  ),
  rearAnkle: say(
    'Rear ankle',
    [
      'The rear ankle is in its comfortable range.',
      'The rear foot is bent up more than is comfortable.',
      'The rear foot is pointed more than is comfortable.',
    ],
    [
      'Your rear ankle is comfortable.',
      'Your rear foot is bent up a lot.',
      'Your rear foot is pointed a lot.',
    ],
  ),
  frontAnkle: say(
    'Front ankle',
    [
      'The front ankle is in its comfortable range.',
      'The shin leans far over the front foot; the heel may lift.',
      'The front ankle is opened more than is comfortable.',
    ],
    ['Your front ankle is comfortable.', 'Your front heel may lift.', 'Your front ankle is opened a lot.'],
  ),
  supportMargin: say(
    'Support margin',
    [
      'The weight is inside the supports.',
      bySign('The weight is outside the supports.', 'The weight is near the edge of the supports.'),
      '',
    ],
    ['You are well supported.', offSupport, ''],
  ),
  kneeShare: say(
    'Share on the knee',
    [
      'The knee carries its usual part.',
      'The knee carries little; the feet carry the rest.',
      'The knee carries much of the weight; it will tire and go numb sooner.',
    ],
    ['The pressure on your knee is usual.', 'Little pressure on the knee.', 'Much pressure on the knee.'],
  ),
  rearShare: say(
    'Share on the rear foot',
    [
      'The rear foot is in touch.',
      'The rear foot carries little.',
      'The rear foot carries much; the toes will tire.',
    ],
    [
      'Your rear foot is in touch with its rest.',
      'Your rear foot carries little.',
      'Much pressure on the rear toes.',
    ],
  ),
  frontShare: say(
    'Share on the front foot',
    [
      'The front foot carries its usual part.',
      'The front foot carries little; it cannot steady the boat much.',
      'The front foot carries much of the weight.',
    ],
    [
      'Your front foot carries its part.',
      'Your front foot carries little.',
      'Much pressure on the front foot.',
    ],
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

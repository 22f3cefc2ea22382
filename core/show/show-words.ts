/** Headings and standing words of Show and its take-home page, in the athlete's words. */
export const SHOW_WORDS = {
  title: 'Your position',
  good: 'What is good',
  watch: 'What to look after',
  changes: 'What changes',
  why: 'Why',
  feel: 'What to feel for',
  before: 'Before',
  now: 'Now',
  fromTheSide: 'From the side',
  fromBehind: 'From behind',
  fromAbove: 'From above',
  nothingChanges: 'Nothing has been moved.',
  allGood: 'Nothing needs looking after.',
  coachSays: 'Your coach says',
  more: 'There is more; ask your coach.',
  kneelLeft: 'You kneel on your left knee.',
  kneelRight: 'You kneel on your right knee.',
} as const;

/** Cautions that go with every picture, plain and short. */
export const SHOW_CAUTIONS: readonly string[] = [
  'Numb, tingling or sore? Stop and tell your coach. If it stays, see a physiotherapist or doctor.',
  'Try your foot strap on land, then in shallow water: it must let go by itself.',
  'First go near the shore with someone watching, and wear what your local rules ask for. Respect cold water.',
];

/**
 * Showing: what an athlete and a coach look at together. The words about the athlete are made by core's `show`; `show.`
 * is what the athlete reads around them, `showing.` what the coach chooses.
 */
export const SHOW = {
  'show.title': 'Your position: {name}',
  'show.way': 'Show',
  'show.way.of': 'Show: {name}',
  'show.nobody': 'Nobody kneels in this boat yet.',
  'show.broken': 'This boat cannot be drawn: {why} Ask your coach to mend its measurements.',
  'show.picture.side': 'You from the side, in the boat on the water',
  'show.picture.behind': 'You from behind, in the boat on the water',
  'show.picture.above': 'You from above, in the boat',
  'show.view': 'Look from',
  'show.leaves': 'What to read',
  'show.between': 'Between before and now',
  'show.between.before': 'Before',
  'show.between.now': 'Now',
  'show.between.part': '{percent} of 100 of the way to now',
  'show.fill': 'Fill the screen',
  'show.unfill': 'Leave full screen (Esc)',
  'show.take-home': 'Take home (PDF)',
  'show.back': 'Back to the bench',

  'showing.choose': 'What is shown',
  'showing.seat': 'Seat',
  'showing.seat.of': '{number}: {name}',
  'showing.now': 'Now',
  'showing.before': 'Before',
  'showing.present': 'As it stands now',
  'showing.revision': 'Revision {number}: {name}',
  'showing.nothing-before': 'Nothing',
  'showing.mass': 'Body mass',
  'showing.mass.about': 'Off unless you turn it on here; it is forgotten when you leave.',
  'showing.mass.is': 'Body mass {mass}',
  'showing.paper': 'Paper to take home',
} as const;

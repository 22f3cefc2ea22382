/** The same stance in another hull. */
export const TRANSFER = {
  'transfer.title': 'Into another boat: {fit}',
  'transfer.back': 'Back to the bench',
  'transfer.about':
    'The stance stays as it is: every fitting keeps its place from the seat’s mark and its height above the floorboard. Then everything is shifted together, as little as keeps the trim.',
  'transfer.boat': 'Boat',
  'transfer.choose': 'Choose …',
  'transfer.no-boat.one':
    'There is no other boat with {count} seat yet. Measure one, and this fit can move into it.',
  'transfer.no-boat.other':
    'There is no other boat with {count} seats yet. Measure one, and this fit can move into it.',
  'transfer.measure': 'Measure a boat',
  'transfer.working': 'Reckoning …',
  'transfer.old': '{boat}, now',
  'transfer.as-is': '{boat}, same places',
  'transfer.kept': '{boat}, trim kept',
  'transfer.holes': '{boat}, in its holes',
  'transfer.shift.aft': 'To keep the bow {trim}, everything goes {by} aft in {boat}.',
  'transfer.shift.forward': 'To keep the bow {trim}, everything goes {by} forward in {boat}.',
  'transfer.shift.none': 'The bow stays {trim} with every fitting where it is.',
  'transfer.trim.up': '{by} up',
  'transfer.trim.down': '{by} down',
  'transfer.no-trim':
    'No shift within reach of the hull keeps the trim. The same places are shown; look at the notes.',
  'transfer.no-float': 'The present boat does not float with this crew, so there is no trim to keep.',
  'transfer.holes.miss': 'In the nearest holes the bow comes to lie {by} from there.',
  'transfer.what': 'What',
  'transfer.setting': 'Setting: {name}',
  'transfer.setting.only': 'Setting',
  'transfer.trim': 'Trim and balance',
  'transfer.room': 'Room in the hull',
  'transfer.paddle': 'Paddle',
  'transfer.stance': 'Stance',
  'transfer.make': 'Make it a new fit',
  'transfer.make.of': 'Make it a new fit: {what}',
  'transfer.name': '{fit}, in {boat}',
  'transfer.note': 'From “{fit}” in {boat}, {date}.',
  'transfer.caution':
    'Another hull tips otherwise though the stance is the same: first trials near the shore, somebody watching.',
  'transfer.caption': 'The present boat and the new one side by side',
} as const;

/** Pad and rests at full size on the screen, and measuring the screen. */
export const FULL_SIZE = {
  'fullsize.way': 'Full size',
  'fullsize.title': 'Full size: {name}',
  'fullsize.back': 'Back to the bench',
  'fullsize.what': 'What',
  'fullsize.drawing': '{title} at full size, {seen}',
  'fullsize.caution':
    'For holding the pad or the rest against the glass. Cut wood from the templates on paper, never from a screen.',
  'fullsize.bar': '{length}: lay a ruler on this bar before you trust the drawing.',
  'fullsize.bar.unmeasured': 'Meant to be {length}; on this screen nobody has checked.',
  'fullsize.bar.spoken': 'Check bar of {length}',
  'fullsize.unmeasured':
    'This screen has not been measured, so the drawing is not at full size: it may be out by a quarter. Measure the screen once, in either of two ways; it is remembered for this screen.',
  'fullsize.measured': 'Measured for this screen ({screen}). The drawing is at full size.',
  'fullsize.again': 'Measure it again',
  'fullsize.forget': 'Forget it',
  'fullsize.keep': 'Keep for this screen',
  'fullsize.kept': 'Kept for this screen. The drawing is at full size.',
  'fullsize.forgotten': 'Forgotten. The drawing is no longer at full size.',
  'fullsize.card': 'With a card',
  'fullsize.card.about':
    'Hold a bank card or any card of that size against the glass and make the frame as wide as the card.',
  'fullsize.card.width': 'Width of the frame',
  'fullsize.ruler': 'With a ruler',
  'fullsize.ruler.about': 'Lay a ruler on the bar and type its length.',
  'fullsize.ruler.length': 'Length of the bar',
} as const;

/** What stands on the drawing itself. */
export const DRAWING = {
  'drawing.name': 'Drawing of the fit: from above, from the side and from behind',
  'drawing.from-above': 'From above',
  'drawing.from-side': 'From the side',
  'drawing.from-behind': 'From behind',
} as const;

/**
 * Inks of a sheet by name, so that paper and screen may each have their own colours for them. `mark` is what is marked on
 * the floorboard, `measure` what is read off, `woodLine` the edge of wood.
 */
export const SHEET_INKS = [
  'ink',
  'soft',
  'rule',
  'measure',
  'mark',
  'wood',
  'woodLine',
  'hull',
  'board',
  'paddlerA',
  'paddlerB',
  'paddlerC',
  'paddlerD',
  'paddlerE',
  'paddlerF',
] as const;
/** An ink by its name. */
export type SheetInk = (typeof SHEET_INKS)[number];

/**
 * Colours of those who share a board, that everybody can distinguish: blue, vermilion, bluish green, reddish purple, orange, sky blue
 * (Okabe and Ito, Color Universal Design, 2008).
 */
export const PADDLER_INK = {
  paddlerA: '#0072b2',
  paddlerB: '#d55e00',
  paddlerC: '#009e73',
  paddlerD: '#cc79a7',
  paddlerE: '#e69f00',
  paddlerF: '#56b4e9',
} as const;

/** Sizes of type on a sheet, millimetres of type (not of capitals). */
export const SHEET_TYPE = { title: 5.4, heading: 3.9, body: 3.1, small: 2.6 } as const;

/** Capitals over the size of type in the family that sheets are lettered in (its OS/2 table: 0.65 em). */
export const CAPITALS_OVER_SIZE = 0.65;

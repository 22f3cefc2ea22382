/**
 * Widths of letters over the height of capitals, of the family that sheets are lettered in: measured from its font, rounded up to a
 * tenth, so that words never take more room than is calculated.
 */
const WIDTHS: readonly (readonly [width: number, letters: string])[] = [
  [0.4, ' \u{a0}\u{202f}.:ijlí·’'],
  [0.5, "!',;IJ`ł"],
  [0.6, '()-/?[\\]frst|ś°'],
  [0.7, '"^ackvxz{}'],
  [0.8, '*0123456789egoy×'],
  [0.9, '$+<=>BEFLPS_bdhnpqu~±–'],
  [1, '#CKRTXYZ'],
  [1.1, '%&AV'],
  [1.2, 'DGHNUw½'],
  [1.3, 'OQm'],
  [1.4, '@'],
  [1.6, 'MW'],
];
/** Widths by letter. */
const BY_LETTER = new Map(WIDTHS.flatMap(([width, letters]) => [...letters].map((one) => [one, width])));

/** Other letters: as wide as the widest usual ones of their kind. */
const SMALL = 1.1;
/** Any other capital. */
const CAPITAL = 1.5;
/** Chinese and other square letters. */
const SQUARE = 1.55;
/** The first code point of the square scripts (CJK Radicals Supplement, Unicode). */
const FIRST_SQUARE = 0x2e80;

/** Width of some words over the height of their capitals: `111` is 2.4. */
export function lettersWidth(text: string): number {
  return [...text].reduce((sum, letter) => sum + letterWidth(letter), 0);
}

/** One letter's width, in the units of the table; those it lacks are guessed wide. */
function letterWidth(letter: string): number {
  // An accent takes no width of its own.
  const known = BY_LETTER.get(letter) ?? BY_LETTER.get(letter.normalize('NFD')[0]!);
  if (known !== undefined) return known;
  if (letter.codePointAt(0)! >= FIRST_SQUARE) return SQUARE;
  return letter === letter.toLowerCase() ? SMALL : CAPITAL;
}

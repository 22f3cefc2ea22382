import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { keysOf } from '../../../core/units/entries.ts';
import { unpackWoff } from './unpack-woff.ts';

/** Weights of lettering that sheets use. */
export type FontWeight = 'regular' | 'strong';

const NUMBERS: Readonly<Record<FontWeight, number>> = { regular: 400, strong: 600 };

/**
 * Alphabets, each a file of its own, in the order they are tried, with the family that has them. All families stand
 * under the SIL Open Font License 1.1; their packages carry its text.
 */
const FAMILIES = {
  latin: 'ysabeau-office',
  'latin-ext': 'ysabeau-office',
  cyrillic: 'ysabeau-office',
  'cyrillic-ext': 'ysabeau-office',
  greek: 'ysabeau-office',
  vietnamese: 'ysabeau-office',
  georgian: 'noto-sans-georgian',
  armenian: 'noto-sans-armenian',
  'chinese-simplified': 'noto-sans-sc',
  math: 'ysabeau-office',
  symbols: 'ysabeau-office',
} as const;
type Alphabet = keyof typeof FAMILIES;
const ALPHABETS = keysOf(FAMILIES);

/** What is asked of a font: whether it has a letter. */
export interface Glyphs {
  hasGlyphForCodePoint(codePoint: number): boolean;
}

/** A stretch of text in one font. */
export interface FontRun {
  readonly font: string;
  readonly text: string;
}

/** Shown where no font has the letter. */
const MISSING = '\u{25a1}';

const require = createRequire(import.meta.url);

/** Fonts read before, unpacked: a hundred pages need each once. */
const shelf = new Map<string, Buffer>();

/** A font's plain file by its name, `latin-strong`. */
export function fontBytes(font: string): Buffer {
  const known = shelf.get(font);
  if (known) return known;
  const bytes = unpackWoff(readFileSync(fontFile(font)));
  shelf.set(font, bytes);
  return bytes;
}

function fontFile(font: string): string {
  const cut = font.lastIndexOf('-');
  const alphabet = font.slice(0, cut) as Alphabet;
  const family = FAMILIES[alphabet];
  const weight = NUMBERS[font.slice(cut + 1) as FontWeight];
  return require.resolve(`@fontsource/${family}/files/${family}-${alphabet}-${weight}-normal.woff`);
}

/** Names of the fonts of a weight, in the order they are tried. */
export function fontsOf(weight: FontWeight): string[] {
  return ALPHABETS.map((alphabet) => `${alphabet}-${weight}`);
}

/**
 * Splits a text into runs by the font that has each letter with all its accents. Letters that no font has become □ and
 * are added to `missing`. Text is brought into composed form first, so that `e` with an accent after it is one letter.
 */
export function fontRuns(
  text: string,
  fonts: readonly string[],
  { glyphsOf, missing }: { glyphsOf: (font: string) => Glyphs; missing: Set<string> },
): FontRun[] {
  const runs: { font: string; text: string }[] = [];
  const has = (font: string, letter: string) =>
    [...letter].every((character) => glyphsOf(font).hasGlyphForCodePoint(character.codePointAt(0)!));
  const add = (letter: string): boolean => {
    const last = runs.at(-1);
    // Staying in the font of the run keeps words and their kerning together.
    const font = last && has(last.font, letter) ? last.font : fonts.find((name) => has(name, letter));
    if (font === undefined) return false;
    if (last?.font === font) last.text += letter;
    else runs.push({ font, text: letter });
    return true;
  };
  for (const letter of lettersOf(text.normalize('NFC'))) {
    if (add(letter)) continue;
    // A digraph as its letters; else base and accents apart in one font.
    const apart = lettersOf(letter.normalize('NFKC'));
    if (apart.length > 1 && apart.every((part) => fonts.some((font) => has(font, part)))) apart.forEach(add);
    else if (!add(letter.normalize('NFKD'))) {
      missing.add(letter);
      add(MISSING);
    }
  }
  return runs;
}

const SEGMENTER = new Intl.Segmenter('en', { granularity: 'grapheme' });
/** Text in which every letter is one character, whatever stands beside it. */
const PLAIN = /^[\x20-\x7e]*$/;

/** Letters with the accents that belong to them. */
function lettersOf(text: string): string[] {
  if (PLAIN.test(text)) return [...text];
  return [...SEGMENTER.segment(text)].map(({ segment }) => segment);
}

const SCRIPTS = ['Hebrew', 'Arabic', 'Greek', 'Cyrillic', 'Latin', 'Han', 'Devanagari'] as const;

/** Names the scripts of letters that could not be printed: `Georgian`. Others are named by themselves. */
export function scriptsOf(letters: Iterable<string>): string[] {
  const names = new Set<string>();
  for (const letter of letters) {
    const script = SCRIPTS.find((name) => new RegExp(`\\p{Script=${name}}`, 'u').test(letter));
    names.add(script ?? `“${letter}”`);
  }
  return [...names].sort();
}

import type { Translator } from '../../app/language/translator.ts';
import { inShownWords, useShownWords } from './shown-words.tsx';
import { TERMS, Term, type TermId } from './term.tsx';

/**
 * Endings that a language may add to a trade word: "bands", "Marken", "változatok". Whatever else goes on after it is another
 * word: "Standard" is no "Stand", "jelzés" no "jel". Chinese adds none.
 */
const ENDINGS: Readonly<Partial<Record<Translator['language'], string>>> = {
  en: 's?',
  de: '(?:e|en|er|es|ern|n|s|em)?',
  es: '(?:s|es)?',
  hu: '(?:[aeoöá]?k)?(?:[aeoöáé]?(?:t|n|ban|ben|ba|be|ra|re|hoz|hez|höz|tól|től|ról|ről|ból|ből|nak|nek|val|vel|ig|a|e|ja|je|ai|ei))?',
  pl: '(?:a|u|e|y|i|ę|ą|o|ów|em|ie|om|ami|ach|owi)?',
  zh: '',
};

/** A piece of a text: plain, or a trade word with its explanation. */
export interface Piece {
  readonly text: string;
  readonly term: TermId | null;
}

/** A text in pieces, each trade word of the glossary set off at its first place. Pieces together are the text. */
export function explainedPieces(text: string, words: Translator): Piece[] {
  const found = patternsOf(words)
    .flatMap(({ term, pattern }) => {
      const match = pattern.exec(text);
      return match ? [{ term, start: match.index, end: match.index + match[0].length }] : [];
    })
    .sort((a, b) => a.start - b.start || b.end - a.end);
  const pieces: Piece[] = [];
  let done = 0;
  for (const { term, start, end } of found) {
    if (start < done) continue;
    if (start > done) pieces.push({ text: text.slice(done, start), term: null });
    pieces.push({ text: text.slice(start, end), term });
    done = end;
  }
  if (done < text.length) pieces.push({ text: text.slice(done), term: null });
  return pieces;
}

/** Patterns of all trade words, made once for each language: making them again takes longer than the search. */
const patterns = new WeakMap<Translator, readonly { readonly term: TermId; readonly pattern: RegExp }[]>();

function patternsOf(words: Translator) {
  let made = patterns.get(words);
  if (!made) {
    made = TERMS.map((term) => ({ term, pattern: patternOf(words.say(`term.${term}`), words.language) }));
    patterns.set(words, made);
  }
  return made;
}

function patternOf(word: string, language: Translator['language']): RegExp {
  const edge = language === 'zh' ? ['', ''] : ['(?<!\\p{L})', `${ENDINGS[language] ?? ''}(?!\\p{L})`];
  return new RegExp(`${edge[0]}${escaped(word)}${edge[1]}`, 'iu');
}

const escaped = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** A text whose trade words are explained on hover, in the language that is shown. */
export const Explained = inShownWords(({ text }: { text: string }) => {
  const pieces = explainedPieces(text, useShownWords());
  return pieces.map(({ text: piece, term }) =>
    term ? (
      <Term key={piece} term={term}>
        {piece}
      </Term>
    ) : (
      piece
    ),
  );
});

/** The same for a tooltip: the text, then what its trade words mean. */
export function explainedTitle(text: string, words: Translator): string {
  const about = explainedPieces(text, words).flatMap(({ term }) =>
    term
      ? [
          words.say('sheet.labelled', {
            label: words.say(`term.${term}`),
            text: words.say(`term.${term}.about`),
          }),
        ]
      : [],
  );
  return [text, ...about].join('\n');
}

import { IntlMessageFormat } from 'intl-messageformat';
import type { Language } from './languages.ts';
import type { MessageKey, Messages } from './messages.ts';

/** What a message is given: texts, counts, and names to choose by. */
export type SayValues = Readonly<Record<string, string | number | boolean | Date | null | undefined>>;

/** Writes messages in one language. */
export interface Translator {
  readonly language: Language;
  /** The same with its region, as `Intl` is asked. */
  readonly locale: string;
  /** The message with its places filled. A key without a message is given back as it is. */
  say(key: MessageKey, values?: SayValues): string;
  /** A number with so many places after the decimal mark of the language. */
  number(value: number, decimals: number): string;
  /** True where the language has a text for the key. */
  has(key: string): key is MessageKey;
  /** Several texts as one list: "a, b and c". */
  list(texts: readonly string[]): string;
  /** The same without a last word: "a, b, c". (`Intl` has no such list: a list of units ends in "und" in German.) */
  row(texts: readonly string[]): string;
  /** Names and values side by side in one line: "Anna · C1 · 2026-05-04". Empty ones are left out. */
  beside(texts: readonly string[]): string;
  /** Whole sentences one after another. Chinese parts them by nothing, other languages by a space. */
  sentences(texts: readonly string[]): string;
  /** Orders texts as a reader of the language looks them up. */
  compare(one: string, other: string): number;
}

/** Locales for `Intl` that fit the spelling of the program's own English and Chinese. */
const LOCALES: Partial<Record<Language, string>> = { en: 'en-GB', zh: 'zh-CN' };

/** A number or its place in a message, a space, and a unit that stands alone. */
const MEASURE = /([\d}°]) (?=(?:[mck]?m|s|N|kg|lb|px|kPa|%)(?![\p{L}\d’]))/gu;

/** The blanks between a value, ± and its doubt, and between two sizes and ×. */
const BESIDE_SIGN = /(?<=[\d}°%N]) (?=±)|(?<=±) |(?<=[\d}]) (?=× [\d{])|(?<=[\d}] ×) (?=[\d{])/gu;

/**
 * A message in which no line ends between a number and its unit, or between a value and its doubt: spaces that do not break part
 * them, a narrow one before a unit, as the writer of numbers has it.
 */
const unbroken = (text: string) => text.replace(MEASURE, '$1\u{202f}').replace(BESIDE_SIGN, '\u{00a0}');

/** Polish words of one letter. No line ends with one: it stays with the word after it. */
const ONE_LETTER = /(?<![\p{L}\d’])([aiouwz]) (?=[\p{L}\d{#„(])/giu;

/** Messages of a language as they are set: without lines that end where none may. */
const setting = (language: Language) =>
  language === 'pl' ? (text: string) => unbroken(text).replace(ONE_LETTER, '$1\u{00a0}') : unbroken;

/** A translator over the messages of a language. Messages are compiled when they are first said, and kept. */
export function translator(language: Language, messages: Messages): Translator {
  const locale = LOCALES[language] ?? language;
  const compiled = new Map<string, IntlMessageFormat>();
  const collator = new Intl.Collator(locale, { numeric: true });
  const list = new Intl.ListFormat(locale, { type: 'conjunction' });
  const set = setting(language);

  const compile = (key: string, text: string): IntlMessageFormat => {
    const known = compiled.get(key);
    if (known) return known;
    const message = new IntlMessageFormat(set(text), locale, undefined, { ignoreTag: true });
    compiled.set(key, message);
    return message;
  };

  return {
    language,
    locale,
    say(key, values) {
      const text = messages[key];
      if (text === undefined) return key;
      if (!text.includes('{')) return set(text);
      return String(compile(key, text).format(values));
    },
    number: (value, decimals) =>
      value.toLocaleString(locale, {
        minimumFractionDigits: decimals,
        maximumFractionDigits: decimals,
        useGrouping: false,
      }),
    has: (key): key is MessageKey => messages[key] !== undefined,
    list: (texts) => list.format(texts),
    row: (texts) => texts.join(language === 'zh' ? '、' : ', '),
    beside: (texts) => texts.filter(Boolean).join(' · '),
    sentences: (texts) => texts.join(language === 'zh' ? '' : ' '),
    compare: collator.compare,
  };
}

import type * as english from './catalogues/en.ts';
import type { Language } from './languages.ts';

type English = typeof english;

/** A message's name; English has them all. */
export type MessageKey = { [Subject in keyof English]: keyof English[Subject] }[keyof English];

/** All messages of one language: ICU texts by key. */
export type Messages = Readonly<Record<string, string>>;

/** Messages as their files have them, by subject. */
type Catalogue = Readonly<Record<string, Messages>>;

const LOADERS: Readonly<Record<Language, () => Promise<Catalogue>>> = {
  en: () => import('./catalogues/en.ts'),
  de: () => import('./catalogues/de.ts'),
  hu: () => import('./catalogues/hu.ts'),
  es: () => import('./catalogues/es.ts'),
  pl: () => import('./catalogues/pl.ts'),
  zh: () => import('./catalogues/zh.ts'),
};

/**
 * Reads the messages of one language; each is a script of its own, so that a page loads only what it shows. English stands under
 * the others: a message that is not translated yet is said in English, never as its key.
 */
export async function loadMessages(language: Language): Promise<Messages> {
  const own = LOADERS[language]();
  if (language === 'en') return allOf(await own);
  return allOf(await LOADERS.en(), await own);
}

/**
 * The messages of every subject together, later catalogues over earlier ones. A text `@key` is the text of that other message:
 * what is said in several places stands, and is translated, once.
 */
export function allOf(...catalogues: readonly Catalogue[]): Messages {
  const all: Record<string, string> = Object.assign({}, ...catalogues.flatMap(Object.values));
  for (const [key, text] of Object.entries(all)) {
    if (text.startsWith('@')) all[key] = all[text.slice(1)] ?? text;
  }
  return all;
}

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
  return { ...allOf(await LOADERS.en()), ...allOf(await own) };
}

/** The messages of every subject together. */
export function allOf(catalogue: Catalogue): Messages {
  return Object.assign({}, ...Object.values(catalogue));
}

import type { messages } from './catalogues/en.ts';
import type { Language } from './languages.ts';

/** A message's name; English has them all. */
export type MessageKey = keyof typeof messages;

/** All messages of one language: ICU texts by key. */
export type Messages = Readonly<Record<string, string>>;

const LOADERS: Readonly<Record<Language, () => Promise<{ messages: Messages }>>> = {
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
  if (language === 'en') return (await own).messages;
  return { ...(await LOADERS.en()).messages, ...(await own).messages };
}

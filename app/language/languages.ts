import { keysOf } from '../../core/units/entries.ts';
import type { LanguageTag } from '../contract/display.ts';

/** The languages that the program speaks, by their BCP 47 tag, each in its own words. */
export const LANGUAGES: Readonly<Record<LanguageTag, string>> = {
  en: 'English',
  de: 'Deutsch',
  hu: 'Magyar',
  es: 'Español',
  pl: 'Polski',
  zh: '简体中文',
};

/** A language that the program speaks. */
export type Language = LanguageTag;

/** The first of the wanted languages (BCP 47 tags, most wanted first) that the program speaks; English where there is none. */
export function languageFor(wanted: readonly string[]): Language {
  const known = keysOf(LANGUAGES);
  for (const tag of wanted) {
    const [base] = tag.toLowerCase().split(/[-_]/);
    const language = known.find((candidate) => candidate === base);
    if (language) return language;
  }
  return 'en';
}

/** The language of a choice; `system` follows the computer's own, most wanted first. */
export function chosenLanguage(choice: Language | 'system', system: readonly string[]): Language {
  return choice === 'system' ? languageFor(system) : choice;
}

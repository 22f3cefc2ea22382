/** The languages that the program speaks, by their BCP 47 tag, each in its own words. */
export const LANGUAGES = { en: 'English' } as const;

/** A language that the program speaks. */
export type Language = keyof typeof LANGUAGES;

/** The first of the wanted languages (BCP 47 tags, most wanted first) that the program speaks; English where there is none. */
export function languageFor(wanted: readonly string[]): Language {
  const known = Object.keys(LANGUAGES) as Language[];
  for (const tag of wanted) {
    const [base] = tag.toLowerCase().split(/[-_]/);
    const language = known.find((candidate) => candidate === base);
    if (language) return language;
  }
  return 'en';
}

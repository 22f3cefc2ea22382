/** A stretch of a text in one script, with the BCP 47 tag that its letters are sure of; null for the reader's own. */
export interface ScriptRun {
  readonly text: string;
  readonly lang: string | null;
}

/** What a script says of the language. Where several share it, the script alone is named: `und-Hani`. */
const SCRIPTS: readonly (readonly [RegExp, string])[] = [
  [/\p{Script=Hangul}/u, 'ko'],
  [/[\p{Script=Hiragana}\p{Script=Katakana}]/u, 'ja'],
  [/\p{Script=Han}/u, 'und-Hani'],
  [/\p{Script=Georgian}/u, 'ka'],
  [/\p{Script=Armenian}/u, 'hy'],
  [/\p{Script=Greek}/u, 'el'],
  [/\p{Script=Cyrillic}/u, 'und-Cyrl'],
  [/\p{Script=Hebrew}/u, 'he'],
  [/\p{Script=Arabic}/u, 'und-Arab'],
  [/\p{Script=Thai}/u, 'th'],
];

/** Letters of any script that is not the Latin one. */
const FOREIGN = /[^\p{Script=Latin}\p{Script=Common}\p{Script=Inherited}]/u;

/** Splits a text into runs by script, for a reader of a language (BCP 47). Marks, digits and spaces stay with the run before them. Runs together are the text. */
export function scriptRuns(text: string, reader: string): ScriptRun[] {
  if (!FOREIGN.test(text)) return [{ text, lang: null }];
  const runs: { text: string; lang: string | null }[] = [];
  for (const letter of text) {
    const last = runs.at(-1);
    const lang = /\p{L}/u.test(letter) ? langOf(letter, text, reader) : (last?.lang ?? null);
    if (last && last.lang === lang) last.text += letter;
    else runs.push({ text: letter, lang });
  }
  return runs;
}

function langOf(letter: string, text: string, reader: string): string | null {
  const lang = SCRIPTS.find(([script]) => script.test(letter))?.[1] ?? null;
  if (lang !== 'und-Hani') return lang;
  if (/[\p{Script=Hiragana}\p{Script=Katakana}]/u.test(text)) return 'ja';
  return reader === 'zh' ? null : lang;
}

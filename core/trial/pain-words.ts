import { CHINESE_PAIN, PAIN_WORDS, type PainWords } from './pain-table.ts';

/** All lists at once: coaches mix languages, and a note does not say in which it was written. */
const LANGUAGES: readonly PainWords[] = Object.values(PAIN_WORDS);

/** A negation holds for so many words after it. */
const NEGATION_REACHES = 3;

/** What free text says of pain: clearly, perhaps (whoever wrote it is asked), or nothing. */
export type SaidOfPain = 'pain' | 'perhaps' | null;

/** Whether free text speaks of pain, numbness or the like, in any of the program's languages; "no pain" does not. */
export function speaksOfPain(text: string): boolean {
  return saidOfPain(text) === 'pain';
}

/**
 * What free text says of pain, numbness, tingling, swelling or cramp in English, German, Hungarian, Spanish, Polish and
 * simplified Chinese, whatever language is set. Negations count within their clause: "no pain or numbness", "tut nicht weh",
 * "fájdalom nélkül". A word too many only brings a caution too many, and one that is missed still has the structured entry
 * beside it.
 */
export function saidOfPain(text: string): SaidOfPain {
  const clauses = folded(text).split(/[.,;:!?。，；：！？\n]+/u);
  const said = clauses.flatMap((clause) => [inClause(clause), inChinese(clause)]);
  return said.includes('pain') ? 'pain' : said.includes('perhaps') ? 'perhaps' : null;
}

/** Lower case without accents and apostrophes. */
function folded(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/[\p{M}'’]/gu, '')
    .toLowerCase()
    .replaceAll('ł', 'l')
    .replaceAll('ß', 'ss');
}

/** What one clause says of pain: a word for it counts unless it is taken back, before or after it. */
function inClause(clause: string): SaidOfPain {
  const words = clause.match(/[\p{L}\p{N}]+/gu) ?? [];
  let negated = false;
  let perhaps = false;
  let lastPain = Number.NEGATIVE_INFINITY;
  for (const [at, word] of words.entries()) {
    if (begins(word, 'perhaps')) perhaps = true;
    if (!isPain(word)) continue;
    const joined: boolean = negated && at - lastPain <= 2 && isIn(words[at - 1], 'and');
    negated = joined || isTakenBack(words, at);
    lastPain = at;
    if (!negated) return 'pain';
  }
  return perhaps ? 'perhaps' : null;
}

/** Whether a word begins like one for pain, and not like "painless". */
function isPain(word: string): boolean {
  return begins(word, 'pain') && !begins(word, 'free');
}

/** A negation stands shortly before the word without an "only", or right behind it. */
function isTakenBack(words: readonly string[], at: number): boolean {
  const before = words.slice(Math.max(0, at - NEGATION_REACHES), at);
  const not = before.findLastIndex((word) => isIn(word, 'not'));
  if (not >= 0) return !before.slice(not + 1).some((word) => isIn(word, 'only'));
  return words.slice(at + 1, at + 3).some((word) => isIn(word, 'notAfter'));
}

/** Whether any language's list has the word. */
function isIn(word: string | undefined, list: 'not' | 'notAfter' | 'only' | 'and'): boolean {
  return word !== undefined && LANGUAGES.some((language) => language[list].includes(word));
}

/** Whether a word begins with one of a list, or is it where a bar asks for the whole word. */
function begins(word: string, list: 'pain' | 'free' | 'perhaps'): boolean {
  return LANGUAGES.some((language) =>
    language[list].some((one) => (one.endsWith('|') ? word === one.slice(0, -1) : word.startsWith(one))),
  );
}

/** The same for Chinese, which has no spaces: a word for pain counts unless a "not" stands just before it. */
function inChinese(text: string): SaidOfPain {
  const plain = CHINESE_PAIN.free.reduce((rest, word) => rest.replaceAll(word, ''), text);
  const not = new RegExp(`(?:${CHINESE_PAIN.not.join('|')})[\\p{Script=Han}]{0,3}$`, 'u');
  for (const word of CHINESE_PAIN.pain) {
    for (let at = plain.indexOf(word); at >= 0; at = plain.indexOf(word, at + 1)) {
      const before = plain.slice(Math.max(0, at - 6), at);
      if (word.startsWith('没') || !not.test(before)) return 'pain';
    }
  }
  return CHINESE_PAIN.perhaps.some((word) => plain.includes(word)) ? 'perhaps' : null;
}

import type { FindAction } from './offered-actions.ts';

/** Text without accents and capitals. */
const plain = (text: string) => text.normalize('NFKD').replace(/\p{M}/gu, '').toLocaleLowerCase();

/** A word with an ending is matched by its beginning if that has this many letters. */
const LEAST_STEM = 4;

/** The words that were typed. */
const wordsOf = (text: string) => plain(text).split(/\s+/).filter(Boolean);

/**
 * Actions whose name or search words hold every word typed. A word that is typed with an ending ("schmerzt") is found by its stem.
 * Those whose names begin with the words come first. Where nothing was typed, all of them in their own order.
 */
export function matchingActions(actions: readonly FindAction[], text: string): FindAction[] {
  const words = wordsOf(text);
  const found = actions.flatMap((action) => {
    const name = plain(action.name);
    const all = `${name} ${plain(action.words ?? '')}`;
    const called = wordsOf(all).filter(({ length }) => length >= LEAST_STEM);
    if (!words.every((word) => all.includes(word) || called.some((begin) => word.startsWith(begin))))
      return [];
    const begun = words.filter((word) => ` ${name}`.includes(` ${word}`)).length;
    return [{ action, begun }];
  });
  return found.sort((a, b) => b.begun - a.begun).map(({ action }) => action);
}

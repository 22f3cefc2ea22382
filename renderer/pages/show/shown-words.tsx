import { createContext, useContext } from 'react';
import type { Translator } from '../../../app/language/translator.ts';
import { words } from '../../language/messages.ts';

const ShownWords = createContext<Translator | null>(null);

/** What is within is said by this translator: the athlete may read another language than the coach. */
export const ShownWordsProvider = ShownWords.Provider;

/** Says what the athlete reads; the page's own language where none was chosen. */
export function useShownWords(): Translator {
  return useContext(ShownWords) ?? words();
}

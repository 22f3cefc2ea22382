import { createContext, useContext } from 'react';
import { saidIn } from '../../app/language/spoken.ts';
import type { Translator } from '../../app/language/translator.ts';
import { words } from './messages.ts';

const ShownWords = createContext<Translator | null>(null);

/** What is within is said by this translator: an athlete or a paper may have another language than the coach. */
export const ShownWordsProvider = ShownWords.Provider;

/** The translator of what is shown here; the page's own where no other was chosen. */
export function useShownWords(): Translator {
  return useContext(ShownWords) ?? words();
}

/** A component whose own texts are in the language that is shown here. Components within it are made so too. */
export function inShownWords<Props>(
  Component: (props: Props) => React.ReactNode,
): (props: Props) => React.ReactNode {
  return function InShownWords(props: Props) {
    return saidIn(useShownWords(), () => Component(props));
  };
}

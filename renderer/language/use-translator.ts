import { useEffect, useState } from 'react';
import type { Language } from '../../app/language/languages.ts';
import { translatorOf } from '../../app/language/spoken.ts';
import type { Translator } from '../../app/language/translator.ts';
import { words } from './messages.ts';

/** The translator of a language; the page's own until its messages have been read. */
export function useTranslator(language: Language): Translator {
  const [translator, setTranslator] = useState<Translator | null>(null);
  useEffect(() => {
    let isWanted = true;
    void translatorOf(language).then((read) => isWanted && setTranslator(read));
    return () => {
      isWanted = false;
    };
  }, [language]);
  return translator?.language === language ? translator : words();
}

import type { Language } from '../../language/languages.ts';
import { loadMessages, type MessageKey } from '../../language/messages.ts';
import { type Translator, translator, type Values } from '../../language/translator.ts';

export type { MessageKey } from '../../language/messages.ts';

let spoken: Translator | undefined;

/** The page speaks this language from now on. Whoever changes it draws the page anew. */
export async function speak(language: Language): Promise<void> {
  spoken = translator(language, await loadMessages(language));
}

/** The translator of the page's language. Throws before a language is chosen. */
export function pageTranslator(): Translator {
  if (!spoken) throw new Error('no language is chosen yet: call speak() first');
  return spoken;
}

/** A text of the catalogue with its places filled: `say('bench.undo.step', { step: 'move the pad' })`. */
export function say(key: MessageKey, values?: Values): string {
  return pageTranslator().say(key, values);
}

/** A text that counts: `sayCount('fits.revisions', 3)` is "3 revisions". */
export function sayCount(key: MessageKey, count: number): string {
  return say(key, { count });
}

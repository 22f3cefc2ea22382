import type { Message } from '../../core/document/message.ts';
import type { Language } from './languages.ts';
import { loadMessages, type MessageKey } from './messages.ts';
import { type SayValues, type Translator, translator } from './translator.ts';

let spoken: Translator | undefined;

/** Page or program speaks this language from now on. Whoever changes it draws the page again. */
export async function speak(language: Language): Promise<void> {
  spoken = await translatorOf(language);
}

/** Speaks with this translator, which is loaded already. */
export function speakWith(translator: Translator): void {
  spoken = translator;
}

/** True once a language is spoken. */
export function isSpoken(): boolean {
  return spoken !== undefined;
}

/** A translator of its own, for a paper or an athlete's page in another language. */
export async function translatorOf(language: Language): Promise<Translator> {
  return translator(language, await loadMessages(language));
}

/** The translator of the language that is spoken, as core takes it. Throws before a language is chosen. */
export function words(): Translator {
  if (!spoken) throw new Error('no language is chosen yet: call speak() first');
  return spoken;
}

/** Runs synchronous work with another language spoken. */
export function saidIn<T>(translator: Translator, work: () => T): T {
  const was = spoken;
  spoken = translator;
  try {
    return work();
  } finally {
    spoken = was;
  }
}

/** A text of the catalogue with its places filled: `say('do.undo', { step: 'move the pad' })`. */
export function say(key: MessageKey, values?: SayValues): string {
  return words().say(key, values);
}

/** Says a message that the core names: its keys are plain texts there. */
export function sayMessage({ key, values }: Message): string {
  return say(key as MessageKey, values);
}

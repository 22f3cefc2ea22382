import * as english from '../language/catalogues/en.ts';
import { languageFor } from '../language/languages.ts';
import { allOf } from '../language/messages.ts';
import { isSpoken, speak, speakWith } from '../language/spoken.ts';
import { translator } from '../language/translator.ts';

// The program speaks from its first line on: English, until the chosen language has been read.
if (!isSpoken()) speakWith(translator('en', allOf(english)));

/** Speaks the terminal's language: for a command that has no settings of its own. */
export async function speakAsTerminal(): Promise<void> {
  await speak(languageFor([Intl.DateTimeFormat().resolvedOptions().locale]));
}

export { say, sayMessage, words } from '../language/spoken.ts';

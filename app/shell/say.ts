import { messages } from '../language/catalogues/en.ts';
import { isSpoken, speakWith } from '../language/spoken.ts';
import { translator } from '../language/translator.ts';

// The program speaks from its first line on: English, until the chosen language has been read.
if (!isSpoken()) speakWith(translator('en', messages));

export { say, words } from '../language/spoken.ts';

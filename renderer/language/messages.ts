import type { MessageKey } from '../../app/language/messages.ts';
import { say, words } from '../../app/language/spoken.ts';
import type { SayValues } from '../../app/language/translator.ts';

export type { MessageKey } from '../../app/language/messages.ts';
export { say, sayMessage, speak, words } from '../../app/language/spoken.ts';

/** A refusal after which everything is as it was before, and says so. */
export function sayUnchanged(key: MessageKey, values?: SayValues): string {
  return words().sentences([say(key, values), say('problem.unchanged')]);
}

/** A text that counts: `sayCount('fits.revisions', 3)` is "3 revisions". */
export function sayCount(key: MessageKey, count: number): string {
  return say(key, { count });
}

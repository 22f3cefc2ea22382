import type { MessageKey } from '../../app/language/messages.ts';
import { say } from '../../app/language/spoken.ts';

export type { MessageKey } from '../../app/language/messages.ts';
export { say, speak, words } from '../../app/language/spoken.ts';

/** A text that counts: `sayCount('fits.revisions', 3)` is "3 revisions". */
export function sayCount(key: MessageKey, count: number): string {
  return say(key, { count });
}

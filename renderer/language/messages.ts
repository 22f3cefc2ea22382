import type { MessageKey } from '../../language/messages.ts';
import { say } from '../../language/spoken.ts';

export type { MessageKey } from '../../language/messages.ts';
export { say, speak, words } from '../../language/spoken.ts';

/** A text that counts: `sayCount('fits.revisions', 3)` is "3 revisions". */
export function sayCount(key: MessageKey, count: number): string {
  return say(key, { count });
}

import { instantText } from '../language/dates.ts';
import { say } from '../language/messages.ts';
import type { LibraryState } from './library-state.ts';

const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;

/** Whether everything is shared, or what waits; empty without a library. */
export function sharedText(state: LibraryState | null, now: number): string {
  if (!state?.joined) return '';
  if (state.problem && state.problem !== 'away')
    return say('library.problem', { problem: choice(state.problem) });
  if (state.waiting > 0)
    return say(state.problem ? 'library.waiting' : 'library.waiting.soon', { count: state.waiting });
  if (state.sharedAt === null) return say(state.isCalling ? 'library.calling' : 'library.shared.never');
  const age = now - Date.parse(state.sharedAt);
  if (age < MINUTE_MS) return say('library.shared.now');
  if (age < HOUR_MS) return say('library.shared.minutes', { count: Math.floor(age / MINUTE_MS) });
  return say('library.shared.at', { when: instantText(state.sharedAt) });
}

/** A code as the messages' choices write it. */
export function choice(code: string): string {
  return code.replaceAll('-', '_');
}

import { agoText } from '../language/dates.ts';
import { say } from '../language/messages.ts';
import type { LibraryState } from './library-store.ts';

const MINUTE_MS = 60_000;

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
  return say('library.shared.at', { when: agoText(state.sharedAt, now) });
}

/** What of this person's changes goes nowhere, by the role; empty for whoever shares all. */
export function ownText(state: LibraryState | null): string {
  const role = state?.joined?.role;
  return role === 'boatbuilder' || role === 'viewer' ? say('library.reads', { role }) : '';
}

/** A code as the messages' choices write it. */
export function choice(code: string): string {
  return code.replaceAll('-', '_');
}

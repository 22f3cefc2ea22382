import { dateText } from '../../language/dates.ts';
import { say } from '../../language/messages.ts';

/** What was measured before, and on which day where that is known. "Before: 171.0 cm on 3 Mar 2026." */
export function beforeText(value: string, takenOn: string | null | undefined): string {
  return say('measure.before', { value, day: dateText(takenOn) || 'none' });
}

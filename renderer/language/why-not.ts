import { NoHull } from '../../core/hull/no-hull.ts';
import { type MessageKey, say } from './messages.ts';

/** Why something could not be drawn: what is wrong with the hull, or what the program's own error says. */
export function whyNot(error: unknown): string {
  if (error instanceof NoHull) {
    const what = say(error.reason.key as MessageKey, error.reason.values);
    return error.station === null ? what : `${say('boat.station', { number: error.station + 1 })}: ${what}`;
  }
  return error instanceof Error ? error.message : String(error);
}

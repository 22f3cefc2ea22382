import { say } from '../../language/messages.ts';

/** Longest name that a document takes. */
const LONGEST = 120;

/** The name a fit is given: its athletes and its boat. "Ilse Ravn in Club single no. 4". */
export function fitName(boat: string, athletes: readonly string[]): string {
  if (athletes.length === 0) return boat;
  const joined = athletes.reduce((first, second) => say('new-fit.and', { first, second }));
  return say('new-fit.name.default', { athletes: joined, boat }).slice(0, LONGEST);
}

import { say } from './messages.ts';

/** Legs of a stroke's cycle: to the catch, the drive, back to ready. */
export const LEGS = 3;

/** Places along the cycle, in legs, that have a name of their own. */
export const INSTANTS = [
  ['ready', 0],
  ['catch', 1],
  ['exit', 2],
] as const;

/** Where along the stroke `at` (in legs, 0 to 3) lies, in words. */
export function instantName(at: number): string {
  const named = INSTANTS.find(([, place]) => place === at % LEGS);
  if (named) return say(`stroke.${named[0]}`);
  return say(at < 1 ? 'stroke.to-catch' : at < 2 ? 'stroke.drive' : 'stroke.back');
}

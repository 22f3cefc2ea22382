import type { Boat } from './boat-schema.ts';

/** Number of earlier float checks that are kept; older ones are dropped. */
const MOST_EARLIER = 50;

/**
 * The boat after another float check, or after its own was taken off (null): the check that stood until now, with what it
 * made of the hull, is kept among the earlier ones, newest first. The same check worked out again replaces itself.
 */
export function withFloatCheck(boat: Boat, now: Pick<Boat, 'floatCheck' | 'correction'>): Boat {
  const { floatCheck: check, correction, earlierFloatChecks = [] } = boat;
  if (!check || JSON.stringify(check) === JSON.stringify(now.floatCheck)) return { ...boat, ...now };
  const earlier = [{ check, correction }, ...earlierFloatChecks].slice(0, MOST_EARLIER);
  return { ...boat, ...now, earlierFloatChecks: earlier };
}

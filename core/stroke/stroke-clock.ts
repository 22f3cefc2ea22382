/**
 * Share of a stroke's time from ready to the catch, in the drive and from the exit back to ready: the drive takes about
 * two fifths (our estimate). For playing the stroke only; nothing is computed from it.
 */
const LEG_SHARES = [0.3, 0.4, 0.3];

/** Where a stroke stands after so many seconds at a rate (strokes per minute), in legs from 0 (ready) to 3, over and over. */
export function strokeAt(seconds: number, ratePerMin: number): number {
  const turns = (seconds * ratePerMin) / 60;
  let left = turns - Math.floor(turns);
  for (const [leg, share] of LEG_SHARES.entries()) {
    if (left < share) return leg + left / share;
    left -= share;
  }
  return LEG_SHARES.length;
}

/** The inverse of `strokeAt` within one stroke, seconds. */
export function secondsAt(at: number, ratePerMin: number): number {
  const leg = Math.min(LEG_SHARES.length - 1, Math.max(0, Math.floor(at)));
  const before = LEG_SHARES.slice(0, leg).reduce((sum, share) => sum + share, 0);
  return ((before + (at - leg) * LEG_SHARES[leg]!) * 60) / ratePerMin;
}

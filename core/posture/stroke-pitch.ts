import type { Seat } from '../document/seat-schema.ts';
import { type Radians, toRadians } from '../units/angle.ts';
import { STROKE_POSTURE } from './neutral-posture.ts';

/** How far forward an athlete's own limit lets the trunk go, radians; infinite without one. */
export function forwardLimit({ athlete }: Partial<Pick<Seat, 'athlete'>>): number {
  const own = (athlete?.limits ?? []).filter(({ joint }) => joint === 'trunkForward');
  return Math.min(Number.POSITIVE_INFINITY, ...own.map(({ maxDeg }) => toRadians(maxDeg)));
}

/**
 * The trunk's pitch at the catch or the exit, radians: the athlete's own as set, else the usual one, which goes no farther than a
 * personal limit on the trunk lets it. What the coach has set past the limit stays as set: the findings then say stop.
 */
export function strokePitch(
  seat: Pick<Seat, 'stroke'> & Partial<Pick<Seat, 'athlete'>>,
  phase: 'catch' | 'exit',
): Radians {
  const own = phase === 'catch' ? seat.stroke.catchPitchDeg : seat.stroke.exitPitchDeg;
  if (own !== undefined) return toRadians(own);
  return Math.min(STROKE_POSTURE[`${phase}Pitch`], forwardLimit(seat)) as Radians;
}

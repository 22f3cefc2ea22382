import type { Seat } from '../document/seat-schema.ts';
import { type Radians, toRadians } from '../units/angle.ts';
import { STROKE_POSTURE } from './neutral-posture.ts';

/** How far forward an athlete's own limit lets the trunk go, radians; infinite without one. */
export function forwardLimit({ athlete }: Partial<Pick<Seat, 'athlete'>>): number {
  const own = (athlete?.limits ?? []).filter(({ joint }) => joint === 'trunkForward');
  return Math.min(Number.POSITIVE_INFINITY, ...own.map(({ maxDeg }) => toRadians(maxDeg)));
}

/**
 * The trunk's pitch at the catch or the exit, radians: the athlete's own as set, otherwise the usual one within a personal
 * limit of the trunk. A value that the coach sets beyond the limit stays: the findings then say stop.
 */
export function strokePitch(
  seat: Pick<Seat, 'stroke'> & Partial<Pick<Seat, 'athlete'>>,
  phase: 'catch' | 'exit',
): Radians {
  const own = phase === 'catch' ? seat.stroke.catchPitchDeg : seat.stroke.exitPitchDeg;
  if (own !== undefined) return toRadians(own);
  return Math.min(STROKE_POSTURE[`${phase}Pitch`], forwardLimit(seat)) as Radians;
}

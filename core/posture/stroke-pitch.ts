import type { Seat } from '../document/seat-schema.ts';
import { toRadians } from '../units/angle.ts';
import { STROKE_POSTURE } from './neutral-posture.ts';

/** The trunk's pitch that a seat's stances are held at in the stroke, radians: the athlete's own where it is set, else the usual. */
export function strokePitch(
  { catchPitchDeg, exitPitchDeg }: Pick<Seat['stroke'], 'catchPitchDeg' | 'exitPitchDeg'>,
  phase: 'catch' | 'exit',
): number {
  const own = phase === 'catch' ? catchPitchDeg : exitPitchDeg;
  return own === undefined ? STROKE_POSTURE[`${phase}Pitch`] : toRadians(own);
}

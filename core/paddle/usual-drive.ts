import { toRadians } from '../units/angle.ts';

/** Trunk forward in the middle of the drive, where the usual rule for the paddle's length was found: common practice, no source. */
export const USUAL_LEAN = toRadians(35);

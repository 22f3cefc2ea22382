/** From this much on a change helps with an observation (this project's weighing). */
export const HELPS = 0.1;

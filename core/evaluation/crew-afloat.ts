import type { FloatResult } from '../hydrostatics/afloat.ts';
import type { Phase } from '../posture/stance.ts';
import { lazyProperty } from '../units/lazy-property.ts';
import { type BoatState, floatCrew, lazyFloatCrew } from './boat-state.ts';
import type { SeatState } from './seat-state.ts';

/** How a boat lies with its crew in each phase. */
export type AfloatByPhase = Readonly<Record<Phase, FloatResult>>;

const withCatch = lazyProperty<'catch', FloatResult>('catch');
const withExit = lazyProperty<'exit', FloatResult>('exit');

/**
 * Floats a boat with its solved crew. The ready phase is complete. Of the catch only the trim is computed at once (`trimCatch`,
 * metres bow over stern; null where it does not float), because one quantity needs it. The rest of the catch, and the exit, are
 * computed on request: nothing needs them during a drag. `start` (an earlier answer) only saves iterations.
 */
export function crewAfloat(
  boat: BoatState,
  seats: readonly (SeatState | null)[],
  start: AfloatByPhase | null,
): { readonly afloat: AfloatByPhase; readonly trimCatch: number | null } {
  const ready = floatCrew(boat, seats, { phase: 'ready', start: start?.ready ?? null });
  const catchFloat = lazyFloatCrew(boat, seats, { phase: 'catch', start: start?.catch ?? null });
  const rests = 'plane' in catchFloat;
  const atCatch = () => (rests ? catchFloat.tell() : catchFloat);
  const atExit = () => floatCrew(boat, seats, { phase: 'exit', start: start?.exit ?? null });
  return {
    afloat: withExit(withCatch({ ready }, atCatch), atExit),
    trimCatch: rests ? boat.hull.length * catchFloat.plane.alongSlope : null,
  };
}

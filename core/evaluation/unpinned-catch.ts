import { solveStance } from '../posture/solve-stance.ts';
import { type Computed, computeBoat } from './computed-fit.ts';
import type { SeatState } from './seat-state.ts';

/**
 * A computed fit with every catch solved without pins; the same object where nothing is pinned. A pin is read in the ready
 * stance but also holds at the catch, where the angle would be different: slopes there belong to another stance and may be
 * steeper. Doubts are computed from this fit, so that a reading can only narrow them.
 */
export function withUnpinnedCatch(computed: Computed): Computed {
  const { boat, seats, afloat } = computed;
  if (!seats.some((seat) => seat && isPinned(seat))) return computed;
  const unpinned = seats.map((state) => {
    if (!state || !isPinned(state)) return state;
    const { body, seat, frame, stances } = state;
    const atCatch = solveStance({ body, seat: { ...seat, pins: {} }, frame, phase: 'catch' });
    return { ...state, stances: { ...stances, catch: atCatch } };
  });
  return computeBoat(boat, unpinned, afloat);
}

/** Whether a pin holds an angle at the catch; the trunk's pitch there is the stroke's own. */
function isPinned({ seat: { pins } }: SeatState): boolean {
  return Object.entries(pins).some(([name, at]) => name !== 'trunkPitchDeg' && at !== undefined);
}

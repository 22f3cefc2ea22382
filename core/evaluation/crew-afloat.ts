import type { FloatResult, NotAfloat } from '../hydrostatics/afloat.ts';
import type { LazyFloat } from '../hydrostatics/float-at-rest.ts';
import type { Phase } from '../posture/stance.ts';
import { lazyProperty } from '../units/lazy-property.ts';
import { type BoatState, floatCrew, lazyFloatCrew } from './boat-state.ts';
import type { SeatState } from './seat-state.ts';

/** How a boat lies with its crew in each phase. */
export type AfloatByPhase = Readonly<Record<Phase, FloatResult>>;

const withCatch = lazyProperty<'catch', FloatResult>('catch');
const withFound = lazyProperty<'found', LazyFloat | NotAfloat>('found');
const withExit = lazyProperty<'exit', FloatResult>('exit');

/** A boat afloat, and of the catch alone what one quantity needs, at a fraction of its cost. */
interface CrewAfloat {
  readonly afloat: AfloatByPhase;
  /** Bow over stern at the catch, metres; null where it does not float. */
  trimCatch(): number | null;
}

/**
 * Floats a boat with its solved crew: at once in the ready phase, at catch and exit on request, for a drag is drawn at ready.
 * `start` (an earlier answer) only saves iterations.
 */
export function crewAfloat(
  boat: BoatState,
  seats: readonly (SeatState | null)[],
  start: AfloatByPhase | null,
): CrewAfloat {
  const ready = floatCrew(boat, seats, { phase: 'ready', start: start?.ready ?? null });
  const inCatch = withFound({}, () =>
    lazyFloatCrew(boat, seats, { phase: 'catch', start: start?.catch ?? null }),
  );
  const atCatch = () => ('plane' in inCatch.found ? inCatch.found.tell() : inCatch.found);
  const atExit = () => floatCrew(boat, seats, { phase: 'exit', start: start?.exit ?? null });
  return {
    afloat: withExit(withCatch({ ready }, atCatch), atExit),
    trimCatch: () => ('plane' in inCatch.found ? boat.hull.length * inCatch.found.plane.alongSlope : null),
  };
}

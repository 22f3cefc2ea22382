import type { FittingCoordinate } from '../../core/findings/finding.ts';
import type { QuantityId } from '../../core/findings/quantities.ts';
import type { Evaluator } from '../../core/fit/evaluator.ts';
import type { Fit } from '../../core/fit/fit-schema.ts';
import type { Report } from '../../core/fit/report.ts';
import { derivativesTo } from '../../core/proposal/sensitivity.ts';
import { HANDLES, type HandleId } from './handle.ts';

/** The few outcomes that are told at the handle, in this order. */
export const TOLD = [
  'trimRest',
  'frontKnee',
  'kneeShare',
  'trunkRoll',
] as const satisfies readonly QuantityId[];
export type Told = (typeof TOLD)[number];

/** What one step along a coordinate does: changes in SI; null where a value is not computed. */
export interface StepEffect {
  readonly coordinate: FittingCoordinate;
  readonly changes: Readonly<Record<Told, number | null>>;
}

/** Coordinates that a handle moves in any view, each once. */
export function coordinatesOf(handle: HandleId): FittingCoordinate[] {
  return [...new Set(Object.values(HANDLES[handle].views).flat())];
}

/** A step of place is this long (metres), a step of turn this wide (degrees). */
export interface Steps {
  readonly placeM: number;
  readonly turnDeg: number;
}

/** What one step of each of a handle's coordinates does, by central differences of the whole evaluation. */
export function stepEffects(
  handle: HandleId,
  work: { evaluator: Evaluator; fit: Fit; report: Report; seat: number },
  steps: Steps,
): StepEffect[] {
  return coordinatesOf(handle).map((coordinate) => {
    const derivatives = derivativesTo(work, { seat: work.seat, coordinate });
    const by = coordinate.endsWith('Deg') ? steps.turnDeg : steps.placeM;
    const change = (id: Told) => {
      const found = derivatives.find((d) => d.id === id && (d.seat === work.seat || d.seat === null));
      return found ? found.perUnit * by : null;
    };
    return {
      coordinate,
      changes: Object.fromEntries(TOLD.map((id) => [id, change(id)])) as Record<Told, number | null>,
    };
  });
}

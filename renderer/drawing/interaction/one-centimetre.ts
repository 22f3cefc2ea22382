import { type FittingCoordinate, isAngle } from '../../../core/document/coordinates.ts';
import type { Unit } from '../../../core/evaluation/finding.ts';
import type { QuantityId } from '../../../core/evaluation/quantities.ts';
import type { Derivative } from '../../../core/optimise/sensitivity.ts';
import { HANDLES, type HandleId } from '../view/handle.ts';

/** The few outcomes that are told at a handle: what a coach moves that fitting for. */
export const HEADLINE_EFFECTS = {
  kneePad: ['trimRest', 'frontKnee', 'kneeShare', 'trunkRoll'],
  padTurn: ['padInsideHull', 'padToRest'],
  rearRest: ['kneelingKnee', 'rearAnkle', 'rearShare', 'kneeShare'],
  restTurn: ['restInsideHull', 'padToRest'],
  frontFoot: ['frontKnee', 'frontShare', 'kneeShare', 'trimRest'],
  toeOut: ['frontKnee', 'footInsideHull', 'frontShare'],
  lowerHand: ['trimRest', 'kneeShare', 'trunkRoll', 'steadyMoment'],
} as const satisfies Record<HandleId, readonly QuantityId[]>;
export type HeadlineEffect = (typeof HEADLINE_EFFECTS)[HandleId][number];

/** What one step along a coordinate does to one outcome: the change in its own SI unit; null where it is not computed. */
export interface Change {
  readonly id: HeadlineEffect;
  readonly unit: Unit;
  readonly by: number | null;
}

/** What one step along a coordinate does. */
export interface StepEffect {
  readonly coordinate: FittingCoordinate;
  readonly changes: readonly Change[];
}

/** A step of place is this long (metres), a step of turn this wide (degrees). */
export interface Steps {
  readonly placeM: number;
  readonly turnDeg: number;
}

/** The derivatives that are known so far, by coordinate. */
export type KnownDerivatives = Readonly<Partial<Record<FittingCoordinate, readonly Derivative[]>>>;

/** Coordinates that a handle moves in any view, each once. */
export function coordinatesOf(handle: HandleId): FittingCoordinate[] {
  return [...new Set(Object.values(HANDLES[handle].views).flat())];
}

/** What one step of each of a handle's coordinates does to a seat and its boat, by the known derivatives. */
export function stepEffects(
  handle: HandleId,
  { derivatives, seat }: { derivatives: KnownDerivatives; seat: number },
  steps: Steps,
): StepEffect[] {
  return coordinatesOf(handle).map((coordinate) => {
    const by = isAngle(coordinate) ? steps.turnDeg : steps.placeM;
    const changes = HEADLINE_EFFECTS[handle].map((id): Change => {
      const found = derivatives[coordinate]?.find((d) => d.id === id && (d.seat === seat || d.seat === null));
      return { id, unit: found?.unit ?? '1', by: found ? found.perUnit * by : null };
    });
    return { coordinate, changes };
  });
}

import { type FittingCoordinate, isAngle } from '../../../core/document/coordinates.ts';
import type { Lockable } from '../../../core/document/seat-schema.ts';
import type { Unit } from '../../../core/evaluation/finding.ts';
import type { QuantityId } from '../../../core/evaluation/quantities.ts';
import type { Derivative } from '../../../core/optimise/sensitivity.ts';

/** The outcomes that a coach moves each fitting for: the columns of the part's card. */
export const HEADLINE_EFFECTS = {
  kneePad: ['trimRest', 'frontKnee', 'kneeShare', 'trunkRoll'],
  rearRest: ['kneelingKnee', 'rearAnkle', 'rearShare', 'kneeShare'],
  frontFoot: ['trimRest', 'frontKnee', 'kneeShare', 'frontShare'],
  paddle: ['trimRest', 'kneeShare', 'trunkRoll', 'steadyMoment'],
} as const satisfies Record<Lockable, readonly QuantityId[]>;

/** What a turn is made for, where that is in none of its fitting's columns. */
export const TURN_EFFECTS = {
  'kneePad.recessTurnDeg': ['padInsideHull', 'padToRest'],
  'rearRest.turnDeg': ['restInsideHull', 'padToRest'],
} as const satisfies Partial<Record<FittingCoordinate, readonly QuantityId[]>>;

export type OwnEffect = (typeof TURN_EFFECTS)[keyof typeof TURN_EFFECTS][number];
export type HeadlineEffect = (typeof HEADLINE_EFFECTS)[Lockable][number] | OwnEffect;

/** What one step along a coordinate does to one outcome: the change in its own SI unit; null where it is not known. */
export interface StepEffect {
  readonly id: HeadlineEffect;
  readonly unit: Unit;
  readonly by: number | null;
}

/** A step of place is this long (metres), a step of turn this wide (degrees). */
export interface StepSizes {
  readonly placeM: number;
  readonly turnDeg: number;
}

/** The outcomes told of a coordinate: its fitting's columns, or a turn's own. */
export function effectsOf(coordinate: FittingCoordinate, fitting: Lockable): readonly HeadlineEffect[] {
  return hasOwnEffects(coordinate) ? TURN_EFFECTS[coordinate] : HEADLINE_EFFECTS[fitting];
}

/** Whether a coordinate is moved for outcomes that its fitting's columns do not hold. */
export function hasOwnEffects(coordinate: FittingCoordinate): coordinate is keyof typeof TURN_EFFECTS {
  return coordinate in TURN_EFFECTS;
}

/** What one step of a coordinate does to some outcomes of a seat and its boat, by the known derivatives (SI per unit). */
export function stepEffects(
  coordinate: FittingCoordinate,
  ids: readonly HeadlineEffect[],
  { derivatives, seat, steps }: { derivatives: readonly Derivative[]; seat: number; steps: StepSizes },
): StepEffect[] {
  const by = isAngle(coordinate) ? steps.turnDeg : steps.placeM;
  return ids.map((id): StepEffect => {
    const found = derivatives.find((d) => d.id === id && (d.seat === seat || d.seat === null));
    return { id, unit: found?.unit ?? '1', by: found ? found.perUnit * by : null };
  });
}

import { recordOf } from '../units/entries.ts';
import { BODY_LENGTHS, type BodyLength } from './body.ts';
import { RATIO_TABLE, type RatioMeasure } from './ratio-table.ts';

/** A length by the ratio table, metres: the second opinion to the survey. `ratioEstimate('thigh', 1.8)` is 0.441. */
export function ratioEstimate(measure: RatioMeasure, stature: number): number {
  return RATIO_TABLE[measure] * stature;
}

/** Lengths of the figure as shares of stature; absent where the table has no figure for them. */
const FIGURE_RATIOS: Partial<Record<BodyLength, number>> = {
  thigh: RATIO_TABLE.thigh,
  shank: RATIO_TABLE.shank,
  ankleHeight: RATIO_TABLE.ankleHeight,
  footLength: RATIO_TABLE.footLength,
  trunk: RATIO_TABLE.shoulderHeight - RATIO_TABLE.hipHeight,
  upperArm: RATIO_TABLE.upperArm,
  forearm: RATIO_TABLE.forearm,
  headNeck: 1 - RATIO_TABLE.shoulderHeight,
};

/**
 * The figure's lengths by the ratio table for a stature, metres; null where the table gives none (its hand runs to the
 * finger tips, not to the grip).
 */
export function ratioLengths(stature: number): Record<BodyLength, number | null> {
  return recordOf(BODY_LENGTHS, (name) => {
    const ratio = FIGURE_RATIOS[name];
    return ratio === undefined ? null : ratio * stature;
  });
}

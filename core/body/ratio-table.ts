/**
 * Segment lengths as shares of stature. Source: Drillis & Contini 1966, as reproduced in Winter, *Biomechanics and Motor
 * Control of Human Movement*. Its shoulder breadth (0.259) is neither a joint distance nor an outside width and is left
 * out. No sexes, no spreads.
 */
export const RATIO_TABLE = {
  thigh: 0.245,
  shank: 0.246,
  ankleHeight: 0.039,
  hipHeight: 0.53,
  shoulderHeight: 0.818,
  upperArm: 0.186,
  forearm: 0.146,
  hand: 0.108,
  footLength: 0.152,
  eyeHeight: 0.936,
  chinHeight: 0.87,
} as const;
/** A length that the ratio table has. */
export type RatioMeasure = keyof typeof RATIO_TABLE;

import type { StanceUnknown } from '../posture/stance.ts';

/** Where a photograph of the athlete in the boat is taken from. */
export const LOOKS = ['beside', 'behind', 'above'] as const;
/** A photograph of a paddler, by the side from which it is taken. */
export type Look = (typeof LOOKS)[number];

/** The angles of the posture that each look shows straight on. */
export const LOOK_ANGLES: Readonly<Record<Look, readonly StanceUnknown[]>> = {
  beside: ['trunkPitch', 'thighPitch'],
  behind: ['trunkRoll', 'thighRoll'],
  above: ['pelvisYaw'],
};

/** Standard deviation of each quantity after a look, by the quantity's key (`id@seat`), in its unit. */
export type SpreadsAfter = ReadonlyMap<string, number>;

/** The looks at one seat that are not taken yet, each with the spreads after it. */
export interface SeatLooks {
  /** Index of the seat. */
  readonly seat: number;
  readonly looks: Readonly<Partial<Record<Look, SpreadsAfter>>>;
}

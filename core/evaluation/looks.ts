import type { StanceUnknown } from '../posture/stance.ts';

/** Where a photograph of the athlete in the boat is taken from. */
export const LOOKS = ['beside', 'behind', 'above'] as const;
/** A photograph that can be taken of a paddler, by the side it is taken from. */
export type Look = (typeof LOOKS)[number];

/** The angles of the posture that each look shows straight on. */
export const LOOK_ANGLES: Readonly<Record<Look, readonly StanceUnknown[]>> = {
  beside: ['trunkPitch', 'thighPitch'],
  behind: ['trunkRoll', 'thighRoll'],
  above: ['pelvisYaw'],
};

/** Standard deviation that each quantity would have once a look was taken, by the quantity's key (`id@seat`), in its unit. */
export type SpreadsAfter = ReadonlyMap<string, number>;

/** The looks at one seat that have not been taken, each with what it would make of the spreads. */
export interface SeatLooks {
  /** Index of the seat. */
  readonly seat: number;
  readonly looks: Readonly<Partial<Record<Look, SpreadsAfter>>>;
}

import type { Boat } from '../document/boat-schema.ts';
import { hullLengthOf } from '../hull/hull-length.ts';
import { CLASS_LIMITS } from './class-limits.ts';

/** One rule of a boat's class, compared with the boat. */
export interface ClassRule {
  readonly rule: 'greatest-length' | 'least-mass';
  /** Metres or kilograms, as the rule is. */
  readonly value: number;
  /** The class's limit, in the same unit. */
  readonly limit: number;
  /** How far within the limit, in the same unit; negative is outside. */
  readonly within: number;
  /** Whether it is kept: a value at the limit is. */
  readonly kept: boolean;
}

/** How far beyond its limit a value still counts as on it, metres or kilograms: half a millimetre, a gram. */
const ON_THE_LIMIT = { 'greatest-length': 5e-4, 'least-mass': 1e-3 } as const;

/**
 * The dated limits of a boat's class, each compared with the boat's document; empty for a boat of no class. The length is
 * `hullLengthOf`, the mass that of the boat with its fixed gear. A C1 of 5.3 m is 0.1 m too long.
 */
export function classCheck(boat: Boat): ClassRule[] {
  if (boat.boatClass === 'none') return [];
  const limits = CLASS_LIMITS[boat.boatClass];
  const row = (rule: ClassRule['rule'], value: number, limit: number): ClassRule => {
    const within = rule === 'greatest-length' ? limit - value : value - limit;
    return { rule, value, limit, within, kept: within >= -ON_THE_LIMIT[rule] };
  };
  return [
    row('greatest-length', hullLengthOf(boat.hull), limits.greatestLengthM),
    row('least-mass', boat.massKg, limits.leastMassKg),
  ];
}

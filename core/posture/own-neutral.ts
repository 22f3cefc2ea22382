import { NEUTRAL_TERMS } from '../document/neutral-schema.ts';
import type { Seat } from '../document/seat-schema.ts';
import { STANCE_TERMS } from './stance-terms.ts';

/**
 * How this athlete's neutral posture differs from the general one, in tolerances, term by term; undefined where nothing was
 * learnt.
 */
export function ownStrays({ athlete }: Pick<Seat, 'athlete'>): readonly number[] | undefined {
  const neutral = athlete?.neutral;
  if (!neutral || neutral.setAside) return undefined;
  return STANCE_TERMS.map((_, t) => neutral.strays[t] ?? 0);
}

/**
 * Roots of the covariance of the terms' targets, in tolerances: columns, one value a term. In general they vary independently
 * by one tolerance each; after learning, by the covariance that the pictures left.
 */
export function strayRoots({ athlete }: Pick<Seat, 'athlete'>): number[][] {
  const neutral = athlete?.neutral;
  return STANCE_TERMS.map((_, c) =>
    STANCE_TERMS.map((_, t) => {
      const learnt = neutral && !neutral.setAside && c < NEUTRAL_TERMS && t < NEUTRAL_TERMS;
      return learnt ? neutral.roots[c * NEUTRAL_TERMS + t]! : c === t ? 1 : 0;
    }),
  );
}

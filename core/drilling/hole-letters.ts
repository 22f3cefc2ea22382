import type { PlanHole } from './drilling-model.ts';
import type { DrillingPlan } from './drilling-plan.ts';

/** A hole with the letter that is painted beside it. */
export interface LetteredHole extends PlanHole {
  readonly letter: string;
}

/** The holes of a plan with letters, from the bow aft and from port to starboard: A to Z, then AA, AB and on. */
export function letteredHoles({ used }: Pick<DrillingPlan, 'used'>): LetteredHole[] {
  return used.toSorted((a, b) => b.x - a.x || b.y - a.y).map((hole, k) => ({ ...hole, letter: letterOf(k) }));
}

function letterOf(place: number): string {
  const last = String.fromCharCode(65 + (place % 26));
  return place < 26 ? last : `${letterOf(Math.floor(place / 26) - 1)}${last}`;
}

import type { MessageKey } from './messages.ts';

/** Cautions that go with every picture an athlete sees, on the page and on paper. */
export const ATHLETE_CAUTIONS = [
  'athlete-caution.body',
  'athlete-caution.strap',
  'athlete-caution.water',
] as const satisfies readonly MessageKey[];

import type { OffsetsProblem } from '../document/check-offsets.ts';
import type { Message } from '../document/message.ts';

/** Offsets that make no hull. `reason` says why; `station` is the index of the station at fault, null for the whole table. */
export interface NoHull {
  readonly kind: 'no-hull';
  readonly reason: Message;
  readonly station: number | null;
}

/** The result for a table of offsets with this problem. */
export function noHull({ station, key, values }: OffsetsProblem): NoHull {
  return { kind: 'no-hull', reason: { key, ...(values ? { values } : {}) }, station };
}

import type { OffsetsProblem } from '../document/check-offsets.ts';
import type { Message } from '../document/message.ts';

/** Offsets that are no hull: `reason` says why, `station` counts from 0 and is null where it is the whole table. */
export interface NoHull {
  readonly kind: 'no-hull';
  readonly reason: Message;
  readonly station: number | null;
}

/** What a table of offsets with this problem is. */
export function noHull({ station, key, values }: OffsetsProblem): NoHull {
  return { kind: 'no-hull', reason: { key, ...(values ? { values } : {}) }, station };
}

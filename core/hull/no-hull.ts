import type { Message } from '../document/message.ts';

/** Offsets that are no hull: `reason` says why, `station` counts from 0 and is null where it is the whole table. */
export class NoHull extends RangeError {
  readonly reason: Message;
  readonly station: number | null;
  constructor({ station, key, values }: Message & { readonly station: number | null }) {
    super(`${station === null ? '' : `station ${station + 1}: `}${key}`);
    this.reason = { key, ...(values ? { values } : {}) };
    this.station = station;
  }
}

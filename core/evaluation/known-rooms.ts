import type { Boat } from '../document/boat-schema.ts';
import type { HullFace } from '../hull/broader-face.ts';
import type { Part } from '../parts/part.ts';
import { type PartRoom, roomIn } from './part-clearances.ts';

/** The room of a part in one boat, by the fitting (an object of the document) that it is the part of. */
export type RoomOf = (part: Part, fitting: object) => PartRoom;

/**
 * Measures the room of parts in one boat and keeps it while the fitting is the same object and its part has not moved: a drag
 * moves one fitting, and the room of the others stays.
 */
export function knownRooms(place: { boat: Boat; hull: HullFace }): RoomOf {
  const measure = roomIn(place);
  const known = new WeakMap<object, { part: Part; room: PartRoom }>();
  return (part, fitting) => {
    const before = known.get(fitting);
    if (before && standsAlike(before.part, part)) return before.room;
    const room = measure(part);
    known.set(fitting, { part, room });
    return room;
  };
}

/** Whether two parts have every corner at the same place. */
function standsAlike({ vertices: a }: Part, { vertices: b }: Part): boolean {
  return a.every((corner, i) => {
    const other = b[i]!;
    return corner.x === other.x && corner.y === other.y && corner.z === other.z;
  });
}

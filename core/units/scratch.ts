/**
 * Room that a computation writes over, kept for the next one. It is the only thing that the core keeps between two calls, and no
 * answer may depend on it: whoever borrows it writes before reading and gives back nothing that lies in it.
 */
export interface Scratch<Room> {
  /**
   * Lends the room while `use` runs: the spare one where it fits, a new one else. A computation within a computation gets a room
   * of its own. After an exception the room is let go.
   */
  lend<Result>(room: { fits(spare: Room): boolean; make(): Room }, use: (room: Room) => Result): Result;
}

/** A place for one spare room. A hand on the drawing asks for over a hundred searches a second: each would make its room again. */
export function scratch<Room>(): Scratch<Room> {
  let spare: Room | null = null;
  return {
    lend({ fits, make }, use) {
      const room = spare !== null && fits(spare) ? spare : make();
      spare = null;
      const result = use(room);
      spare = room;
      return result;
    },
  };
}

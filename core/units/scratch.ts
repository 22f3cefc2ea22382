/**
 * Working memory that one computation leaves to the next. No result may depend on it: a borrower writes before it reads, and
 * returns nothing that lies in it.
 */
export interface Scratch<Room> {
  /**
   * Lends the memory while `use` runs: the spare one if it fits, otherwise a new one. A nested computation gets memory of its
   * own. After an exception the memory is dropped.
   */
  lend<Result>(room: { fits(spare: Room): boolean; make(): Room }, use: (room: Room) => Result): Result;
}

/**
 * A holder of one spare piece of memory. A drag asks for over a hundred searches a second; without it each would allocate
 * again.
 */
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

/** So many things a search gives at most. */
export const MOST_FOUND = 1000;

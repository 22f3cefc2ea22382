/** The most that one call of a list gives, which is more than any club has. */
export const WHOLE_LIST = { limit: 1000 } as const;

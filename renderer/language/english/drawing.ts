/** What stands on the drawing itself. */
export const DRAWING = {} as const;

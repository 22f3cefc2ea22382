/** Where a page that has ways of its own (papers, showing) puts them in the head; in a narrow window, in its menu. */
export const PAGE_TOOLS_ID = 'page-tools';
/** Where a page puts what is always in sight: undo and redo. */
export const PAGE_STEPS_ID = 'page-steps';

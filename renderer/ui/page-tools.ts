/** The element of the head for a page's own links (papers, the athlete's page); in a narrow window they are in its menu. */
export const PAGE_TOOLS_ID = 'page-tools';
/** The element for tools that are always visible: undo and redo. */
export const PAGE_STEPS_ID = 'page-steps';

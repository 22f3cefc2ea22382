/** Where a page that has tools of its own (undo, papers) puts them in the head. */
export const PAGE_TOOLS_ID = 'page-tools';

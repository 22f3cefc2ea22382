/** The header in which a tab shows the loopback server its secret. A page of another origin cannot send it. */
export const SESSION_HEADER = 'x-kneelwright-session';
/** Under which name a tab keeps its secret, in the storage that belongs to that tab alone. */
export const SESSION_KEY = 'kneelwright.session';

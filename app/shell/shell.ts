/** A file on its way from the program to the person. */
export interface OutgoingFile {
  /** A plain file name, no folders. */
  readonly name: string;
  readonly mime: string;
  readonly bytes: Uint8Array;
}

/** The same, too large for memory: a private file of the program's, which goes once it has been handed over. */
export interface OutgoingPath {
  readonly name: string;
  readonly mime: string;
  readonly path: string;
}

/** Where an outgoing file went. */
type Delivery =
  /** Written where the person chose in a dialog. */
  | { readonly kind: 'saved'; readonly path: string }
  /** Waiting at this path of the page's own origin, to be fetched once. */
  | { readonly kind: 'download'; readonly href: string }
  | { readonly kind: 'cancelled' };

/** Which files a person may choose from. */
interface FileKind {
  readonly title: string;
  /** Endings without the dot. */
  readonly extensions: readonly string[];
  /** Larger files are refused before they are read. */
  readonly maxBytes: number;
}

/** What became of asking for a file. */
export type Reception = 'received' | 'cancelled' | 'too-large';

/**
 * All that differs between the two shells. Paths come from the person's own dialogs, never from the page. Printing
 * is not here: in both shells the page prints itself.
 */
export interface Shell {
  readonly kind: 'electron' | 'loopback';
  /** Hands a file to the person. */
  deliver(file: OutgoingFile | OutgoingPath): Promise<Delivery>;
  /**
   * Takes a file from the person and puts it at `to`, for this program alone. `upload` is the handle of a file the page
   * has already sent (loopback); null asks with a native dialog (Electron) and is `cancelled` where there is none.
   */
  receive(kind: FileKind, file: { upload: string | null; to: string }): Promise<Reception>;
  /** The system's own place for secrets, where there is one. Without it a private file keeps them. */
  readonly secrets?: Secrets;
  /** Ends the program after the current call has been answered. */
  quit(): void;
}

/** Encrypts what only this person on this computer may read. */
export interface Secrets {
  seal(text: string): Uint8Array;
  open(sealed: Uint8Array): string;
}

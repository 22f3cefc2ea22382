import type { CallInput, CallName, CallOutput } from './contract.ts';
import type { CallResult } from './result.ts';

/**
 * How the page reaches the program. Types only; the two shells give the same contract two ways in:
 *
 * - **Electron**: the preload sets `window.kneelwright` to a `Bridge`. Use its named functions.
 * - **Loopback**: `window.kneelwright` is undefined. Send `POST /call` (same origin, with the tab's secret in the header
 *   of `session.ts`), `content-type: application/json` and the body `{"name": "...", "input": {...}}`; the answer's body is always a
 *   `CallResult` as JSON, whatever the HTTP status. A file the user picks is first sent as the raw body of
 *   `POST /upload` (`content-type: application/octet-stream`), which answers `CallResult<{ upload: string }>`; that
 *   handle is then passed to the call that reads the file. A delivery of kind `download` is a path on the same origin
 *   to be followed once with `<a href download>`.
 *
 * A call never throws for an expected failure: it resolves to a `CallResult`. Only a lost program (its process gone)
 * rejects the promise; show that as "the program has stopped; what you last saw as kept is kept".
 */
export interface Bridge {
  call<N extends CallName>(name: N, input: CallInput<N>): Promise<CallResult<CallOutput<N>>>;
  /** Calls the listener for each choice in the native menu; gives back a function that stops it. */
  onMenu(listener: (command: MenuCommand) => void): () => void;
}

/** What the native menu may ask of the page. The loopback shell has no native menu; the page's own controls serve. */
export const MENU_COMMANDS = [
  'new-fit',
  'open-roster',
  'save-revision',
  'print',
  'export-everything',
  'import-bundle',
  'undo',
  'redo',
  'show-help',
] as const;

export type MenuCommand = (typeof MENU_COMMANDS)[number];

declare global {
  interface Window {
    /** Set by Electron's preload only. */
    readonly kneelwright?: Bridge;
  }
}

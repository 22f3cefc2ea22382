import { randomUUID } from 'node:crypto';
import { renameSync, rmSync, statSync } from 'node:fs';
import type { OutgoingFile, OutgoingPath, Shell } from '../shell/shell.ts';

/** Files waiting to be fetched or read; of more, the oldest goes. */
const MOST_WAITING = 4;

/** The shell of the loopback server, with the two shelves that files pass over on their way out and in. */
export interface LoopbackShell extends Shell {
  /** Takes a delivered file off its shelf; null if there is none, or it has been fetched already. */
  fetch(handle: string): OutgoingFile | OutgoingPath | null;
  /** Puts a private file that the page has sent on its shelf; gives the handle for it. */
  accept(path: string): string;
}

/** Where a delivered file waits, on the page's own origin. */
export const DELIVERY_PATH = '/delivery/';

/** Makes the shell; `quit` is called when a page asks the program to end. */
export function createLoopbackShell(quit: () => void): LoopbackShell {
  const outgoing = new Map<string, OutgoingFile | OutgoingPath>();
  const incoming = new Map<string, { readonly path: string }>();
  return {
    kind: 'loopback',
    quit,
    async deliver(file) {
      return { kind: 'download', href: DELIVERY_PATH + shelve(outgoing, file) };
    },
    async receive({ maxBytes }, { upload, to }) {
      const file = upload === null ? null : take(incoming, upload);
      if (!file) return 'cancelled';
      if (statSync(file.path).size > maxBytes) {
        drop(file);
        return 'too-large';
      }
      renameSync(file.path, to);
      return 'received';
    },
    fetch: (handle) => take(outgoing, handle),
    accept: (path) => shelve(incoming, { path }),
  };
}

function shelve<T>(shelf: Map<string, T>, thing: T): string {
  const handle = randomUUID();
  shelf.set(handle, thing);
  const [oldest] = shelf.keys();
  if (shelf.size > MOST_WAITING && oldest) drop(take(shelf, oldest));
  return handle;
}

function drop(thing: unknown): void {
  if (typeof thing === 'object' && thing !== null && 'path' in thing)
    rmSync(String(thing.path), { force: true });
}

function take<T>(shelf: Map<string, T>, handle: string): T | null {
  const thing = shelf.get(handle) ?? null;
  shelf.delete(handle);
  return thing;
}

import { readFileSync, statSync } from 'node:fs';
import { basename } from 'node:path';
import type { BrowserWindow } from 'electron';
import type { Reception, Shell } from '../shell/shell.ts';
import { writeWhole } from '../shell/write-whole.ts';
import type { ElectronApi } from './electron-api.ts';

/** The desktop's shell, and the one thing that comes to it from outside the page. */
export interface ElectronShell extends Shell {
  /** A file that the system asked this program to open; the next `receive` gives it instead of asking. */
  expectFile(path: string): void;
}

/** Makes the shell. `window` gives the window that dialogs belong to. */
export function createElectronShell(
  { app, dialog }: ElectronApi,
  window: () => BrowserWindow | null,
): ElectronShell {
  let expected: string | null = null;
  return {
    kind: 'electron',
    quit: () => setImmediate(() => app.quit()),
    expectFile(path) {
      expected = path;
    },
    async deliver({ name, bytes }) {
      const owner = window();
      const options = { defaultPath: name };
      const chosen = await (owner ? dialog.showSaveDialog(owner, options) : dialog.showSaveDialog(options));
      if (chosen.canceled || !chosen.filePath) return { kind: 'cancelled' };
      writeWhole(chosen.filePath, bytes, 'shared');
      return { kind: 'saved', path: chosen.filePath };
    },
    async receive({ title, extensions, maxBytes }) {
      const waiting = expected;
      expected = null;
      if (waiting !== null) return readWithin(waiting, maxBytes);
      const owner = window();
      const options = { title, filters: [{ name: title, extensions: [...extensions] }] };
      const chosen = await (owner ? dialog.showOpenDialog(owner, options) : dialog.showOpenDialog(options));
      const [path] = chosen.filePaths;
      return chosen.canceled || !path ? { kind: 'cancelled' } : readWithin(path, maxBytes);
    },
  };
}

function readWithin(path: string, maxBytes: number): Reception {
  if (statSync(path).size > maxBytes) return { kind: 'too-large' };
  return { kind: 'file', file: { name: basename(path), bytes: readFileSync(path) } };
}

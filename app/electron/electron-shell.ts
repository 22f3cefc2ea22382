import { rmSync } from 'node:fs';
import { chmod, copyFile, rename, stat } from 'node:fs/promises';
import type { BrowserWindow } from 'electron';
import { atomicWrite } from '../shell/atomic-write.ts';
import { makePrivateFile } from '../shell/private-files.ts';
import type { Reception, Shell } from '../shell/shell.ts';
import type { ElectronApi } from './electron-api.ts';

/** The desktop's shell, and the one thing that comes to it from outside the page. */
export interface ElectronShell extends Shell {
  /** A file that the system asked this program to open; the next `receive` gives it instead of asking. */
  expectFile(path: string): void;
}

/** Makes the shell. `window` gives the window that dialogs belong to. */
export function createElectronShell(
  { app, dialog, safeStorage }: ElectronApi,
  window: () => BrowserWindow | null,
): ElectronShell {
  let expected: string | null = null;
  return {
    kind: 'electron',
    get secrets() {
      if (!safeStorage?.isEncryptionAvailable()) return undefined;
      return {
        seal: (text: string) => safeStorage.encryptString(text),
        open: (sealed: Uint8Array) => safeStorage.decryptString(Buffer.from(sealed)),
      };
    },
    quit: () => setImmediate(() => app.quit()),
    expectFile(path) {
      expected = path;
    },
    async deliver(file) {
      const { name } = file;
      const owner = window();
      const options = { defaultPath: name };
      const chosen = await (owner ? dialog.showSaveDialog(owner, options) : dialog.showSaveDialog(options));
      const path = chosen.canceled ? '' : chosen.filePath;
      if ('path' in file) await moveFile(file.path, path);
      else if (path) atomicWrite(path, file.bytes, 'shared');
      if (!path) return { kind: 'cancelled' };
      return { kind: 'saved', path };
    },
    async receive({ title, extensions, maxBytes }, { to }) {
      const waiting = expected;
      expected = null;
      if (waiting !== null) return copied(waiting, { to, maxBytes });
      const owner = window();
      const options = { title, filters: [{ name: title, extensions: [...extensions] }] };
      const chosen = await (owner ? dialog.showOpenDialog(owner, options) : dialog.showOpenDialog(options));
      const [path] = chosen.filePaths;
      return chosen.canceled || !path ? 'cancelled' : copied(path, { to, maxBytes });
    },
  };
}

/** Copies a file beside its new place and then into it; nowhere if `to` is empty. It goes from where it was. */
async function moveFile(from: string, to: string): Promise<void> {
  try {
    if (!to) return;
    await copyFile(from, `${to}.part`);
    await rename(`${to}.part`, to);
  } catch (error) {
    rmSync(`${to}.part`, { force: true });
    throw error;
  } finally {
    rmSync(from, { force: true });
  }
}

/** A copy, so that what was previewed is what is imported, whatever becomes of the file. */
async function copied(path: string, { to, maxBytes }: { to: string; maxBytes: number }): Promise<Reception> {
  if ((await stat(path)).size > maxBytes) return 'too-large';
  makePrivateFile(to);
  await copyFile(path, to);
  // The copy takes over the mode of what is copied on some systems.
  await chmod(to, 0o600);
  return 'received';
}

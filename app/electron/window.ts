import type { BrowserWindow } from 'electron';
import { SENTENCES } from '../services/sentences.ts';
import { say } from '../shell/say.ts';
import { type ElectronApi, PAGE_HOME } from './electron-api.ts';
import { guardContents } from './guards.ts';
import { keepWindowState, readWindowState } from './window-state.ts';

/** Opens the program's window on its page: isolated, sandboxed, without Node. */
export function openWindow(electron: ElectronApi, at: { folder: string; preload: string }): BrowserWindow {
  const before = readWindowState(electron, at.folder);
  const { maximized = false, ...bounds } = before ?? { width: 1440, height: 900 };
  const window = new electron.BrowserWindow({
    ...bounds,
    minWidth: 1024,
    minHeight: 700,
    show: false,
    title: 'Kneelwright',
    webPreferences: {
      preload: at.preload,
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      webviewTag: false,
      webSecurity: true,
      navigateOnDragDrop: false,
      // A dictionary would be fetched from the network.
      spellcheck: false,
    },
  });
  if (maximized) window.maximize();
  guardContents(window.webContents);
  window.once('ready-to-show', () => window.show());
  window.on('close', () => keepWindowState(window, at.folder));
  window.webContents.on('render-process-gone', () => void offerToReopen(electron, window));
  void window.loadURL(PAGE_HOME);
  return window;
}

/** The page is gone but the store is not: everything acknowledged is kept, and the page can be opened again. */
async function offerToReopen({ app, dialog }: ElectronApi, window: BrowserWindow): Promise<void> {
  const { response } = await dialog.showMessageBox(window, {
    type: 'warning',
    message: SENTENCES['page-gone'],
    buttons: [say('menu.open-again'), say('menu.quit')],
  });
  if (response === 0) void window.loadURL(PAGE_HOME);
  else app.quit();
}

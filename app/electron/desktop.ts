import { join } from 'node:path';
import type { BrowserWindow } from 'electron';
import type { MenuCommand } from '../contract/bridge.ts';
import { openProgram } from '../services/open-program.ts';
import { dataFolder } from '../shell/data-folder.ts';
import { listPageFiles } from '../shell/page-files.ts';
import { answerCalls } from './call-channel.ts';
import { type ElectronApi, MENU_CHANNEL } from './electron-api.ts';
import { createElectronShell } from './electron-shell.ts';
import { guardSession } from './guards.ts';
import { setMenu } from './menu.ts';
import { announceScheme, servePage } from './page-protocol.ts';
import { openWindow } from './window.ts';

/** The ending of a bundle file, which the system opens with this program. */
const BUNDLE_ENDING = '.kneelwright';

/**
 * The desktop program: one instance, one window, one store. `argv` is the process's own command line; a page or a
 * bundle named there or by the system is opened. Gives nothing back; Electron's events end it.
 */
export async function runDesktop(electron: ElectronApi, argv: readonly string[]): Promise<void> {
  const { app } = electron;
  if (!app.requestSingleInstanceLock()) return app.quit();
  app.enableSandbox();
  announceScheme(electron);
  let window: BrowserWindow | null = null;
  const shell = createElectronShell(electron, () => window);
  const choose = (command: MenuCommand) => window?.webContents.send(MENU_CHANNEL, command);
  const openBundle = (path: string | undefined) => {
    if (path === undefined) return;
    shell.expectFile(path);
    choose('import-bundle');
  };
  app.on('second-instance', (_event, otherArgv) => {
    if (window?.isMinimized()) window.restore();
    window?.focus();
    openBundle(bundleIn(otherArgv));
  });
  app.on('open-file', (event, path) => {
    event.preventDefault();
    openBundle(path);
  });
  app.on('window-all-closed', () => app.quit());

  await app.whenReady();
  const root = app.getAppPath();
  const folder = dataFolder(optionIn(argv, '--data='));
  const opened = openProgram({ root, folder, shell });
  if (opened.kind === 'refused') {
    electron.dialog.showErrorBox('Kneelwright', opened.sentence);
    return app.exit(1);
  }
  app.on('will-quit', () => opened.close());
  guardSession(electron);
  servePage(electron, listPageFiles(join(root, 'renderer/dist')));
  answerCalls(electron, opened.program);
  setMenu(electron, choose);
  window = openWindow(electron, { folder, preload: join(root, 'app/dist/electron/preload.cjs') });
  window.on('closed', () => {
    window = null;
  });
  const named = bundleIn(argv);
  if (named) window.webContents.once('did-finish-load', () => openBundle(named));
}

function optionIn(argv: readonly string[], prefix: string): string | null {
  return argv.find((argument) => argument.startsWith(prefix))?.slice(prefix.length) || null;
}

function bundleIn(argv: readonly string[]): string | undefined {
  return argv.slice(1).find((argument) => !argument.startsWith('-') && argument.endsWith(BUNDLE_ENDING));
}

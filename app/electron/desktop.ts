import { mkdirSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { BrowserWindow } from 'electron';
import type { MenuCommand } from '../contract/bridge.ts';
import { readDisplayFile, speakAsChosen } from '../services/display.ts';
import { openProgram } from '../services/open-program.ts';
import { SENTENCES } from '../services/sentences.ts';
import { dataFolder } from '../shell/data-folder.ts';
import { faultForLog, openLog } from '../shell/log-file.ts';
import { listPageFiles } from '../shell/page-files.ts';
import { profileFolder } from '../shell/profile-folder.ts';
import { say } from '../shell/say.ts';
import { answerCalls } from './call-channel.ts';
import { type ElectronApi, MENU_CHANNEL } from './electron-api.ts';
import { createElectronShell, type ElectronShell } from './electron-shell.ts';
import { guardSession } from './guards.ts';
import type { LauncherReport } from './launcher-report.ts';
import { setMenu } from './menu.ts';
import { announceScheme, servePage } from './page-protocol.ts';
import { openWindow } from './window.ts';

/** The ending of a bundle file, which the system opens with this program. */
const BUNDLE_ENDING = '.kneelwright';

type Report = (report: LauncherReport) => void;

/**
 * The desktop program: one window and one store for each data folder. `argv` is the process's own command line; a
 * bundle named there or by the system is opened. Electron's events end it. Never rejects: a fault on the way is shown,
 * noted in the log and reported to the launcher, and the program ends.
 */
export async function startDesktop(
  electron: ElectronApi,
  argv: readonly string[],
  report: Report,
): Promise<void> {
  const folder = dataFolder(optionIn(argv, '--data='));
  try {
    await runDesktop(electron, { argv, folder, report });
  } catch (error) {
    const log = openLog(folder);
    log.write(`desktop: ${faultForLog(error)}`);
    const detail = error instanceof Error ? error.message : String(error);
    report({ kind: 'failed', detail: say('page.fault', { detail }) });
    electron.dialog.showErrorBox('Kneelwright', SENTENCES['desktop-failed'](log.path));
    electron.app.exit(1);
  }
}

async function runDesktop(
  electron: ElectronApi,
  { argv, folder, report }: { argv: readonly string[]; folder: string; report: Report },
): Promise<void> {
  const { app } = electron;
  keepProfileApart(electron, folder);
  if (!app.requestSingleInstanceLock()) {
    report({ kind: 'already-open' });
    return app.quit();
  }
  // Chromium's own texts, such as those of a date field, follow the chosen language from the next start on.
  const { language } = readDisplayFile({ store: { folder } });
  if (language !== 'system') app.commandLine.appendSwitch('lang', language);
  app.enableSandbox();
  announceScheme(electron);
  const seen: { window: BrowserWindow | null } = { window: null };
  const shell = createElectronShell(electron, () => seen.window);
  const choose = (command: MenuCommand) => seen.window?.webContents.send(MENU_CHANNEL, command);
  const early = openFromOutside(electron, { shell, choose, window: () => seen.window });

  await app.whenReady();
  const root = app.getAppPath();
  const opened = openProgram({ root, folder, shell });
  if (opened.kind === 'refused') {
    report({ kind: 'refused', sentence: opened.sentence });
    electron.dialog.showErrorBox('Kneelwright', opened.sentence);
    return app.exit(1);
  }
  app.on('will-quit', () => opened.close());
  guardSession(electron);
  servePage(electron, listPageFiles(join(root, 'renderer/dist')));
  answerCalls(electron, opened.program, () => report({ kind: 'ready' }));
  await speakAsChosen(opened.program);
  setMenu(electron, choose);
  const window = openWindow(electron, { folder, preload: join(root, 'app/dist/electron/preload.cjs') });
  seen.window = window;
  window.on('closed', () => {
    seen.window = null;
  });
  window.webContents.once('did-finish-load', () => early(bundleIn(argv, process.cwd())));
}

/** The lock on one running program lies in the profile, so each data folder has a lock of its own. */
function keepProfileApart({ app }: ElectronApi, folder: string): void {
  const profile = profileFolder(folder);
  mkdirSync(profile, { recursive: true, mode: 0o700 });
  app.setPath('userData', profile);
  app.setPath('sessionData', profile);
}

/**
 * Takes bundles that the system opens with this program, also before there is a window. Gives the function to call
 * once the page is there: it opens what has come until then, or the bundle it is given.
 */
function openFromOutside(
  { app }: ElectronApi,
  to: { shell: ElectronShell; choose: (command: MenuCommand) => void; window: () => BrowserWindow | null },
): (named: string | undefined) => void {
  let loaded = false;
  let early: string | undefined;
  const openBundle = (path: string | undefined) => {
    if (path === undefined) return;
    if (!loaded) {
      early = path;
      return;
    }
    to.shell.expectFile(path);
    to.choose('import-bundle');
  };
  app.on('second-instance', (_event, otherArgv, workingFolder) => {
    const window = to.window();
    if (window?.isMinimized()) window.restore();
    window?.focus();
    openBundle(bundleIn(otherArgv, workingFolder));
  });
  // macOS names a bundle by this event only, and long before there is a window.
  app.on('open-file', (event, path) => {
    event.preventDefault();
    openBundle(path);
  });
  app.on('window-all-closed', () => app.quit());
  return (named) => {
    loaded = true;
    openBundle(early ?? named);
  };
}

function optionIn(argv: readonly string[], prefix: string): string | null {
  return argv.find((argument) => argument.startsWith(prefix))?.slice(prefix.length) || null;
}

/** The bundle named on a command line that was given in `folder`; undefined if there is none. */
function bundleIn(argv: readonly string[], folder: string | undefined): string | undefined {
  const named = argv
    .slice(1)
    .find((argument) => !argument.startsWith('-') && argument.endsWith(BUNDLE_ENDING));
  return named && resolve(folder ?? '', named);
}

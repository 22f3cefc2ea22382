import { cpSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { startDesktop } from '../../../app/electron/desktop.ts';
import { CALL_CHANNEL, PAGE_HOME } from '../../../app/electron/electron-api.ts';
import type { LauncherReport } from '../../../app/electron/launcher-report.ts';
import { electronStandIn, type StandIn } from './electron-stand-in.ts';
import { writePage } from './page-folder.ts';
import type { WayIn } from './way-in.ts';

const ROOT = join(import.meta.dirname, '../../..');

export interface ThroughElectron extends WayIn {
  readonly standIn: StandIn;
  /** What the program told its launcher. */
  readonly reports: readonly LauncherReport[];
  /** Sends as some other frame than the window's own page would. */
  sendFrom(frame: { url: string; parent: unknown } | null, name: unknown, input: unknown): Promise<unknown>;
}

/** Lays out what is installed: package.json, assets and a page. */
function installedIn(folder: string): string {
  const root = join(folder, 'installed');
  mkdirSync(root, { recursive: true });
  cpSync(join(ROOT, 'package.json'), join(root, 'package.json'));
  cpSync(join(ROOT, 'assets'), join(root, 'assets'), { recursive: true });
  writePage(join(root, 'renderer/dist'));
  return root;
}

/** Runs the desktop shell's real code against the stand-in, with its data in `folder`. */
export async function throughElectron(
  folder: string,
  more: { argv?: string[]; before?: (standIn: StandIn) => void } = {},
): Promise<ThroughElectron> {
  const standIn = electronStandIn(installedIn(folder));
  // Chromium's own files lie in the user's cache; a test has one of its own.
  process.env.XDG_CACHE_HOME = join(folder, 'cache');
  const reports: LauncherReport[] = [];
  const argv = ['kneelwright', `--data=${join(folder, 'data')}`, ...(more.argv ?? [])];
  more.before?.(standIn);
  await startDesktop(standIn.electron, argv, (report) => reports.push(report));
  standIn.windows[0]?.webContents.emit('did-finish-load');

  async function sendFrom(frame: { url: string; parent: unknown } | null, name: unknown, input: unknown) {
    const handler = standIn.ipcHandlers.get(CALL_CHANNEL)!;
    // What passes between processes is copied, as Electron copies it.
    return structuredClone(
      await handler({ senderFrame: frame }, structuredClone(name), structuredClone(input)),
    );
  }
  const send = async (name: unknown, input: unknown) =>
    (await sendFrom({ url: PAGE_HOME, parent: null }, name, input)) as never;
  return {
    standIn,
    reports,
    sendFrom,
    send,
    call: send,
    async fetchDelivery(delivery) {
      if (delivery.kind !== 'saved') throw new Error(`delivered as ${delivery.kind}`);
      return readFileSync(delivery.path);
    },
    async offer(bytes) {
      const path = join(folder, 'offered.kneelwright');
      writeFileSync(path, bytes);
      standIn.choices.open = path;
      return null;
    },
    quitAsked: () => standIn.app.quitCalls > 0,
    async close() {
      standIn.app.emit('will-quit');
    },
  };
}

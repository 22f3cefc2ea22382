import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { MenuCommand } from '../../../app/contract/bridge.ts';
import { startDesktop } from '../../../app/electron/desktop.ts';
import { MENU_CHANNEL } from '../../../app/electron/electron-api.ts';
import { createMenuRelay } from '../../../app/electron/menu-relay.ts';
import { logPath } from '../../../app/shell/log-file.ts';
import { profileFolder } from '../../../app/shell/profile-folder.ts';
import { electronStandIn } from '../shells/electron-stand-in.ts';
import { throughElectron } from '../shells/through-electron.ts';
import { temporaryFolder } from '../temporary.ts';

const IMPORT = { channel: MENU_CHANNEL, args: ['import-bundle'] };

describe('a bundle that the system opens with the program', () => {
  it('is offered by the page when it was named before there was a window, as macOS does', async () => {
    const folder = temporaryFolder();
    const bundle = join(folder, 'cold.kneelwright');
    writeFileSync(bundle, 'no bundle');
    let prevented = false;
    const way = await throughElectron(folder, {
      before: ({ app }) => {
        app.whenReady = async () => {
          app.emit('open-file', { preventDefault: () => (prevented = true) }, bundle);
        };
      },
    });
    expect(prevented).toBe(true);
    expect(way.standIn.windows[0]!.sent).toEqual([IMPORT]);
    expect(await way.call('bundle.preview', { upload: null })).toMatchObject({
      ok: false,
      error: { problems: [{ message: expect.stringContaining('Not a bundle') }] },
    });
    await way.close();
  });

  it('is found by a name that is relative to where the second start was made', async () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, 'near.kneelwright'), 'no bundle');
    const way = await throughElectron(folder);
    way.standIn.app.emit('second-instance', {}, ['kneelwright', 'near.kneelwright'], folder);
    expect(way.standIn.windows[0]!.sent).toEqual([IMPORT]);
    expect(await way.call('bundle.preview', { upload: null })).toMatchObject({
      error: { problems: [{ message: expect.stringContaining('Not a bundle') }] },
    });
    await way.close();
  });

  it('waits in the page until the page listens', () => {
    const relay = createMenuRelay();
    const got: MenuCommand[] = [];
    relay.heard('import-bundle');
    const stop = relay.listen((command) => got.push(command));
    relay.heard('undo');
    stop();
    relay.heard('redo');
    expect(got).toEqual(['import-bundle', 'undo']);
  });
});

describe('what the launcher hears', () => {
  it('is "ready" once, with the first call that the page had answered', async () => {
    const way = await throughElectron(temporaryFolder());
    expect(way.reports).toEqual([]);
    await way.sendFrom({ url: 'https://evil.example/', parent: null }, 'program.state', {});
    expect(way.reports).toEqual([]);
    await way.call('program.state', {});
    await way.call('program.state', {});
    expect(way.reports).toEqual([{ kind: 'ready' }]);
    await way.close();
  });

  it('is a fault on the way: shown, noted in the log without what it says, and the program ends', async () => {
    const folder = temporaryFolder();
    const way = await throughElectron(folder, {
      before: ({ app }) => {
        app.whenReady = () => Promise.reject(new TypeError('Anna Example'));
      },
    });
    expect(way.reports).toEqual([{ kind: 'failed', detail: expect.stringContaining('Anna Example') }]);
    expect(way.standIn.errorBoxes).toMatchObject([{ text: expect.stringContaining('window did not open') }]);
    expect(way.standIn.app.exitCode).toBe(1);
    const log = readFileSync(logPath(join(folder, 'data')), 'utf8');
    expect(log).toContain('desktop: TypeError');
    expect(log).not.toContain('Anna');
  });

  it('is why the store was refused', async () => {
    const folder = temporaryFolder();
    const first = await throughElectron(folder);
    const second = await throughElectron(folder);
    expect(second.reports).toEqual([
      { kind: 'refused', sentence: expect.stringContaining('Another Kneelwright uses') },
    ]);
    await first.close();
  });
});

describe("Chromium's profile", () => {
  it('lies apart from the data, one for each data folder, so each has a lock of its own', async () => {
    const root = temporaryFolder();
    process.env.XDG_CACHE_HOME = join(root, 'cache');
    const profileOf = async (name: string) => {
      const standIn = electronStandIn(root);
      standIn.app.lockFree = false;
      await startDesktop(standIn.electron, ['kneelwright', `--data=${join(root, name)}`], () => {});
      expect(standIn.app.paths.sessionData).toBe(standIn.app.paths.userData);
      return standIn.app.paths.userData!;
    };
    const [one, other, again] = [await profileOf('club'), await profileOf('camp'), await profileOf('club')];
    expect(one).toBe(again);
    expect(one).not.toBe(other);
    expect(existsSync(one)).toBe(true);
    expect(one.startsWith(join(root, 'club'))).toBe(false);
  });

  it.each(['win32', 'darwin', 'linux'] as const)('is never inside the data folder on %s', (platform) => {
    const before = process.platform;
    Object.defineProperty(process, 'platform', { value: platform });
    const env = { APPDATA: '/r', LOCALAPPDATA: '/l', XDG_CACHE_HOME: '/c' };
    expect(profileFolder('/r/Kneelwright', env)).not.toMatch(/^\/r\//);
    Object.defineProperty(process, 'platform', { value: before });
  });
});

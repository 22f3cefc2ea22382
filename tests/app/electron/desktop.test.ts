import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { MENU_COMMANDS } from '../../../app/contract/bridge.ts';
import { startDesktop } from '../../../app/electron/desktop.ts';
import { isOwnPage, MENU_CHANNEL, PAGE_HOME } from '../../../app/electron/electron-api.ts';
import { speak } from '../../../app/language/spoken.ts';
import { electronStandIn, type StandInWindow } from '../shells/electron-stand-in.ts';
import { type ThroughElectron, throughElectron } from '../shells/through-electron.ts';
import { temporaryFolder } from '../temporary.ts';

/**
 * The desktop shell's real code against a stand-in for Electron: what it asks Electron to forbid, and how it answers
 * when Electron asks. Whether Electron then does forbid it, only tests/e2e/electron.test.ts can show.
 */
let folder: string;
let way: ThroughElectron;
let window: StandInWindow;
beforeAll(async () => {
  folder = temporaryFolder();
  way = await throughElectron(folder);
  window = way.standIn.windows[0]!;
});

describe('the window', () => {
  it('isolates and sandboxes its page, and gives it no Node', () => {
    expect(way.standIn.sandboxed()).toBe(true);
    expect(window.options.webPreferences).toMatchObject({
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      webviewTag: false,
      webSecurity: true,
    });
    expect(window.loaded).toEqual([PAGE_HOME]);
  });

  it('goes nowhere else, opens no second window and holds no other page', () => {
    const prevented = (event: string, url?: string) => {
      let stopped = false;
      window.webContents.emit(event, {
        url,
        preventDefault: () => {
          stopped = true;
        },
      });
      return stopped;
    };
    for (const url of [
      'https://evil.example/',
      'file:///etc/passwd',
      'app://other/',
      'javascript:1',
      'app:kneelwright',
    ]) {
      expect(prevented('will-navigate', url), url).toBe(true);
    }
    expect(prevented('will-navigate', PAGE_HOME)).toBe(false);
    expect(prevented('will-redirect', PAGE_HOME)).toBe(true);
    expect(prevented('will-attach-webview')).toBe(true);
    expect(window.webContents.openHandler?.({ url: 'https://evil.example/' })).toEqual({ action: 'deny' });
  });

  it('comes back where it was, unless no screen shows that place now', async () => {
    window.maximized = true;
    window.emit('close');
    expect(JSON.parse(readFileSync(join(folder, 'data/window.json'), 'utf8'))).toMatchObject({
      maximized: true,
    });
    await way.close();
    const again = await throughElectron(folder);
    expect(again.standIn.windows[0]).toMatchObject({ options: { x: 40, width: 1300 }, maximized: true });
    await again.close();
    const away = { x: 9000, y: 30, width: 1300, height: 820, maximized: false };
    for (const text of [JSON.stringify(away), '{"x":1}', 'rubbish']) {
      writeFileSync(join(folder, 'data/window.json'), text);
      const third = await throughElectron(folder);
      expect(third.standIn.windows[0]?.options).toMatchObject({ width: 1440, height: 900 });
      expect(third.standIn.windows[0]?.options).not.toHaveProperty('x');
      await third.close();
    }
    way = await throughElectron(folder);
    window = way.standIn.windows[0]!;
  });
});

describe('what Chromium itself writes', () => {
  it('is in the language of Settings from the next start on, the system’s where none was chosen', async () => {
    expect(way.standIn.app.switches).toEqual({});
    const chosen = temporaryFolder();
    mkdirSync(join(chosen, 'data'));
    writeFileSync(join(chosen, 'data/display.json'), JSON.stringify({ language: 'hu' }));
    const hungarian = await throughElectron(chosen);
    expect(hungarian.standIn.app.switches).toEqual({ lang: 'hu' });
    await hungarian.close();
    await speak('en');
  });
});

describe('the session', () => {
  it('grants no permission but filling the screen and lets no request out of the program', () => {
    const { session } = way.standIn;
    const decisions: boolean[] = [];
    const permission = session.permission as (c: unknown, p: string, decide: (yes: boolean) => void) => void;
    for (const name of ['media', 'geolocation', 'notifications', 'openExternal', 'fullscreen']) {
      permission(null, name, (yes) => decisions.push(yes));
    }
    expect(decisions).toEqual([false, false, false, false, true]);
    const check = session.check as (c: unknown, p: string) => boolean;
    expect([check(null, 'media'), check(null, 'fullscreen')]).toEqual([false, true]);
    expect((session.device as () => boolean)()).toBe(false);
    const request = session.request as (r: { url: string }, decide: (d: { cancel: boolean }) => void) => void;
    const cancelled = (url: string) => {
      let cancel = false;
      request({ url }, (decision) => {
        cancel = decision.cancel;
      });
      return cancel;
    };
    expect(cancelled(PAGE_HOME)).toBe(false);
    expect(cancelled('blob:app://kneelwright/1')).toBe(false);
    for (const url of [
      'https://example.org/',
      'http://127.0.0.1/',
      'file:///etc/passwd',
      'app://elsewhere/',
    ]) {
      expect(cancelled(url), url).toBe(true);
    }
  });
});

describe('the page protocol', () => {
  const get = (url: string, method = 'GET') =>
    Promise.resolve(way.standIn.protocolHandlers.get('app')!(new Request(url, { method })));

  it('is announced as standard and secure before Electron is ready', () => {
    expect(way.standIn.schemes).toEqual([
      { scheme: 'app', privileges: { standard: true, secure: true, supportFetchAPI: true } },
    ]);
  });

  it('serves the page with its policy, and its files', async () => {
    const page = await get(PAGE_HOME);
    expect(page.status).toBe(200);
    expect(page.headers.get('content-security-policy')).toMatch(/^default-src 'none'/);
    expect((await get('app://kneelwright/assets/page.js')).headers.get('content-type')).toMatch(/javascript/);
  });

  it.each([
    'app://kneelwright/../../package.json',
    'app://kneelwright/..%2f..%2fpackage.json',
    'app://kneelwright/assets/%2e%2e/%2e%2e/package.json',
    'app://kneelwright/notes.secret',
    'app://kneelwright//etc/passwd',
    'app://other/index.html',
  ])('serves nothing under %s', async (url) => {
    expect([403, 404]).toContain((await get(url)).status);
  });

  it('takes nothing that is sent to it', async () => {
    expect((await get(PAGE_HOME, 'POST')).status).toBe(403);
  });
});

describe('calls', () => {
  it.each([
    ['another site', { url: 'https://evil.example/', parent: null }],
    ['another host of the scheme', { url: 'app://other/', parent: null }],
    ['a frame inside the page', { url: PAGE_HOME, parent: {} }],
    ['a frame that is gone', null],
    ['an address that is none', { url: 'kneelwright', parent: null }],
  ])('from %s are refused', async (_who, frame) => {
    expect(await way.sendFrom(frame, 'program.state', {})).toMatchObject({
      ok: false,
      error: { code: 'not-allowed' },
    });
  });

  it('know their own page by scheme and host, not by how its address begins', () => {
    for (const address of [
      'app://kneelwright.evil/',
      'app://kneelwright@evil/',
      'apps://kneelwright/',
      'app:x',
    ]) {
      expect(isOwnPage(address), address).toBe(false);
    }
  });
});

describe('the menu', () => {
  it('offers every command that a page listens for, and sends it to the page', () => {
    const items = (way.standIn.menu.template as { submenu?: { click?: () => void }[] }[]).flatMap(
      (menu) => menu.submenu ?? [],
    );
    for (const item of items) item.click?.();
    const sent = window.sent.filter(({ channel }) => channel === MENU_CHANNEL).map(({ args }) => args[0]);
    expect(sent.sort()).toEqual([...MENU_COMMANDS].sort());
  });
});

describe('a second start', () => {
  it('gives way to the program that runs', async () => {
    const standIn = electronStandIn(folder);
    standIn.app.lockFree = false;
    process.env.XDG_CACHE_HOME = join(folder, 'cache');
    const reports: unknown[] = [];
    await startDesktop(standIn.electron, ['kneelwright', `--data=${folder}`], (report) =>
      reports.push(report),
    );
    expect(reports).toEqual([{ kind: 'already-open' }]);
    expect(standIn.app.quitCalls).toBe(1);
    expect(standIn.windows).toEqual([]);
  });

  it('brings the window to the front, with the bundle that was to be opened', async () => {
    window.minimized = true;
    const bundle = join(folder, 'from-a-friend.kneelwright');
    writeFileSync(bundle, 'no bundle');
    way.standIn.app.emit('second-instance', {}, ['kneelwright', '--flag', bundle]);
    expect(window).toMatchObject({ minimized: false, focused: true });
    expect(window.sent.at(-1)).toEqual({ channel: MENU_CHANNEL, args: ['import-bundle'] });
    expect(await way.call('bundle.preview', { upload: null })).toMatchObject({
      ok: false,
      error: { code: 'bad-input', problems: [{ message: expect.stringContaining('Not a bundle') }] },
    });
  });
});

describe('a folder that is in use', () => {
  it('is said in a box, and the program ends', async () => {
    const second = await throughElectron(folder).catch((error: unknown) => error);
    expect(second).not.toBeInstanceOf(Error);
    const { standIn } = second as ThroughElectron;
    expect(standIn.errorBoxes).toMatchObject([{ text: expect.stringContaining('Another Kneelwright uses') }]);
    expect(standIn.app.exitCode).toBe(1);
    expect(standIn.windows).toEqual([]);
  });
});

describe('saving a file', () => {
  it('goes where the person chose, whole, or nowhere', async () => {
    way.standIn.choices.save = null;
    expect(await way.call('bundle.export', {})).toEqual({ ok: true, value: { kind: 'cancelled' } });
    const path = join(folder, 'chosen.kneelwright');
    way.standIn.choices.save = path;
    expect(await way.call('bundle.export', {})).toEqual({ ok: true, value: { kind: 'saved', path } });
    expect(existsSync(path)).toBe(true);
    expect(existsSync(`${path}.part`)).toBe(false);
    way.standIn.choices.save = join(folder, 'no/such/folder/x.kneelwright');
    expect(await way.call('bundle.export', {})).toMatchObject({ ok: false });
  });
});

describe('a page that stopped', () => {
  it('is opened again, or the program ends, as the person chooses', async () => {
    const before = window.loaded.length;
    way.standIn.choices.button = 0;
    window.webContents.emit('render-process-gone', {}, {});
    await new Promise((resolve) => setImmediate(resolve));
    expect(window.loaded.length).toBe(before + 1);
    way.standIn.choices.button = 1;
    window.webContents.emit('render-process-gone', {}, {});
    await new Promise((resolve) => setImmediate(resolve));
    expect(way.standIn.app.quitCalls).toBe(1);
  });
});

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { _electron, type ElectronApplication, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { electronBinary } from '../../app/launch/electron-binary.ts';
import { hasDisplay } from '../../app/launch/open-browser.ts';

const ROOT = join(import.meta.dirname, '../..');
const binary = electronBinary(ROOT);
const isRoot = process.getuid?.() === 0;

/** Why the desktop program cannot be run on this machine; null if it can. */
const hindrance = !binary
  ? "Electron's program file is not here"
  : !hasDisplay()
    ? 'No display.'
    : isRoot
      ? 'Electron does not run as the root user'
      : null;

if (hindrance) console.log(`electron.test.ts: not run, ${hindrance}`);

/** What only the real Electron can show: that it does forbid what the shell asks it to forbid. */
describe.runIf(hindrance === null)('the desktop program in the real Electron', () => {
  let data: string;
  let app: ElectronApplication;
  let page: Page;
  beforeAll(async () => {
    data = mkdtempSync(join(tmpdir(), 'kneelwright-electron-'));
    app = await _electron.launch({ executablePath: binary!, args: [ROOT, `--data=${data}`] });
    page = await app.firstWindow();
  });
  afterAll(async () => {
    await app.close();
    rmSync(data, { recursive: true, force: true });
  });

  it('opens the bench on its own scheme, with the program behind it', async () => {
    expect(page.url()).toBe('app://kneelwright/');
    const state = await page.evaluate(() => window.kneelwright?.call('program.state', {}));
    expect(state).toMatchObject({ ok: true, value: { shell: 'electron', empty: true } });
  });

  it('gives its page no Node, no eval and no way out', async () => {
    const reach = await page.evaluate(async () => ({
      node: typeof (globalThis as { require?: unknown }).require,
      process: typeof (globalThis as { process?: unknown }).process,
      bridge: Object.keys(window.kneelwright ?? {}).sort(),
      evaluates: (() => {
        try {
          return new Function('return 1')();
        } catch {
          return 'refused';
        }
      })(),
      fetches: await fetch('https://example.org/').then(
        () => 'reached',
        () => 'refused',
      ),
      window: window.open('https://example.org/'),
    }));
    expect(reach).toEqual({
      node: 'undefined',
      process: 'undefined',
      bridge: ['call', 'onMenu'],
      evaluates: 'refused',
      fetches: 'refused',
      window: null,
    });
  });

  it('does not leave its page', async () => {
    await page.evaluate(() => {
      location.href = 'https://example.org/';
    });
    // Every wish to leave is judged by the program's main part, which answers this after it.
    expect(await page.evaluate(() => window.kneelwright?.call('program.state', {}))).toMatchObject({
      ok: true,
    });
    expect(page.url()).toBe('app://kneelwright/');
  });
});
